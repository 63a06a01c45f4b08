import type { SystemId } from '../../greenhouse/system.ts';
import type { Measure } from '../numbers/measure.ts';
import type { Concept } from '../vocabulary/concept.ts';
import type { Meanings } from './meanings.ts';
import type { Word } from './word.ts';

/** Where a message is cut: the stronger, the later in this list. */
export type Cut = 'comma' | 'and' | 'then' | 'but' | 'semicolon' | 'sentence' | 'question' | 'line';

export interface Place {
  /** Offsets in the folded text. */
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** Nothing stands between it and the term before. */
  readonly glued: boolean;
}

export interface WordTerm extends Place {
  readonly kind: 'word';
  readonly word: Word;
}

export interface NameTerm extends Place {
  readonly kind: 'name';
  readonly systems: readonly SystemId[];
  /** false: too short a slip to be sure of, or one that fits several. */
  readonly sure: boolean;
  readonly slip: boolean;
  readonly singular: boolean;
  /** The words may mean something else; so said by position alone. */
  readonly everyday: boolean;
}

export interface MeasureTerm extends Place {
  readonly kind: 'measure';
  readonly measure: Measure;
}

export interface StopTerm extends Place {
  readonly kind: 'stop';
  readonly cut: Cut;
}

/** A clock time or a run of digits that measures nothing. */
export interface DigitsTerm extends Place {
  readonly kind: 'clock' | 'digits';
  /** clock: minutes after midnight. */
  readonly minutes: number;
}

/** A colon, a stroke, an arrow, a sign of no meaning. */
export interface MarkTerm extends Place {
  readonly kind: 'mark';
}

export type Term = MarkTerm | WordTerm | NameTerm | MeasureTerm | StopTerm | DigitsTerm;

export function means(term: Term | undefined, ...concepts: readonly Concept[]): boolean {
  if (term?.kind !== 'word') return false;
  return term.word.concepts.hasAny(concepts);
}

/** What is listened for where something may be wrong, or where a name could stand; elsewhere such a word means no more than a stranger. */
const ofTrouble: ReadonlySet<Concept> = new Set<Concept>([
  'leak',
  'ailing',
  'plant-part',
  'off-colour',
  'murky',
  'foul',
  'weak-bubbles',
  'labouring',
  'burning',
  'shock',
  'caustic',
  'spilling',
  'on-floor',
  'ceased',
  'on-body',
  'burnt-by-it',
  'hindered',
  'planter',
]);

export function meansNothing(concepts: Meanings): boolean {
  for (const concept of concepts) if (!ofTrouble.has(concept)) return false;
  return true;
}

/** A word that no vocabulary has. */
export function isUnknown(term: Term | undefined): boolean {
  if (term?.kind !== 'word') return false;
  const { word } = term;
  return (
    meansNothing(word.concepts) &&
    word.number === null &&
    word.fraction === null &&
    word.ordinal === null &&
    word.product === null &&
    word.shyProduct === null &&
    !word.anyProduct &&
    word.probe === null &&
    word.crop === null &&
    word.weekday === null &&
    word.month === null &&
    word.clockTurn === null
  );
}

export function isMark(term: Term | undefined, ...marks: readonly string[]): boolean {
  return term?.kind === 'mark' && marks.includes(term.text);
}

export function isCrop(term: Term | undefined): boolean {
  return term?.kind === 'word' && term.word.crop !== null;
}

export function isProbe(term: Term | undefined): boolean {
  return term?.kind === 'word' && term.word.probe !== null;
}

export function isWeekday(term: Term | undefined): boolean {
  return term?.kind === 'word' && term.word.weekday !== null;
}
