/** A table of values by an ascending quantity. */
export type Table = readonly (readonly [at: number, value: number])[];

/**
 * Straight line between the two neighbours in a table. Where the table ends is the caller's range to
 * check: asking beyond it is a broken invariant.
 */
export function interpolate(table: Table, at: number): number {
  const above = table.findIndex(([edge]) => edge >= at);
  const upper = table[above];
  if (upper === undefined) throw new RangeError(`${at} is beyond the table's end`);
  if (upper[0] === at) return upper[1];
  const lower = table[above - 1];
  if (lower === undefined) throw new RangeError(`${at} is before the table's start`);
  const share = (at - lower[0]) / (upper[0] - lower[0]);
  return lower[1] + share * (upper[1] - lower[1]);
}

/** Where a table begins and ends. */
export function spanOf(table: Table): { readonly from: number; readonly to: number } {
  const first = table[0];
  const last = table.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('the table is empty');
  return { from: first[0], to: last[0] };
}
