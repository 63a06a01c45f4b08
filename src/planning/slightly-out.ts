import { type LocalDate, plusDays } from '../greenhouse/local-time.ts';
import type { Range } from '../greenhouse/system.ts';

/** What a solution is kept within by dosing. */
export type KeptQuantity = 'ph' | 'ec';

/**
 * So far beyond the wanted range plants are well for some days, in pH and mS/cm. Common practice: the
 * range is where the grower wants it, and harm begins further out.
 */
export const slightlyOut: Readonly<Record<KeptQuantity, number>> = { ph: 0.3, ec: 0.2 };

/** What is slightly out may wait so many days for a trip that is made anyway. */
const waitsDays = 4;
/** Readings are told in tenths and hundredths; their difference should be too. */
const rounding = 1e-6;

/** Until when a reading outside its range may wait for a trip; null: it may not. */
export function waitsForTripUntil(
  quantity: KeptQuantity,
  value: number,
  [lowest, highest]: Range,
  measuredOn: LocalDate,
): LocalDate | null {
  const outsideBy = Math.max(lowest - value, value - highest);
  return outsideBy > slightlyOut[quantity] + rounding ? null : plusDays(measuredOn, waitsDays);
}

/** The range beyond which harm begins. */
export function harmlessRange(quantity: KeptQuantity, [lowest, highest]: Range): Range {
  return [lowest - slightlyOut[quantity], highest + slightlyOut[quantity]];
}
