import type { FamilyAlert } from '../../../assistant/replies/family.ts';
import type { Duty } from '../../../greenhouse/duty.ts';
import { type LocalDate, plusDays } from '../../../greenhouse/local-time.ts';
import { urgentFirst } from '../../../greenhouse/urgent-first.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { dangerAlert, troubleAlert } from '../advice/trouble-text.ts';
import { onDay } from '../day-text.ts';
import { dutyName } from '../duty-text.ts';
import { leavingText } from './away-plan.ts';
import { claimName, daysText } from './settled.ts';

/** What is said unasked about who goes when: once, and without blame. */
export function familyAlert(alert: FamilyAlert, s: Speaker): string {
  switch (alert.kind) {
    case 'undone':
      return undoneText(alert, s);
    case 'your-days': {
      const days = alert.days.length > 0 ? ` Deine Tage: ${stretches(alert.days, s)}.` : '';
      return `${s.member(alert.away)} ist ${daysText(alert.from, alert.until, s)} weg, und du springst ein.${days} An diesen Morgen bekommst du die Runde. Frag „wie fülle ich ${s.greenhouse.systems[0]?.name ?? 'die Wanne'} auf“ nach den Schritten, und sag „ich kann am Freitag nicht“, wenn etwas dazwischenkommt.`;
    }
    case 'done-by-other':
      return `${s.member(alert.by)} hat es schon erledigt (${dutyName(alert.duty, s)}). Du brauchst nicht zu gehen.`;
    case 'trouble':
      return troubleAlert(alert.entry, s);
    case 'danger':
      return dangerAlert(alert, s);
    case 'given-back': {
      const why = alert.reason === null ? '' : ` (${clipped(alert.reason, mostQuoted)})`;
      return `${s.member(alert.by)} kann das nicht machen${why}: ${names(alert.duties, s)}. Kannst du?`;
    }
    case 'turn-passed': {
      const days = s.and(alert.days.map((date) => s.fullDay(date)));
      const why = alert.reason === null ? '' : ` (${clipped(alert.reason, mostQuoted)})`;
      return alert.isYours
        ? `${s.member(alert.by)} kann am ${days} nicht${why}, dann bist du dran. Wenn es dir nicht passt, sag es.`
        : `${s.member(alert.by)} kann am ${days} nicht${why}, und sonst auch niemand. Ich plane drum herum; frag nach „der Plan“, was das heißt.`;
    }
    case 'days-dropped': {
      const why = alert.reason === null ? '' : ` (${clipped(alert.reason, mostQuoted)})`;
      return `${s.member(alert.by)} geht bis ${s.fullDay(alert.until)} an keinem der ${alert.turns} eigenen Tage${why}. Ich plane drum herum; sag, wer stattdessen geht, oder frag nach „der Plan“.`;
    }
    case 'relieved':
      return relievedText(alert, s);
    case 'claim-off': {
      const what = claimName(alert.settled, s);
      const when = onDay(alert.settled.on, s);
      return alert.instead === null
        ? `${s.member(alert.by)} hat zurückgenommen, dass du ${when} ${what} übernimmst. Du brauchst nicht.`
        : `${s.member(alert.instead)} übernimmt ${when} ${what} an deiner Stelle. Du brauchst nicht.`;
    }
    case 'leaving':
      return leavingText(alert.plan, s);
    case 'named-for':
      return alert.settled.kind === 'claim'
        ? `${s.member(alert.by)} hat dich eingetragen für ${claimName(alert.settled, s)}, ${onDay(alert.settled.on, s)}. Wenn es dir nicht passt, sag „ich kann ${onDay(alert.settled.on, s)} nicht“.`
        : `${s.member(alert.by)} hat dich ${daysText(alert.settled.from, alert.settled.until, s)} eingetragen.`;
  }
}

/** Days that are another's now, then those that nobody else has yet. */
function relievedText(
  { by, days, instead, still }: Extract<FamilyAlert, { kind: 'relieved' }>,
  s: Speaker,
): string {
  const who = s.and(instead.map((handle) => s.member(handle)));
  const goes = instead.length === 1 ? 'geht' : 'gehen';
  const free =
    days.length === 0
      ? []
      : [
          `${s.member(by)} hat geändert, wer geht: Du brauchst ${onDays(days, s)} nicht zu gehen.`,
          ...(instead.length > 0 ? [`Dann ${goes} ${who}.`] : []),
        ];
  const open =
    still.length === 0
      ? []
      : [
          `${s.member(by)} hat zurückgenommen, wer einspringt. Bis jemand genannt ist, bist du ${onDays(still, s)} dran.`,
        ];
  return [...free, ...open].join(' ');
}

function undoneText(
  { stage, of, duties }: Extract<FamilyAlert, { kind: 'undone' }>,
  s: Speaker,
): string {
  const open = names(duties, s);
  const turn =
    of === null ? '' : ` Dran ${s.person(of).verb('warst', 'war')} ${s.person(of).name}.`;
  switch (stage) {
    case 'ask':
      return `Heute noch offen: ${open}. Ist es erledigt, oder geht es heute nicht?`;
    case 'offer':
      return `Heute noch offen: ${open}.${turn} Könntest du stattdessen gehen?`;
    case 'tell':
      return `Heute nicht erledigt, und niemand hat es übernommen: ${open}.${turn}`;
  }
}

function names(duties: readonly Duty[], s: Speaker): string {
  const { named, more } = urgentFirst(duties);
  const rest = more === 0 ? [] : [`${more} weitere („was ist zu tun“ nennt alle)`];
  return s.and([...named.map((duty) => dutyName(duty, s)), ...rest]);
}

/** Days in a row are told as from and to. */
export function stretches(days: readonly LocalDate[], s: Speaker): string {
  return runsOf(days)
    .map(([first, last]) => (first === last ? s.fullDay(first) : daysText(first, last, s)))
    .join('; ');
}

/** The same within a sentence: `am Freitag`. */
function onDays(days: readonly LocalDate[], s: Speaker): string {
  return s.and(runsOf(days).map(([first, last]) => daysText(first, last, s)));
}

function runsOf(days: readonly LocalDate[]): readonly (readonly [LocalDate, LocalDate])[] {
  const firsts = days.filter((day, i) => i === 0 || plusDays(days[i - 1]!, 1) !== day);
  return firsts.map((first, i) => {
    const next = firsts[i + 1];
    return [first, days.findLast((day) => next === undefined || day < next)!];
  });
}
