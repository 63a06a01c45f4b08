import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import {
  instantOf,
  type LocalDate,
  type LocalTime,
  localDateOf,
  localTimeOf,
  plusDays,
} from '../../greenhouse/local-time.ts';

export type DayPart = 'morning' | 'noon' | 'afternoon' | 'evening' | 'night' | 'midnight';

/** What a time expression says, as far as it says it. */
export interface SaidTime {
  readonly day: LocalDate | null;
  readonly part: DayPart | null;
  /** Minutes after midnight, as said. */
  readonly minutes: number | null;
  /** An hour that may be morning or evening. */
  readonly eitherHalf: boolean;
  /** An hour of 24, as `Uhr` says: of a day that is named it is the one said. */
  readonly byClock: boolean;
  readonly meridiem: 'am' | 'pm' | null;
  /** `last night`: the evening before, or the small hours of today. */
  readonly lastNight: boolean;
  /** A weekday said on that weekday: today, or a week ago. */
  readonly weekdayOfToday: boolean;
}

export interface WorkedOut {
  readonly atMs: number;
  readonly vague: boolean;
  readonly askFrom: readonly number[] | null;
}

const minutesADay = 1440;
const halfDay = 720;
export const smallHoursEnd = 6 * 60;

/** Common practice where people name a part of a day and no time. */
const minutesOfPart: Readonly<Record<Exclude<DayPart, 'morning'>, number>> = {
  noon: 12 * 60,
  afternoon: 15 * 60,
  evening: 19 * 60,
  night: 21 * 60,
  midnight: 0,
};

/** The instant that is meant, seen from when it was written. */
export function workOut(said: SaidTime, greenhouse: Greenhouse, writtenAtMs: number): WorkedOut {
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  const at = (day: LocalDate, minutes: number) =>
    latestOfTwo(instantAt(day, minutes, greenhouse.timeZone), greenhouse.timeZone, writtenAtMs);
  if (said.weekdayOfToday && said.day !== null)
    return ask([writtenAtMs, at(plusDays(said.day, -7), said.minutes ?? 12 * 60)]);
  if (said.minutes === null) return partOfDay(said, greenhouse, today, writtenAtMs);
  const options = minutesMeant(said);
  if (said.lastNight) {
    const yesterday = plusDays(today, -1);
    const minutes = options.find((m) => m >= halfDay) ?? options[0]!;
    const isSmallHours =
      said.minutes < 6 * 60 ||
      (said.minutes >= halfDay && said.minutes < halfDay + 60 && said.eitherHalf);
    return sure(isSmallHours ? at(today, said.minutes % halfDay) : at(yesterday, minutes));
  }
  if (said.day !== null) {
    const day = said.day;
    const hours = said.byClock && said.part === null ? [said.minutes] : options;
    const passed = hours.map((minutes) => at(day, minutes)).filter((ms) => ms <= writtenAtMs);
    return passed.length > 0 ? sure(Math.max(...passed)) : ask([writtenAtMs]);
  }
  const days = [today, plusDays(today, -1)];
  if (said.eitherHalf) {
    const passed = days
      .flatMap((day) => options.map((minutes) => at(day, minutes)))
      .filter((ms) => ms <= writtenAtMs);
    return sure(Math.max(...passed));
  }
  const minutes = options[0]!;
  const todayMs = at(today, minutes);
  if (todayMs <= writtenAtMs) return sure(todayMs);
  return ask([at(plusDays(today, -1), minutes), writtenAtMs]);
}

/** The minutes after midnight that a said hour can mean, likeliest last. */
function minutesMeant(said: SaidTime): number[] {
  const minutes = said.minutes! % minutesADay;
  const isPm =
    said.meridiem === 'pm' ||
    said.part === 'afternoon' ||
    said.part === 'evening' ||
    (said.part === 'night' && minutes >= smallHoursEnd);
  const isAm = said.meridiem === 'am' || said.part === 'morning' || said.part === 'night';
  if (isPm) return [minutes < halfDay ? minutes + halfDay : minutes];
  if (isAm) return [minutes >= halfDay && minutes < halfDay + 60 ? minutes - halfDay : minutes];
  if (!said.eitherHalf || minutes >= halfDay + 60) return [minutes];
  return minutes >= halfDay ? [minutes - halfDay, minutes] : [minutes, minutes + halfDay];
}

function partOfDay(
  said: SaidTime,
  greenhouse: Greenhouse,
  today: LocalDate,
  writtenAtMs: number,
): WorkedOut {
  const { timeZone } = greenhouse;
  if (said.lastNight) return vague(instantAt(plusDays(today, -1), minutesOfPart.night, timeZone));
  const day = said.day ?? today;
  if (said.part === null && day === today) return sure(writtenAtMs);
  if (said.part === 'morning')
    return vague(Math.min(instantOf(day, greenhouse.morning, timeZone), writtenAtMs));
  // `yesterday evening` and `last night` are one evening.
  const isEveningPast = said.part === 'evening' && day !== today;
  const part = isEveningPast ? 'night' : (said.part ?? 'noon');
  let ms = instantAt(day, minutesOfPart[part], timeZone);
  if (part === 'midnight' && said.day !== null) ms = instantAt(plusDays(day, 1), 0, timeZone);
  if (ms <= writtenAtMs)
    return said.part === 'noon' || said.part === 'midnight' ? sure(ms) : vague(ms);
  // `today` says no more than that it is of today; so does a part of the day that has begun.
  const hour = localTimeOf(writtenAtMs, timeZone).hour;
  const begun =
    said.part === null ||
    (part === 'afternoon' && hour >= 12) ||
    (part === 'evening' && hour >= 16) ||
    (part === 'night' && hour >= 17);
  return begun
    ? { atMs: writtenAtMs, vague: said.part !== null, askFrom: null }
    : ask([writtenAtMs]);
}

function instantAt(day: LocalDate, minutes: number, timeZone: string): number {
  const date = minutes >= minutesADay ? plusDays(day, 1) : day;
  const inDay = minutes % minutesADay;
  const clock =
    `${String(Math.floor(inDay / 60)).padStart(2, '0')}:${String(inDay % 60).padStart(2, '0')}` as LocalTime;
  return instantOf(date, clock, timeZone);
}

const hourMs = 3_600_000;

/** In autumn an hour comes twice: who writes within an hour of its second coming means that, else the first is meant. */
function latestOfTwo(atMs: number, timeZone: string, writtenAtMs: number): number {
  const againMs = atMs + hourMs;
  const isAgo = againMs <= writtenAtMs && writtenAtMs - againMs < hourMs;
  if (!isAgo) return atMs;
  const [first, again] = [localTimeOf(atMs, timeZone), localTimeOf(againMs, timeZone)];
  return first.hour === again.hour && first.minute === again.minute ? againMs : atMs;
}

function sure(atMs: number): WorkedOut {
  return { atMs, vague: false, askFrom: null };
}

function vague(atMs: number): WorkedOut {
  return { atMs, vague: true, askFrom: null };
}

function ask(options: readonly number[]): WorkedOut {
  return { atMs: options[0]!, vague: false, askFrom: options };
}
