import type { Ledger, Writes } from './ports/store.ts';
import { type Standing, type StandingChanges, withChanges } from './standing.ts';

/** What one transaction decided: what to write, and how the greenhouse stands then. */
export interface Decision<T> {
  readonly standing: Standing;
  readonly writes: Partial<Omit<Writes, 'clockMs'>>;
  readonly result: T;
}

export const noChanges: StandingChanges = {
  entries: [],
  strikes: [],
  weather: [],
  mornings: [],
  arrangements: [],
  greenhouse: null,
};

/** The standing as the database holds it under the lock, at `nowMs`. */
export async function broughtUp(
  standing: Standing,
  ledger: Ledger,
  nowMs: number,
): Promise<Standing> {
  const { revision } = ledger.counters;
  const changes =
    revision === standing.revision ? noChanges : await ledger.changesSince(standing.revision);
  return withChanges(standing, changes, revision, Math.max(nowMs, standing.nowMs));
}
