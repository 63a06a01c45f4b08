import type { Counters, Writes } from './store.ts';

/** A greenhouse's own numbering once a handling is written. */
export function countersAfter(
  { revision, lastEntryNo, lastOutgoingNo, clockMs }: Counters,
  { entries, outgoing, clockMs: atMs }: Pick<Writes, 'entries' | 'outgoing' | 'clockMs'>,
): Counters {
  return {
    revision: revision + 1,
    lastEntryNo: highest(lastEntryNo, entries),
    lastOutgoingNo: highest(lastOutgoingNo, outgoing),
    clockMs: Math.max(clockMs, atMs),
  };
}

function highest(last: number, written: readonly { readonly no: number }[]): number {
  return written.reduce((most, { no }) => Math.max(most, no), last);
}
