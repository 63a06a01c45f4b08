import type { WaterEvent } from '../estimation/water-event.ts';
import type { Entry } from '../greenhouse/entry.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from './logbook.ts';
import type { PastRound } from './rounds.ts';

/** Everything that is known of one system's water, earliest first. */
export function waterEventsOf(
  logbook: Logbook,
  rounds: readonly PastRound[],
  system: SystemId,
): readonly WaterEvent[] {
  const said = (['level', 'top-up', 'reservoir-change', 'harvest', 'duty-done'] as const)
    .flatMap((quantity) => liveEntries(logbook, system, quantity))
    .toSorted((one, other) => one.atMs - other.atMs || one.no - other.no)
    .flatMap(waterEvent);
  const unsaid = unreported(said, rounds, system);
  return unsaid.length === 0
    ? said
    : [...said, ...unsaid].toSorted((one, other) => one.atMs - other.atMs);
}

function waterEvent(entry: Entry): WaterEvent[] {
  const { atMs, value } = entry;
  const approximate = entry.approximate ?? false;
  switch (entry.quantity) {
    case 'level':
      return [{ kind: 'level', atMs, litres: value, approximate }];
    case 'top-up':
      return [{ kind: 'top-up', atMs, litres: value, approximate, askedL: entry.askedL ?? null }];
    case 'reservoir-change':
      return [{ kind: 'reservoir-change', atMs, litres: value }];
    case 'harvest':
      return [{ kind: 'cut', atMs }];
    case 'duty-done':
      return entry.duty === 'top-up'
        ? [{ kind: 'top-up', atMs, litres: null, approximate: true, askedL: null }]
        : [];
    default:
      return [];
  }
}

/** Common practice: people who are asked mostly do it, and sometimes forget to say so. */
const doneAllTheSameChance = 0.4;
/** A duty of the morning is done some time in the morning. */
const doneAfterMs = 2 * 3_600_000;

/** Top-ups that a round asked for and that nobody had reported when the next round went out. */
function unreported(
  said: readonly WaterEvent[],
  rounds: readonly PastRound[],
  system: SystemId,
): readonly WaterEvent[] {
  return rounds.slice(0, -1).flatMap((round, position): WaterEvent[] => {
    const wasAsked = round.duties.some((duty) => duty.kind === 'top-up' && duty.system === system);
    if (!wasAsked) return [];
    const nextMs = rounds[position + 1]!.sentAtMs;
    const wasSaid = said.some(
      (event) => event.kind !== 'cut' && event.atMs >= round.sentAtMs && event.atMs < nextMs,
    );
    if (wasSaid) return [];
    const atMs = Math.min(round.sentAtMs + doneAfterMs, nextMs);
    return [{ kind: 'unreported-top-up', atMs, chance: doneAllTheSameChance }];
  });
}
