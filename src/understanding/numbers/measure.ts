import type { Unit } from '../reading/word-list.ts';

/** A number as it was said, with its unit if it has one. */
export interface Measure {
  /** What it can be read as, likeliest first: `1,413` is 1.413 or 1413. */
  readonly values: readonly number[];
  readonly unit: Unit | null;
  readonly approximate: boolean;
  /** More than, less than, up to: a bound, no reading. */
  readonly bound: boolean;
  /** A share said in words: half, three quarters. */
  readonly share: boolean;
  /** The same amount said again in other units, where the two do not agree. */
  readonly disputedBy?: Measure | undefined;
  /** As written, for asking back. */
  readonly written: string;
  /** A whole number without sign or decimals. */
  readonly whole: boolean;
  /** How many decimals are written. */
  readonly decimals: number;
}
