import type { ArrangementDraft } from '../../../greenhouse/arrangement.ts';
import type { Duty } from '../../../greenhouse/duty.ts';
import type { LocalDate } from '../../../greenhouse/local-time.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { onDay } from '../day-text.ts';
import { dutyName } from '../duty-text.ts';

/** What was settled, in one sentence, and what follows from it. */
export function settledText(item: ArrangementDraft, s: Speaker): string {
  const aside = asideOf(item);
  return `${settledSentence(item, s)}${aside === null ? '' : ` ${aside}`}`;
}

/** What was settled, in one sentence. */
export function settledSentence(item: ArrangementDraft, s: Speaker): string {
  switch (item.kind) {
    case 'away':
      return `${s.member(item.handle)} is away ${daysText(item.from, item.until, s)}.`;
    case 'back':
      return `${s.member(item.handle)} is back ${onDay(item.on, s)}.`;
    case 'news':
      return item.every === 'day'
        ? 'While you are away you get one line a day, and alerts only for what nobody here can settle.'
        : 'While you are away you hear nothing, but alerts for what nobody here can settle.';
    case 'covers': {
      const days = daysText(item.from, item.until, s);
      if (item.handles.length === 0) return `Nobody goes ${days}.`;
      const who = s.and(item.handles.map((handle) => s.member(handle)));
      return item.handles.length === 1 ? `${who} goes ${days}.` : `${who} go in turn ${days}.`;
    }
    case 'cannot-go': {
      const who = item.handle === null ? 'Nobody' : s.member(item.handle);
      const verb = item.handle === null ? 'can go' : 'cannot go';
      return `${who} ${verb} ${daysText(item.from, item.until, s)}.`;
    }
    case 'rota': {
      const days = item.weekdays.map((day) => `${s.weekday(mondayPlus(day))}s`);
      return `${s.member(item.handle)} goes on ${s.and(days)}.`;
    }
    case 'claim':
      return `${s.member(item.handle)} takes ${claimName(item, s)} ${item.isEvening && item.on === s.today ? 'tonight' : onDay(item.on, s)}.`;
    case 'release':
      return `${claimName({ ...item, duty: null }, s)}: given back.`;
  }
}

function asideOf({ kind }: ArrangementDraft): string | null {
  switch (kind) {
    case 'cannot-go':
      return 'I plan around it.';
    case 'claim':
      return 'Nothing is logged until it is done.';
    case 'release':
      return 'I ask the others.';
    default:
      return null;
  }
}

/** `the top-up of North bench`, `Jar shelf`, `the round`. */
export function claimName(
  {
    system,
    duty,
    on,
  }: Pick<Extract<ArrangementDraft, { kind: 'claim' }>, 'system' | 'duty' | 'on'>,
  s: Speaker,
): string {
  if (system === null) return 'the round';
  if (duty === null) return s.system(system).name;
  const named: Duty = { kind: duty, system, dueOn: on };
  return `“${dutyName(named, s)}”`;
}

/** `today`, `from Friday 9 July to Friday 16 July`. */
export function daysText(from: LocalDate, until: LocalDate, s: Speaker): string {
  if (from === until) return onDay(from, s);
  return `from ${s.fullDay(from)} to ${s.fullDay(until)}`;
}

/** A date of that weekday, Monday 1. */
export function mondayPlus(weekday: number): LocalDate {
  return `2024-01-0${weekday}` as LocalDate;
}
