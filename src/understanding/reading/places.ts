import type { Concept } from '../vocabulary/concept.ts';
import type { Term } from './term.ts';

/** Asks of a term, its index, and those around it. A function that has a name: what it finds is kept under it. */
type Test = (term: Term, i: number, terms: readonly Term[]) => boolean;

/**
 * Where in a message something stands, gone through once for each thing asked after and kept: so that
 * looking into every clause for every number of it stays in proportion to the message's length.
 */
export class Places {
  private readonly terms: readonly Term[];
  private readonly byConcept = new Map<Concept, number[]>();
  private readonly byTest = new Map<Test, readonly number[]>();

  constructor(terms: readonly Term[]) {
    this.terms = terms;
    terms.forEach((term, i) => {
      if (term.kind !== 'word') return;
      for (const concept of term.word.concepts) {
        const known = this.byConcept.get(concept);
        if (known) known.push(i);
        else this.byConcept.set(concept, [i]);
      }
    });
  }

  /** Whether a word of this meaning stands from `from` up to but not including `to`. */
  has(concept: Concept, from: number, to: number): boolean {
    const places = this.byConcept.get(concept);
    return places !== undefined && firstIn(places, from) < to;
  }

  /** Whether a word of one of these meanings stands anywhere. */
  hasAny(concepts: readonly Concept[]): boolean {
    return concepts.some((concept) => this.byConcept.has(concept));
  }

  /** Indices of the terms that pass. */
  where(test: Test): readonly number[] {
    const known = this.byTest.get(test);
    if (known) return known;
    const found: number[] = [];
    this.terms.forEach((term, i) => {
      if (test(term, i, this.terms)) found.push(i);
    });
    this.byTest.set(test, found);
    return found;
  }

  /** Those of them from `from` up to but not including `to`. */
  within(test: Test, from: number, to: number): readonly number[] {
    const all = this.where(test);
    return all.slice(firstAt(all, from), firstAt(all, to));
  }

  hasWhere(test: Test, from: number, to: number): boolean {
    return this.nextWhere(test, from) < to;
  }

  /** The first of them from `from` on; beyond every index if there is none. */
  nextWhere(test: Test, from: number): number {
    return firstIn(this.where(test), from);
  }

  /** The last of them up to and with `to`, or -1. */
  lastWhere(test: Test, to: number): number {
    const all = this.where(test);
    return all[firstAt(all, to + 1) - 1] ?? -1;
  }
}

/** The place in a rising list of the first number that is not below `least`. */
export function firstAt(rising: readonly number[], least: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle]! < least) low = middle + 1;
    else high = middle;
  }
  return low;
}

function firstIn(rising: readonly number[], least: number): number {
  return rising[firstAt(rising, least)] ?? Number.POSITIVE_INFINITY;
}
