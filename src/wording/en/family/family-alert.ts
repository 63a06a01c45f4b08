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
      const days = alert.days.length > 0 ? ` Your days: ${stretches(alert.days, s)}.` : '';
      return `${s.member(alert.away)} is away ${daysText(alert.from, alert.until, s)} and you step in.${days} On those mornings you get the round. Ask “how do I top up ${s.greenhouse.systems[0]?.name ?? 'the bench'}” for the steps, and say “I can't on Friday” if something comes up.`;
    }
    case 'done-by-other':
      return `${s.member(alert.by)} has done it already (${dutyName(alert.duty, s)}). You need not go.`;
    case 'trouble':
      return troubleAlert(alert.entry, s);
    case 'danger':
      return dangerAlert(alert, s);
    case 'given-back': {
      const why = alert.reason === null ? '' : ` (${clipped(alert.reason, mostQuoted)})`;
      return `${s.member(alert.by)} cannot do this${why}: ${names(alert.duties, s)}. Can you?`;
    }
    case 'turn-passed': {
      const days = s.and(alert.days.map((date) => s.fullDay(date)));
      const why = alert.reason === null ? '' : ` (${clipped(alert.reason, mostQuoted)})`;
      return alert.isYours
        ? `${s.member(alert.by)} cannot go on ${days}${why}, so it is your turn then. If it does not suit you, say so.`
        : `${s.member(alert.by)} cannot go on ${days}${why}, and nobody else can. I plan around it; ask for “the plan” to see what that means.`;
    }
    case 'days-dropped': {
      const why = alert.reason === null ? '' : ` (${clipped(alert.reason, mostQuoted)})`;
      return `${s.member(alert.by)} goes on none of the ${alert.turns} days that are theirs until ${s.fullDay(alert.until)}${why}. I plan around it; say who goes instead, or ask for “the plan”.`;
    }
    case 'relieved':
      return relievedText(alert, s);
    case 'claim-off': {
      const what = claimName(alert.settled, s);
      const when = onDay(alert.settled.on, s);
      return alert.instead === null
        ? `${s.member(alert.by)} has taken back that you do ${what} ${when}. You need not.`
        : `${s.member(alert.instead)} takes ${what} ${when} instead of you. You need not.`;
    }
    case 'leaving':
      return leavingText(alert.plan, s);
    case 'named-for':
      return alert.settled.kind === 'claim'
        ? `${s.member(alert.by)} has put you down for ${claimName(alert.settled, s)}, ${onDay(alert.settled.on, s)}. If that does not suit you, say “I can't ${onDay(alert.settled.on, s)}”.`
        : `${s.member(alert.by)} has put you down to go ${daysText(alert.settled.from, alert.settled.until, s)}.`;
  }
}

/** Days that are another's now, then those that nobody else has yet. */
function relievedText(
  { by, days, instead, still }: Extract<FamilyAlert, { kind: 'relieved' }>,
  s: Speaker,
): string {
  const who = s.and(instead.map((handle) => s.member(handle)));
  const goes = instead.length === 1 ? 'goes' : 'go';
  const free =
    days.length === 0
      ? []
      : [
          `${s.member(by)} has changed who goes: you need not go ${onDays(days, s)}.`,
          ...(instead.length > 0 ? [`${who} ${goes} then.`] : []),
        ];
  const open =
    still.length === 0
      ? []
      : [
          `${s.member(by)} has taken back who steps in. Until somebody is named, it is your turn ${onDays(still, s)}.`,
        ];
  return [...free, ...open].join(' ');
}

function undoneText(
  { stage, of, duties }: Extract<FamilyAlert, { kind: 'undone' }>,
  s: Speaker,
): string {
  const open = names(duties, s);
  const turn = of === null ? '' : ` It was ${s.isReader(of) ? 'your' : `${s.member(of)}'s`} turn.`;
  switch (stage) {
    case 'ask':
      return `Still open today: ${open}. Is it done, or can't you today?`;
    case 'offer':
      return `Still open today: ${open}.${turn} Could you go instead?`;
    case 'tell':
      return `Not done today, and nobody has taken it: ${open}.${turn}`;
  }
}

function names(duties: readonly Duty[], s: Speaker): string {
  const { named, more } = urgentFirst(duties);
  const rest = more === 0 ? [] : [`${more} more (“what is due” names them all)`];
  return s.and([...named.map((duty) => dutyName(duty, s)), ...rest]);
}

/** Days in a row are told as from and to. */
export function stretches(days: readonly LocalDate[], s: Speaker): string {
  return runsOf(days)
    .map(([first, last]) => (first === last ? s.fullDay(first) : daysText(first, last, s)))
    .join('; ');
}

/** The same within a sentence: `on Friday`. */
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
