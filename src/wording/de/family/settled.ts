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
      return `${s.member(item.handle)} ist ${daysText(item.from, item.until, s)} weg.`;
    case 'back':
      return `${s.member(item.handle)} ist ${onDay(item.on, s)} wieder da.`;
    case 'news':
      return item.every === 'day'
        ? 'Solange du weg bist, bekommst du eine Zeile am Tag, und Alarm nur, wenn hier niemand helfen kann.'
        : 'Solange du weg bist, hörst du nichts, außer Alarm, wenn hier niemand helfen kann.';
    case 'covers': {
      const days = daysText(item.from, item.until, s);
      if (item.handles.length === 0) return `${s.capital(days)} geht niemand.`;
      const who = s.and(item.handles.map((handle) => s.member(handle)));
      return item.handles.length === 1
        ? `${who} geht ${days}.`
        : `${who} gehen ${days} abwechselnd.`;
    }
    case 'cannot-go': {
      const who = item.handle === null ? 'niemand' : s.member(item.handle);
      const days = s.capital(daysText(item.from, item.until, s));
      return `${days} kann ${who}${item.handle === null ? '' : ' nicht'} gehen.`;
    }
    case 'rota': {
      const days = item.weekdays.map(
        (day) => s.weekday(mondayPlus(day)).toLocaleLowerCase('de') + 's',
      );
      return `${s.member(item.handle)} geht ${s.and(days)}.`;
    }
    case 'claim':
      return `${s.member(item.handle)} übernimmt ${item.isEvening && item.on === s.today ? 'heute Abend' : onDay(item.on, s)}: ${claimName(item, s)}.`;
    case 'release':
      return `${s.capital(claimName({ ...item, duty: null }, s))}: zurückgegeben.`;
  }
}

function asideOf({ kind }: ArrangementDraft): string | null {
  switch (kind) {
    case 'cannot-go':
      return 'Ich plane darum herum.';
    case 'claim':
      return 'Eingetragen wird erst, was getan ist.';
    case 'release':
      return 'Ich frage die anderen.';
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
