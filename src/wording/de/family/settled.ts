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
      return `${whoDoes(item.handle, 'bist', 'ist', s)} ${daysText(item.from, item.until, s)} weg.`;
    case 'back':
      return `${whoDoes(item.handle, 'bist', 'ist', s)} ${onDay(item.on, s)} wieder da.`;
    case 'news':
      return item.every === 'day'
        ? 'Solange du weg bist, bekommst du eine Zeile am Tag, und Alarm nur, wenn hier niemand helfen kann.'
        : 'Solange du weg bist, hörst du nichts, außer Alarm, wenn hier niemand helfen kann.';
    case 'covers': {
      const days = daysText(item.from, item.until, s);
      if (item.handles.length === 0) return `${s.capital(days)} geht niemand.`;
      const [only, ...others] = item.handles;
      if (only !== undefined && others.length === 0) {
        return `${whoDoes(only, 'gehst', 'geht', s)} ${days}.`;
      }
      const who = s.and(item.handles.map((handle) => s.person(handle).name));
      // `Du und Tomas geht`: with the reader among them it is `ihr`.
      const go = item.handles.some((handle) => s.isReader(handle)) ? 'geht' : 'gehen';
      return `${s.capital(who)} ${go} ${days} abwechselnd.`;
    }
    case 'cannot-go': {
      const days = s.capital(daysText(item.from, item.until, s));
      if (item.handle === null) return `${days} kann niemand gehen.`;
      const { name, verb } = s.person(item.handle);
      return `${days} ${verb('kannst', 'kann')} ${name} nicht gehen.`;
    }
    case 'can-go': {
      const { name, verb } = s.person(item.handle);
      const days = s.capital(daysText(item.from, item.until, s));
      return `${days} ${verb('kannst', 'kann')} ${name} doch gehen.`;
    }
    case 'rota': {
      const days = item.weekdays.map(
        (day) => s.weekday(mondayPlus(day)).toLocaleLowerCase('de') + 's',
      );
      return `${whoDoes(item.handle, 'gehst', 'geht', s)} ${s.and(days)}.`;
    }
    case 'claim':
      return `${whoDoes(item.handle, 'übernimmst', 'übernimmt', s)} ${item.isEvening && item.on === s.today ? 'heute Abend' : onDay(item.on, s)}: ${claimName(item, s)}.`;
    case 'release':
      return `${s.capital(claimName({ ...item, duty: null }, s))}: zurückgegeben${item.on === s.today ? '' : ` für ${dayText(item.on, s)}`}.`;
  }
}

/** `Du gehst`, `Tomas geht`, at the beginning of a sentence. */
export function whoDoes(handle: string, ofReader: string, ofAnother: string, s: Speaker): string {
  const { name, verb } = s.person(handle);
  return `${s.capital(name)} ${verb(ofReader, ofAnother)}`;
}

function asideOf(item: ArrangementDraft, s: Speaker): string | null {
  switch (item.kind) {
    case 'cannot-go':
      return 'Ich plane darum herum.';
    case 'claim':
      return 'Eingetragen wird erst, was getan ist.';
    case 'release':
      return item.on === s.today ? 'Ich frage die anderen.' : null;
    default:
      return null;
  }
}

/** `„Bank nachfüllen“`, `Bank`, `die Runde`. */
export function claimName(
  {
    system,
    duty,
    on,
  }: Pick<Extract<ArrangementDraft, { kind: 'claim' }>, 'system' | 'duty' | 'on'>,
  s: Speaker,
): string {
  if (system === null) return 'die Runde';
  if (duty === null) return s.system(system).name;
  const named: Duty = { kind: duty, system, dueOn: on };
  return `„${dutyName(named, s)}“`;
}

/** `heute`, `von Freitag, 9. Juli, bis Freitag, 16. Juli,`. */
export function daysText(from: LocalDate, until: LocalDate, s: Speaker): string {
  if (from === until) return onDay(from, s);
  return `von ${s.fullDay(from)} bis ${s.fullDay(until)}`;
}

/** A date of that weekday, Monday 1. */
export function mondayPlus(weekday: number): LocalDate {
  return `2024-01-0${weekday}` as LocalDate;
}
