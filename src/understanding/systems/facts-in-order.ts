import type { Fact } from '../fact.ts';
import { firstAt } from '../reading/places.ts';

/** The facts of a message in the order they are said, looked up by halving. */
export class FactsInOrder {
  private readonly facts: readonly Fact[];
  private readonly starts: readonly number[];
  /** Of each fact and those before it, the last term that any goes on to. */
  private readonly goOnTo: readonly number[];

  /** `facts`: rising by the term they stand at. */
  constructor(facts: readonly Fact[]) {
    this.facts = facts;
    this.starts = facts.map(({ at }) => at);
    let furthest = -1;
    this.goOnTo = facts.map(({ to }) => (furthest = Math.max(furthest, to)));
  }

  /** The first one that stands after this term. */
  after(term: number): Fact | undefined {
    return this.facts[firstAt(this.starts, term + 1)];
  }

  /** Whether one stands after the first term and before the second. */
  hasBetween(after: number, before: number): boolean {
    const next = this.after(after);
    return next !== undefined && next.at < before;
  }

  /** Those that stand after the first term and before the second, all of which pass. */
  everyBetween(after: number, before: number, test: (fact: Fact) => boolean): boolean {
    for (let n = firstAt(this.starts, after + 1); n < this.facts.length; n++) {
      const fact = this.facts[n]!;
      if (fact.at >= before) break;
      if (!test(fact)) return false;
    }
    return true;
  }

  /** Whether one that stands before `before` reaches the term `from` or goes beyond. */
  reaches(from: number, before: number): boolean {
    const count = firstAt(this.starts, before);
    return count > 0 && this.goOnTo[count - 1]! >= from;
  }
}
