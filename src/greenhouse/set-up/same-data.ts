/** Whether two values are the same as plain data, in whatever order their fields stand. */
export function sameData(one: unknown, other: unknown): boolean {
  return inOrder(one) === inOrder(other);
}

function inOrder(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
