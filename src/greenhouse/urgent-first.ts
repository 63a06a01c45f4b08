import type { Duty } from './duty.ts';

/** So many are named in a sentence on a phone; of more, the most urgent and how many others. */
const MOST_NAMED = 5;
const NAMED_OF_MORE = 3;

/** The duties to be named, those that turn urgent first in front where not all are, and how many are left. */
export function urgentFirst(duties: readonly Duty[]): {
  readonly named: readonly Duty[];
  readonly more: number;
} {
  if (duties.length <= MOST_NAMED) return { named: duties, more: 0 };
  const inOrder = duties.toSorted((one, other) => compare(latest(one), latest(other)));
  return { named: inOrder.slice(0, NAMED_OF_MORE), more: duties.length - NAMED_OF_MORE };
}

function compare(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}

/** What never turns urgent comes after all that does. */
function latest({ latestOn }: Duty): string {
  return latestOn ?? '~';
}
