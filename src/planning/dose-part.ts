import type { StockItem } from '../greenhouse/greenhouse.ts';
import type { System } from '../greenhouse/system.ts';
import { DOSE_BOUNDS, doseTold, LEAST_DOSE_ML } from './dose-bounds.ts';
import { dosesOf } from './doses-given.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { RefusedAmount } from './planned-dose.ts';
import { stockLeftMl } from './stock-left.ts';

const DAY_MS = 86_400_000;

export interface DoseSum {
  readonly system: System;
  readonly quantity: 'ph' | 'ec';
  /** What goes in, the same mL of each. */
  readonly items: readonly StockItem[];
  readonly litres: number;
  /** What would bring it to where it should be, most likely, mL of each. */
  readonly wholeMl: number;
  /** What would not carry it past the far end even if it acts strongly. */
  readonly harmlessMl: number;
  /** Doses whose effect is known. */
  readonly trials: number;
}

export interface DosePart {
  readonly ok: true;
  readonly partMl: number;
  readonly isFirstPart: boolean;
}

/**
 * The part to give now: at most half of the whole at first, then the rest as far as it is harmless;
 * never beyond the bounds, and never what is not there.
 */
export function dosePart(sum: DoseSum, question: BoardQuestion): DosePart | RefusedAmount {
  const { system, items, litres, wholeMl, harmlessMl } = sum;
  const [item] = items;
  if (!item) return { ok: false, because: { kind: 'outside-formula', quantity: sum.quantity } };
  const today = dosesOf(question.logbook, system.id).filter(
    (entry) => entry.product === item.product && question.nowMs - entry.atMs < DAY_MS,
  );
  const givenMl = today.reduce((total, entry) => total + entry.value, 0);
  const mostMl = DOSE_BOUNDS.inADay * system.brimL;
  if (wholeMl + givenMl > mostMl) {
    const mL = wholeMl + givenMl;
    return { ok: false, because: { kind: 'beyond-bound', product: item.product, mL, mostMl } };
  }
  const isFirstPart = today.length === 0;
  const bounds = DOSE_BOUNDS[sum.quantity];
  const perLitre = sum.trials === 0 ? bounds.firstPart : bounds.laterPart;
  const partMl = doseTold(
    Math.min(isFirstPart ? wholeMl / 2 : wholeMl, harmlessMl, perLitre * litres),
  );
  if (partMl < LEAST_DOSE_ML) {
    return { ok: false, because: { kind: 'outside-formula', quantity: sum.quantity } };
  }
  for (const { product, ...rest } of items) {
    if (partMl > stockLeftMl({ product, ...rest }, question.greenhouse, question.logbook)) {
      return { ok: false, because: { kind: 'not-in-stock', product, neededMl: partMl } };
    }
  }
  return { ok: true, partMl, isFirstPart };
}
