import type { Context } from '../context.ts';
import type { Measure } from '../numbers/measure.ts';
import { isVolume } from '../numbers/quantity-of-measure.ts';
import type { Concept } from '../vocabulary/concept.ts';
import type { Folded } from './fold.ts';
import type { Lexicon } from './lexicon.ts';
import { Places } from './places.ts';
import {
  type Cut,
  isMark,
  isProbe,
  isUnknown,
  type MeasureTerm,
  means,
  type NameTerm,
  type Term,
} from './term.ts';

/** A stretch between two cuts; terms `from` up to but not including `to`. */
export interface Clause {
  readonly from: number;
  readonly to: number;
  readonly sentence: number;
  /** Sentences, cut at semicolons as well. */
  readonly segment: number;
  readonly opens: Cut | 'start';
  readonly closes: Cut | 'end';
}

/** A message laid out for the recognisers. `taken` marks the terms that a recogniser has read. */
export interface Frame {
  readonly context: Context;
  readonly lexicon: Lexicon;
  readonly folded: Folded;
  readonly terms: readonly Term[];
  /** Where among the terms something stands. */
  readonly places: Places;
  readonly clauses: readonly Clause[];
  /** The clauses of each sentence. */
  readonly sentences: readonly (readonly Clause[])[];
  /** The clause of each term; a cut belongs to the clause it closes. */
  readonly clauseOf: readonly number[];
  readonly taken: boolean[];
  /** Terms that tell a time: they part nothing. */
  readonly timed: boolean[];
}

export function frameOf(
  context: Context,
  lexicon: Lexicon,
  folded: Folded,
  terms: readonly Term[],
): Frame {
  const clauses: Clause[] = [];
  const sentences: Clause[][] = [];
  const clauseOf: number[] = [];
  let from = 0;
  let sentence = 0;
  let segment = 0;
  let opens: Clause['opens'] = 'start';
  const close = (to: number, closes: Clause['closes']) => {
    const clause = { from, to, sentence, segment, opens, closes };
    clauses.push(clause);
    if (sentence < sentences.length) sentences[sentence]!.push(clause);
    else sentences.push([clause]);
  };
  terms.forEach((term, i) => {
    clauseOf.push(clauses.length);
    if (term.kind !== 'stop') return;
    close(i, term.cut);
    from = i + 1;
    opens = term.cut;
    const endsSentence = term.cut === 'sentence' || term.cut === 'question' || term.cut === 'line';
    if (endsSentence) sentence++;
    if (endsSentence || term.cut === 'semicolon') segment++;
  });
  close(terms.length, 'end');
  const taken = terms.map(() => false);
  const timed = terms.map(() => false);
  const places = new Places(terms);
  return { context, lexicon, folded, terms, places, clauses, sentences, clauseOf, taken, timed };
}

export function take(frame: Frame, ...indices: readonly number[]): void {
  for (const i of indices) frame.taken[i] = true;
}

export function takeRange(frame: Frame, from: number, to: number): void {
  for (let i = from; i < to; i++) frame.taken[i] = true;
}

export function takeTime(frame: Frame, from: number, to: number): void {
  takeRange(frame, from, to);
  for (let i = from; i < to; i++) frame.timed[i] = true;
}

export function measureAtTerm(frame: Frame, i: number): Measure | null {
  const term = frame.terms[i];
  return term?.kind === 'measure' && !frame.taken[i] ? term.measure : null;
}

/** Where the sentence of a clause ends. */
export function endOfSentence(frame: Frame, clause: Clause): number {
  return frame.sentences[clause.sentence]!.at(-1)!.to;
}

/** The clause before that says something: a comma and a `then` leave an empty one between them. */
export function clauseToldBefore(frame: Frame, clause: Clause): Clause | undefined {
  let c = frame.clauseOf[clause.from]! - 1;
  while (c >= 0 && frame.clauses[c]!.from === frame.clauses[c]!.to) c--;
  return frame.clauses[c];
}

/** Indices of the terms of a clause that pass. */
export function inClause(
  frame: Frame,
  clause: Clause,
  test: (term: Term, i: number) => boolean,
): number[] {
  const found: number[] = [];
  for (let i = clause.from; i < clause.to; i++) if (test(frame.terms[i]!, i)) found.push(i);
  return found;
}

/** Half-open range of terms. */
export type TermRange = Pick<Clause, 'from' | 'to'>;

export function clauseHas(
  frame: Frame,
  { from, to }: TermRange,
  ...concepts: readonly Concept[]
): boolean {
  return concepts.some((concept) => frame.places.has(concept, from, to));
}

export function measuresIn(frame: Frame, clause: Clause): number[] {
  return frame.places.within(isMeasure, clause.from, clause.to).filter((i) => !frame.taken[i]);
}

export function namesIn(frame: Frame, clause: Clause): readonly number[] {
  return frame.places.within(isName, clause.from, clause.to);
}

export function hasUnknown(frame: Frame, from: number, to: number): boolean {
  return frame.places.within(isUnknown, from, to).some((i) => !frame.taken[i]);
}

/** Words that may stand between a quantity and its number without changing anything. */
export function isPadding(term: Term): boolean {
  return (
    isMark(term, ':', '=', '-', '"', '~', '*', '/', '→', "'", '@', '_') ||
    means(
      term,
      'link',
      'filler',
      'article',
      'about',
      'ish',
      'now',
      'was',
      'self',
      'pronoun',
      'instrument',
      'at',
    ) ||
    isProbe(term)
  );
}

/** The next term of the clause that is not skipped; -1 if there is none. */
export function nextIn(
  frame: Frame,
  clause: Clause,
  i: number,
  skip: (term: Term) => boolean,
): number {
  for (let j = i + 1; j < clause.to; j++) if (!skip(frame.terms[j]!)) return j;
  return -1;
}

export function previousIn(
  frame: Frame,
  clause: Clause,
  i: number,
  skip: (term: Term) => boolean,
): number {
  for (let j = i - 1; j >= clause.from; j--) if (!skip(frame.terms[j]!)) return j;
  return -1;
}

/** `half`, `a third`: a part, and nothing says of what. */
export function isShare(term: Term): boolean {
  return term.kind === 'measure' && term.measure.share && term.measure.unit === null;
}

export function isName(term: Term | undefined): term is NameTerm {
  return term?.kind === 'name';
}

export function isMeasure(term: Term | undefined): term is MeasureTerm {
  return term?.kind === 'measure';
}

/** An amount of something that pours; one test for all who look for it, since places are kept by it. */
export function isVolumeTerm(term: Term): boolean {
  return term.kind === 'measure' && isVolume(term.measure);
}

/** The measure that a term is; whoever asks has found out that it is one. */
export function measureOf(frame: Frame, i: number): Measure {
  const term = frame.terms[i];
  if (term?.kind !== 'measure')
    throw new Error(`term ${i} is ${term?.kind ?? 'none'}, not a measure`);
  return term.measure;
}
