import type { Outcome, OutsideRange } from '../../src/science/outcome.ts';

/** The value of a formula that must hold here; the test fails with the range when it does not. */
export function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(`expected a value, found outside ${JSON.stringify(outcome.outside)}`);
}

/** What was outside, of a formula that must not hold here. */
export function outsideFrom(outcome: Outcome<unknown>): OutsideRange {
  if (!outcome.ok) return outcome.outside;
  throw new Error(`expected to be outside, found the value ${JSON.stringify(outcome.value)}`);
}
