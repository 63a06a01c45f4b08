import type { WaterOutlook } from '../estimation/water-outlook.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { System, SystemId } from '../greenhouse/system.ts';
import { type Logbook, latestEntry } from '../logbook/logbook.ts';

/** Any of these tells where the water stands. */
const tellsLevel = ['level', 'top-up', 'reservoir-change'] as const satisfies readonly Quantity[];

/** Whether anybody has said how full a system is, or filled it. */
export function isLevelKnown(logbook: Logbook, system: SystemId): boolean {
  return tellsLevel.some((quantity) => latestEntry(logbook, system, quantity) !== null);
}

/** Known less exactly than this share of what may be used up, a level is worth a look. */
const DOUBT_SHARE = 0.15;

/**
 * Whether the level is in doubt where a top-up does not settle it: a system that is filled to the
 * brim is full afterwards, one that takes an amount stands wherever it stands.
 */
export function isLevelInDoubt(
  { brimL, lowL }: Pick<System, 'brimL' | 'lowL'>,
  { fillToL, litresSd }: Pick<WaterOutlook, 'fillToL' | 'litresSd'>,
): boolean {
  return fillToL < brimL && litresSd > DOUBT_SHARE * (brimL - lowL);
}
