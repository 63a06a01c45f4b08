import type { ArrangementDraft } from '../../../greenhouse/arrangement.ts';
import type { Duty } from '../../../greenhouse/duty.ts';
import type { LocalDate } from '../../../greenhouse/local-time.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { dayText, onDay } from '../day-text.ts';
import { dutyName } from '../duty-text.ts';

/** What was settled, in one sentence, and what follows from it. */
export function settledText(item: ArrangementDraft, s: Speaker): string {
  const aside = asideOf(item, s);
  return `${settledSentence(item, s)}${aside === null ? '' : ` ${aside}`}`;
}

/** What was settled, in one sentence. */
export function settledSentence(item: ArrangementDraft, s: Speaker): string {
  switch (item.kind) {
    case 'away':
      return `${whoDoes(item.handle, 'are', 'is', s)} away ${daysText(item.from, item.until, s)}.`;
    case 'back':
      return `${whoDoes(item.handle, 'are', 'is', s)} back ${onDay(item.on, s)}.`;
    case 'news':
      return item.every === 'day'
        ? 'While you are away you get one line a day, and alerts only for what nobody here can settle.'
        : 'While you are away you hear nothing, but alerts for what nobody here can settle.';
    case 'covers': {
      const days = daysText(item.from, item.until, s);
      if (item.handles.length === 0) return `Nobody goes ${days}.`;
      const [only, ...others] = item.handles;
      if (only !== undefined && others.length === 0) {
        return `${whoDoes(only, 'go', 'goes', s)} ${days}.`;
      }
      const who = s.and(item.handles.map((handle) => s.person(handle).name));
      return `${s.capital(who)} go in turn ${days}.`;
    }
    case 'cannot-go': {
      const days = daysText(item.from, item.until, s);
      if (item.handle === null) return `Nobody can go ${days}.`;
      return `${whoDoes(item.handle, 'cannot', 'cannot', s)} go ${days}.`;
    }
    case 'can-go':
      return `${whoDoes(item.handle, 'can', 'can', s)} go ${daysText(item.from, item.until, s)} after all.`;
    case 'rota': {
      const days = item.weekdays.map((day) => `${s.weekday(mondayPlus(day))}s`);
      return `${whoDoes(item.handle, 'go', 'goes', s)} on ${s.and(days)}.`;
    }
    case 'claim':
      return `${whoDoes(item.handle, 'take', 'takes', s)} ${claimName(item, s)} ${item.isEvening && item.on === s.today ? 'tonight' : onDay(item.on, s)}.`;
    case 'release':
      return `${s.capital(claimName({ ...item, duty: null }, s))}: given back${item.on === s.today ? '' : ` for ${dayText(item.on, s)}`}.`;
  }
}

/** `You take`, `Tomas takes`, at the beginning of a sentence. */
export function whoDoes(handle: string, ofReader: string, ofAnother: string, s: Speaker): string {
  const { name, verb } = s.person(handle);
  return `${s.capital(name)} ${verb(ofReader, ofAnother)}`;
}

function asideOf(item: ArrangementDraft, s: Speaker): string | null {
  switch (item.kind) {
    case 'cannot-go':
      return 'I plan around it.';
    case 'claim':
      return 'Nothing is logged until it is done.';
    case 'release':
      return item.on === s.today ? 'I ask the others.' : null;
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
