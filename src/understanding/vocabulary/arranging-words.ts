import type { Language } from '../../greenhouse/member.ts';
import { arranging as german } from './de/arranging.ts';
import { arranging as english } from './en/arranging.ts';

/** What words can mean when people settle who goes when. */
export type ArrangingConcept =
  | 'self'
  | 'self-will'
  | 'self-is'
  | 'is'
  | 'will'
  | 'can'
  | 'cannot'
  /** Said of a day: it is one on which somebody can go. */
  | 'suits'
  /** Said of somebody. */
  | 'has-time'
  /** Tells of the past, but of now beside `has-time`: ich habe gewischt, ich habe Zeit. */
  | 'has'
  | 'not'
  | 'nobody'
  | 'anybody'
  | 'everybody'
  | 'in-turn'
  | 'away'
  | 'at-somebodys'
  /** Said of a trip: it begins or ends on other days than were told. */
  | 'other-days'
  /** What was settled is to be otherwise. */
  | 'plan-changed'
  /** Sets out, or stays there. */
  | 'travel'
  | 'back'
  /** Asks for the day of what follows: when is Ines back. */
  | 'when-is'
  /** How the absence went. */
  | 'how-it-went'
  /** Goes no more at all. */
  | 'gives-up'
  /** Of somebody: cannot go now. */
  | 'ill'
  /** What is somebody's to do: my days, my turns. */
  | 'own-turns'
  /** Before a day: the speaker's. */
  | 'mine'
  /** What was spoken of last. */
  | 'it'
  | 'past'
  | 'condition'
  | 'from'
  | 'until'
  /** A day on which it is over: can't before Friday. */
  | 'before'
  /** Beside a day: the first of all. */
  | 'not-before'
  /** The same before `from`. */
  | 'only'
  | 'on'
  | 'for-so-long'
  | 'then'
  | 'next'
  | 'this'
  | 'day'
  | 'week'
  | 'weekend'
  | 'today'
  | 'this-evening'
  | 'tomorrow'
  | 'day-after-tomorrow'
  | 'evening'
  | 'day-part'
  | 'go'
  | 'cover'
  | 'do'
  | 'top-up'
  | 'check'
  | 'change'
  | 'clean'
  | 'calibrate'
  | 'dose'
  | 'air'
  | 'all-of-it'
  | 'give-back'
  | 'to-somebody'
  | 'who-goes'
  | 'the-plan'
  | 'how-to'
  | 'news-daily'
  | 'news-never'
  | 'one-of-it'
  | 'two-of-it'
  /** Before somebody: in that one's place. */
  | 'instead-of'
  /** As it had been, or as nobody thought any more. */
  | 'after-all'
  | 'because'
  | 'filler';

/** One language's words for it, phrases in small letters, words split by single blanks; the longest wins. */
export interface ArrangingWords {
  readonly words: Readonly<Record<ArrangingConcept, readonly string[]>>;
  /** Monday first: on every such day. */
  readonly everyWeekday: readonly (readonly string[])[];
  /** Words between two days that are both meant: Sat and Sun. */
  readonly dayJoiners: readonly string[];
  /** The word between the two days of a stretch: between Friday and Monday. */
  readonly rangeJoiners: readonly string[];
  /** Words between two clauses that each say something. */
  readonly clauseJoiners: readonly string[];
  /** That two change places: swap with Tomas. */
  readonly swapWords: readonly string[];
  /** That something said before is to be otherwise: no, from Saturday. */
  readonly mendingWords: readonly string[];
  /** Whoever was named before. */
  readonly thirdPersons: readonly string[];
  /** Stands after a day of the month: 16th. */
  readonly ordinalMarks: readonly string[];
}

export const arrangingWords: Readonly<Record<Language, ArrangingWords>> = {
  en: english,
  de: german,
};

/** Those of every language: a household may mix them. */
export const dayJoiners: ReadonlySet<string> = new Set(
  Object.values(arrangingWords).flatMap((words) => words.dayJoiners),
);
/** Between the days of `between Friday and Monday`. */
export const rangeJoiners: ReadonlySet<string> = new Set(
  Object.values(arrangingWords).flatMap((words) => words.rangeJoiners),
);
export const clauseJoiners: ReadonlySet<string> = new Set(
  Object.values(arrangingWords).flatMap((words) => words.clauseJoiners),
);
export const swapWords: ReadonlySet<string> = new Set(
  Object.values(arrangingWords).flatMap((words) => words.swapWords),
);
export const mendingWords: ReadonlySet<string> = new Set(
  Object.values(arrangingWords).flatMap((words) => words.mendingWords),
);
export const thirdPersons: ReadonlySet<string> = new Set(
  Object.values(arrangingWords).flatMap((words) => words.thirdPersons),
);
