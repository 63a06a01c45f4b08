import type { Entry } from '../../greenhouse/entry.ts';

/** Entries at least so long apart, the latest kept: a sensor's stream says no more than its steps. */
export function spaced(entries: readonly Entry[], leastMs: number, most: number): readonly Entry[] {
  const kept: Entry[] = [];
  for (let i = entries.length - 1; i >= 0 && kept.length < most; i -= 1) {
    const entry = entries[i]!;
    const after = kept.at(-1);
    if (!after || after.atMs - entry.atMs >= leastMs) kept.push(entry);
  }
  return kept.reverse();
}
