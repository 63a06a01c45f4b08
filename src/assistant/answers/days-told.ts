import type { Entry } from '../../greenhouse/entry.ts';
import { type LocalDate, localDateOf } from '../../greenhouse/local-time.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { boardOf } from '../board-of.ts';
import type { DaysTold } from '../replies/plain.ts';
import type { Standing } from '../standing.ts';

/** What was done on the local dates `from` to `to`, by whom, and what was left undone. */
export function daysTold(
  standing: Standing,
  from: LocalDate,
  to: LocalDate,
  nowMs: number,
): DaysTold {
  const { greenhouse, logbook } = standing;
  const dateOf = ({ atMs }: Entry): LocalDate => localDateOf(atMs, greenhouse.timeZone);
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const entries = logbook.all.filter(
    (entry) => !entry.struck && dateOf(entry) >= from && dateOf(entry) <= to,
  );
  const visits = entries.filter(({ source }) => source.kind === 'member');
  const daysOf = (handle: string): number =>
    countOf(
      visits.filter(({ source }) => source.kind === 'member' && source.handle === handle),
      dateOf,
    );
  return {
    kind: 'days-told',
    from,
    to,
    days: countOf(visits, dateOf),
    by: greenhouse.members
      .map(({ handle }) => ({ handle, days: daysOf(handle) }))
      .filter(({ days }) => days > 0)
      .toSorted((one, other) => other.days - one.days),
    systems: greenhouse.systems.map(({ id }) => figuresOf(id, entries)),
    troubles: entries.filter(
      ({ quantity, trouble }) =>
        quantity === 'outage' || quantity === 'duty-failed' || trouble !== undefined,
    ),
    missed: boardOf(standing, nowMs).today.filter(
      ({ duty }) => duty.alongside !== true && duty.dueOn <= to && duty.dueOn < today,
    ),
  };
}

function figuresOf(system: SystemId, entries: readonly Entry[]): DaysTold['systems'][number] {
  const of = (...quantities: readonly Quantity[]): readonly Entry[] =>
    entries.filter((entry) => entry.system === system && quantities.includes(entry.quantity));
  const sum = (found: readonly Entry[]): number =>
    found.reduce((total, { value }) => total + value, 0);
  return {
    system,
    toppedUpL: sum(of('top-up')),
    changes: of('reservoir-change').length,
    checks: countOf(of('ph', 'ec'), ({ atMs }) => Math.floor(atMs / SAME_CHECK_MS)),
    dosedMl: sum(of('dose')),
    harvestG: sum(of('harvest')),
  };
}

/** pH and EC told within the same hour are one look at it. */
const SAME_CHECK_MS = 3_600_000;

function countOf(entries: readonly Entry[], keyOf: (entry: Entry) => unknown): number {
  return new Set(entries.map(keyOf)).size;
}
