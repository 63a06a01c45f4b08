import type { DutyLine } from '../../planning/duty-line.ts';
import type { AnswerOf } from '../spoken/answer-of.ts';
import { daysBetween } from '../spoken/days-between.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { type ToldDuties, toldDuties } from '../spoken/told-duties.ts';
import { everyDays, onDay, untilDay, whenDue } from './day-text.ts';
import { dutyList } from './duty-list.ts';
import { dutyName, dutyText } from './duty-text.ts';
import { exactText } from './exactly.ts';
import { whyText } from './why.ts';

export function dueAnswer(answer: AnswerOf<'due'>, s: Speaker): string {
  const { system, duties, next, leftToGrower = [] } = answer;
  const left = leftText(leftToGrower, s);
  const where = system === null ? '' : ` für ${s.system(system).name}`;
  if (duties.length > 0) {
    return `${[`Heute zu tun${where}:`, ...dutyList(toldDuties(duties), s)].join('\n')}${left}`;
  }
  const [first] = next;
  const then = first
    ? ` Als Nächstes ${onDay(first.duty.dueOn, s)}: ${dutyName(first.duty, s)}.`
    : '';
  return `Heute nichts zu tun${where}.${then}${left}`;
}

/** What the reader is not to handle: `Nordtisch: 12 ml pH-Minus zugeben: …`. */
export function leftText(lines: readonly DutyLine[], s: Speaker): string {
  if (lines.length === 0) return '';
  const what = lines.map((line) => dutyText([line], s)).join('; ');
  return `\n${what}: das ist Sache der Gärtnerin oder des Gärtners. Bitte warten und selbst nichts zugeben.`;
}

export function whyAnswer({ duties, exactly }: AnswerOf<'why'>, s: Speaker): string {
  if (duties.length === 0) return 'Dafür ist nichts geplant.';
  // The figures are each system's own.
  const each = exactly ? duties.flatMap((line) => toldDuties([line])) : toldDuties(duties);
  return each
    .map((told) => {
      const figures = exactly ? ` ${exactText(told.line, s)}` : '';
      return `${whatAndWhen(told, s)}. ${whyText(told.line, s)}${figures}`;
    })
    .join('\n');
}

export function whenNextAnswer({ duties, by, isOften }: AnswerOf<'when-next'>, s: Speaker): string {
  const until = by === undefined ? null : untilDay(by, s);
  if (duties.length === 0)
    return until === null
      ? 'So etwas ist nicht geplant.'
      : `${s.capital(until)} ist nichts zu tun.`;
  if (isOften) return duties.map((line) => howOftenText(line, s)).join('\n');
  const lines = duties.map((line) => `${dayFirst(line, s)}: ${dutyName(line.duty, s)}.`);
  return (until === null ? lines : [`Zu tun ${until}:`, ...lines]).join('\n');
}

/** `Kalibrieren: Stift: alle 28 Tage, das nächste Mal am 22. Mai.` */
function howOftenText(line: DutyLine, s: Speaker): string {
  const often = daysBetween(line);
  const open =
    line.reason.kind === 'not-measured'
      ? 'je nachdem, wie sich die Werte bewegen'
      : 'je nach Bedarf';
  const rhythm = often === null ? open : everyDays(often);
  return `${s.capital(dutyName(line.duty, s))}: ${rhythm}, das nächste Mal ${whenDue(line.duty.dueOn, s)}.`;
}

function whatAndWhen({ line, lines }: ToldDuties, s: Speaker): string {
  if (line.duty.dueOn <= s.today) return dutyText(lines, s);
  return `${dayFirst(line, s)}: ${lines.length === 1 ? dutyName(line.duty, s) : dutyText(lines, s)}`;
}

function dayFirst(line: DutyLine, s: Speaker): string {
  return s.capital(whenDue(line.duty.dueOn, s));
}
