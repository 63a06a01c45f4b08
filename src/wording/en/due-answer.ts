import type { DutyLine } from '../../planning/duty-line.ts';
import type { AnswerOf } from '../spoken/answer-of.ts';
import { daysBetween } from '../spoken/days-between.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { type ToldDuties, toldDuties } from '../spoken/told-duties.ts';
import { dayText, everyDays, onDay, whenDue } from './day-text.ts';
import { dutyList } from './duty-list.ts';
import { dutyName, dutyText } from './duty-text.ts';
import { exactText } from './exactly.ts';
import { whyText } from './why.ts';

export function dueAnswer(answer: AnswerOf<'due'>, s: Speaker): string {
  const { system, duties, next, leftToGrower = [] } = answer;
  const left = leftText(leftToGrower, s);
  const where = system === null ? '' : ` for ${s.system(system).name}`;
  if (duties.length > 0) {
    return `${[`To do today${where}:`, ...dutyList(toldDuties(duties), s)].join('\n')}${left}`;
  }
  const [first] = next;
  const then = first ? ` Next: ${dutyName(first.duty, s)} ${onDay(first.duty.dueOn, s)}.` : '';
  return `Nothing to do today${where}.${then}${left}`;
}

/** What the reader is not to handle: `Add 12 mL pH down to North bench: …`. */
export function leftText(lines: readonly DutyLine[], s: Speaker): string {
  if (lines.length === 0) return '';
  const what = s.and(lines.map((line) => dutyText([line], s)));
  return `\n${what}: that is for the grower. Please wait, and add nothing yourself.`;
}

export function whyAnswer({ duties, exactly }: AnswerOf<'why'>, s: Speaker): string {
  if (duties.length === 0) return 'Nothing is planned for that.';
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
  const until = by === undefined ? null : `to do by ${dayText(by, s)}`;
  if (duties.length === 0)
    return until === null ? 'Nothing of that kind is planned.' : `Nothing ${until}.`;
  if (isOften) return duties.map((line) => howOftenText(line, s)).join('\n');
  const lines = duties.map(
    (line) => `${s.capital(dutyName(line.duty, s))}: ${whenDue(line.duty.dueOn, s)}.`,
  );
  return (until === null ? lines : [`${s.capital(until)}:`, ...lines]).join('\n');
}

/** `Calibrate the pen: every 28 days, next on 22 May.` */
function howOftenText(line: DutyLine, s: Speaker): string {
  const often = daysBetween(line);
  const open = line.reason.kind === 'not-measured' ? 'by what its readings show' : 'as it needs it';
  const rhythm = often === null ? open : everyDays(often);
  return `${s.capital(dutyName(line.duty, s))}: ${rhythm}, next ${whenDue(line.duty.dueOn, s)}.`;
}

function whatAndWhen({ line, lines }: ToldDuties, s: Speaker): string {
  if (line.duty.dueOn <= s.today) return dutyText(lines, s);
  const what = lines.length === 1 ? s.capital(dutyName(line.duty, s)) : dutyText(lines, s);
  return `${what} ${onDay(line.duty.dueOn, s)}`;
}
