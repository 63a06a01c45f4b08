import type { TopicAsked } from '../wishes/wish.ts';
import type { Concept } from './concept.ts';

export type UnitId =
  | 'ml'
  | 'cl'
  | 'dl'
  | 'l'
  | 'gal'
  | 'cm'
  | 'mm'
  | 'm'
  | 'in'
  | 'celsius'
  | 'fahrenheit'
  | 'degree'
  | 'g'
  | 'kg'
  | 'oz'
  | 'lb'
  /** 500 g, as German speakers say a pound. */
  | 'metric-pound'
  /** 10 g, as Austria says. */
  | 'decagram'
  | 'ms-cm'
  | 'us-cm'
  | 'cf'
  | 'ppm'
  | 'percent'
  | 'mg-l'
  | 'second'
  | 'minute'
  | 'hour'
  | 'day'
  | 'week'
  | 'month'
  | 'year'
  | 'minute-an-hour'
  /** Units that the greenhouse cannot know the size of, or that measure something else. */
  | 'unknown';

/** Products by what they do, as they are named in a stock; other products go by their own name. */
export type CommonProduct = 'ph-up' | 'ph-down' | 'nutrient-a' | 'nutrient-b';

export type Words<C extends string> = Readonly<Record<C, readonly string[]>>;

/**
 * One language, whole, as data. Phrases are written in small letters, their words split by single
 * blanks as the reader splits them; the longest phrase wins.
 */
export interface Vocabulary {
  readonly words: Words<Exclude<Concept, 'member'>>;
  /** Read only straight after a number. */
  readonly units: Words<UnitId>;
  /** Units that are other words as well: read only where nothing follows that they could belong to. */
  readonly shyUnits: readonly string[];
  readonly products: Words<CommonProduct>;
  /** Short names of products that are other words as well: read only after millilitres or beside each other. */
  readonly shyProducts: Words<CommonProduct>;
  /** Several products without saying which: nutrients, feed. */
  readonly anyProduct: readonly string[];
  readonly numbers: ReadonlyMap<string, number>;
  readonly fractions: ReadonlyMap<string, number>;
  readonly ordinals: ReadonlyMap<string, number>;
  /** What is glued to a digit to make it an ordinal: 3rd. */
  readonly ordinalMarks: readonly string[];
  /** What is glued to a pH buffer's value to name the buffer: 7er. */
  readonly bufferMarks: readonly string[];
  /** Words as they are typed with digits in them: b4, l8r. */
  readonly textSpeak: ReadonlyMap<string, string>;
  /** Monday first. */
  readonly weekdays: readonly (readonly string[])[];
  /** January first. */
  readonly months: readonly (readonly string[])[];
  /** Before an hour: half past, quarter to; the minutes to be added to it. */
  readonly clockTurns: ReadonlyMap<string, number>;
  /** Crops of this trade under one name each, so that one language's word finds another's. */
  readonly crops: Readonly<Record<string, readonly string[]>>;
  /** Endings that plural and possessive add, and what they stand for; longest first. */
  readonly endings: readonly (readonly [string, string])[];
  /** What a verb takes in or before it for what was done: ausgeizen, aus-ge-geizt. */
  readonly participleMarks: readonly string[];
  /** Endings of a verb as it stands in a list, and with `I`: `kappen`, `kapp`, `kappe`. */
  readonly presentOf: readonly (readonly [ending: string, own: string])[];
  /** Forms of verbs of work that no ending tells, by the verb: `shake` is `shook` and `shaken`. */
  readonly irregularForms: Readonly<Record<string, readonly string[]>>;
  /** What stands before a pump and clogs: beside a verb of cleaning it is a duty's part, else a thing as any. */
  readonly filters: readonly string[];
  /** Words that end compounds (`Wannenwasser`), longest first; empty in a language that has none. */
  readonly compoundEnds: readonly string[];
  /** Words after which a full stop ends no sentence. */
  readonly abbreviations: readonly string[];
  /** What asks whether one may or must, in this order of its words alone: never said of what is settled. */
  readonly asksOneself: readonly string[];
  /** What asks, before a power cut or something that stands still, whether there was one. */
  readonly asksOfOutage: readonly string[];
  /** What asks whoever reads it. */
  readonly asksReader: readonly string[];
  /** What asks where a system is named, and else may go on from what was said: `kann ich erst Freitag`. */
  readonly asksWithObject: readonly string[];
  /** Words of direction, size and order: a system's name only where a name can stand. */
  readonly everyday: readonly string[];
  /** What a question is about that asks for nothing in the log. */
  readonly topics: Words<TopicAsked>;
  /** Words that mean something, though nothing to the reader: no slip of a name or of another word. */
  readonly common: readonly string[];
}
