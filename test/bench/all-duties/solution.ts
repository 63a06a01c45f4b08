import type { Dice } from '../season/dice.ts';

/** The hidden truth of one system's solution: where its pH and EC go, and what dosing does to them. */
export interface Solution {
  readonly ph: number;
  readonly ec: number;
  /** A day passes. */
  nextDay(): void;
  /** Somebody doses towards the middle of a range; products are never quite as strong as told. */
  dosedTowards(quantity: 'ph' | 'ec', target: number): void;
  /** Emptied and mixed new. */
  renewed(): void;
}

/** Common practice: a fed crop moves pH by some hundredths a day, and EC by a few, one way or the other. */
const PH_SLOPE_SD = 0.05;
const EC_SLOPE_SD = 0.02;
const PH_DAY_SD = 0.03;
const EC_DAY_SD = 0.02;
const DOSE_OFF = 0.2;

export function solutionOf(
  ph: readonly [number, number],
  ec: readonly [number, number],
  dice: Dice,
): Solution {
  const middle = { ph: (ph[0] + ph[1]) / 2, ec: (ec[0] + ec[1]) / 2 };
  const slope = { ph: PH_SLOPE_SD * dice.normal(), ec: EC_SLOPE_SD * dice.normal() };
  const now = { ...middle };
  return {
    get ph() {
      return now.ph;
    },
    get ec() {
      return now.ec;
    },
    nextDay() {
      now.ph += slope.ph + PH_DAY_SD * dice.normal();
      now.ec += slope.ec + EC_DAY_SD * dice.normal();
    },
    dosedTowards(quantity, target) {
      now[quantity] += (target - now[quantity]) * dice.between(1 - DOSE_OFF, 1 + DOSE_OFF);
    },
    renewed() {
      Object.assign(now, middle);
    },
  };
}
