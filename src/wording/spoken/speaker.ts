import { DateTime } from 'luxon';
import { type LocalDate, localDateOf, localTimeOf } from '../../greenhouse/local-time.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import type { Reader } from '../wording.ts';
import { asWritten, type Measure, type MeasureUnit } from './measure.ts';
import { type Nearness, nearness } from './nearness.ts';
import { numberText } from './number-text.ts';
import type { Person } from './person.ts';

/** What stands after a number, its space included. */
export type UnitWords = Readonly<Record<MeasureUnit, string>>;

/** The words of a language that a speaker needs for itself. */
export interface SpeakerWords {
  readonly units: UnitWords;
  /** The reader as the subject of a sentence. */
  readonly you: string;
}

/** A reader, with the numbers, lists and dates of one language. */
export class Speaker {
  readonly greenhouse: Reader['greenhouse'];
  readonly nowMs: number;
  readonly today: LocalDate;
  readonly locale: string;
  readonly #handle: string | null;
  readonly #words: SpeakerWords;

  constructor(reader: Reader, locale: string, words: SpeakerWords) {
    this.greenhouse = reader.greenhouse;
    this.nowMs = reader.nowMs;
    this.today = localDateOf(reader.nowMs, reader.greenhouse.timeZone);
    this.locale = locale;
    this.#handle = reader.handle ?? null;
    this.#words = words;
  }

  get units(): Reader['greenhouse']['units'] {
    return this.greenhouse.units;
  }

  /** Whether a member is the one who reads it. */
  isReader(handle: string): boolean {
    return handle === this.#handle;
  }

  /** `12 L` */
  amount(told: Measure): string {
    return `${this.number(told)}${this.#words.units[told.unit]}`;
  }

  /** `12` */
  number(told: Measure): string {
    return numberText(told, this.locale);
  }

  /** `5.5` and `6.2 mS/cm`, `3` and `9`: a range names its unit once, and is as round as its ends. */
  range(lowest: Measure, highest: Measure): readonly [string, string] {
    const isWhole = Number.isInteger(lowest.value) && Number.isInteger(highest.value);
    const ends = isWhole ? [asWritten(lowest), asWritten(highest)] : [lowest, highest];
    return [this.number(ends[0]!), this.amount(ends[1]!)];
  }

  and(parts: readonly string[]): string {
    return new Intl.ListFormat(this.locale, { type: 'conjunction' }).format(parts);
  }

  or(parts: readonly string[]): string {
    return new Intl.ListFormat(this.locale, { type: 'disjunction' }).format(parts);
  }

  system(id: SystemId): System {
    const { systems, formerSystems = [] } = this.greenhouse;
    const found = [...systems, ...formerSystems].find((system) => system.id === id);
    if (!found)
      throw new Error(`no system ${id} in this greenhouse, expected one that it has or had`);
    return found;
  }

  member(handle: string): string {
    return this.greenhouse.members.find((member) => member.handle === handle)?.name ?? handle;
  }

  /** Whom a sentence is about, the reader as `you`. */
  person(handle: string): Person {
    const isReader = this.isReader(handle);
    return {
      name: isReader ? this.#words.you : this.member(handle),
      verb: (ofReader, ofAnother) => (isReader ? ofReader : ofAnother),
    };
  }

  dateOf(atMs: number): LocalDate {
    return localDateOf(atMs, this.greenhouse.timeZone);
  }

  nearness(date: LocalDate): Nearness {
    return nearness(date, this.today);
  }

  /** `18:05`, on the greenhouse's wall. */
  clock(atMs: number): string {
    const local = localTimeOf(atMs, this.greenhouse.timeZone).setLocale(this.locale);
    // Intl parts 6:05 and PM by a space that some fonts lack.
    return local.toLocaleString(DateTime.TIME_SIMPLE).replace(/\s/gu, ' ');
  }

  /** `Tuesday` */
  weekday(date: LocalDate): string {
    return this.#date(date, { weekday: 'long' });
  }

  /** `4 May` */
  dayAndMonth(date: LocalDate): string {
    return this.#date(date, { day: 'numeric', month: 'long' });
  }

  /** `4 May`, short enough to stand beside others. */
  shortDay(date: LocalDate): string {
    return this.#date(date, { day: 'numeric', month: 'short' });
  }

  /** `4 May 2026` */
  dayMonthYear(date: LocalDate): string {
    return this.#date(date, { day: 'numeric', month: 'long', year: 'numeric' });
  }

  /** `Tuesday 4 May` */
  fullDay(date: LocalDate): string {
    return this.#date(date, { weekday: 'long', day: 'numeric', month: 'long' });
  }

  /** With a capital to begin a line; `pH` keeps its own. */
  capital(text: string): string {
    if (/^.\p{Lu}/u.test(text)) return text;
    const [first = ''] = text;
    return `${first.toLocaleUpperCase(this.locale)}${text.slice(first.length)}`;
  }

  #date(date: LocalDate, format: Intl.DateTimeFormatOptions): string {
    return DateTime.fromISO(date, { zone: 'utc' }).setLocale(this.locale).toLocaleString(format);
  }
}
