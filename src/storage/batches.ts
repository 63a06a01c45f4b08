/**
 * PostgreSQL takes 65535 parameters a statement, and the widest rows written many at a time have
 * some twenty columns.
 */
const mostRows = 2000;

/** The rows in statements of a size that PostgreSQL takes; none where there are no rows. */
export function batchesOf<T>(rows: readonly T[]): readonly T[][] {
  const batches: T[][] = [];
  for (let from = 0; from < rows.length; from += mostRows) {
    batches.push(rows.slice(from, from + mostRows));
  }
  return batches;
}
