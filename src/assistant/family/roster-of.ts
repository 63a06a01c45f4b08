import type { Arrangement } from '../../greenhouse/arrangement.ts';
import { Roster } from '../../planning/roster.ts';
import type { Standing } from '../standing.ts';

/** Who goes when, by all that was settled, or by only so much of it. */
export function rosterOf(
  {
    greenhouse,
    arrangements,
    unjoined,
  }: Pick<Standing, 'greenhouse' | 'arrangements' | 'unjoined'>,
  settled: readonly Arrangement[] = arrangements,
): Roster {
  return new Roster(greenhouse, settled, unjoined);
}
