import type { Fact } from '../fact.ts';
import type { Frame } from '../reading/frame.ts';
import type { TimeMark } from '../times/time-mark.ts';

/** `power was out from 2 to 4` tells the end of the outage as well. */
export function withEnds(frame: Frame, facts: readonly Fact[], marks: readonly TimeMark[]): Fact[] {
  return facts.flatMap((fact) => {
    const clause = frame.clauseOf[fact.at];
    const inClause = marks.filter((mark) => mark.clause === clause);
    const isEnded = inClause.some(({ until }) => until) && inClause.some(({ until }) => !until);
    if (fact.quantity !== 'outage' || !isEnded) return [fact];
    return [fact, { ...fact, quantity: 'restored' as const, ends: true }];
  });
}
