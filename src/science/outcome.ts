/** The span in which a formula holds, ends included. */
export interface ValidRange {
  readonly quantity: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

/** The input that left the range of a formula, and the range it left. */
export interface OutsideRange extends ValidRange {
  readonly found: number;
}

/** The answer of a formula that does not hold for what it was given. */
export interface Outside {
  readonly ok: false;
  readonly outside: OutsideRange;
}

/**
 * What a formula returns: its value, or the fact that it does not hold for this input.
 * A number from outside a formula's range looks like any other number, so none is given.
 */
export type Outcome<T> = { readonly ok: true; readonly value: T } | Outside;

/** The formula holds, and this is its value. */
export function holds<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

/** The formula does not hold, because `found` is not in `range`. */
export function outsideOf(range: ValidRange, found: number): Outside {
  return { ok: false, outside: { ...range, found } };
}

/**
 * The first input that is outside its range, or undefined when all are inside. What is not a
 * number is inside no range.
 */
export function firstOutside(
  ...checks: readonly (readonly [found: number, range: ValidRange])[]
): Outside | undefined {
  for (const [found, range] of checks) {
    if (!(found >= range.from && found <= range.to)) return outsideOf(range, found);
  }
  return undefined;
}
