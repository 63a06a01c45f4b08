import type { DayDriver } from './day-driver.ts';
import { levelOf } from './level-update.ts';
import { belowChance } from './loss-mixture.ts';
import { advanceBelief } from './water-advance.ts';
import type { WaterBelief } from './water-belief.ts';
import type { WaterSystem } from './water-system.ts';

/** How a level that was read, or told by a fill to the brim, compares with what was expected. */
export interface WaterSurprise {
  readonly expectedL: number;
  readonly foundL: number;
  /** The chance of so low a level or a lower one: tiny after a leak or a stuck valve. */
  readonly chanceOfLess: number;
  /** The chance of so high a level or a higher one: tiny where roots no longer drink. */
  readonly chanceOfMore: number;
}

/** What `before` thinks of finding `foundL` in the system at `atMs`. */
export function surpriseOf(
  system: WaterSystem,
  before: WaterBelief,
  atMs: number,
  foundL: number,
  drivers: readonly DayDriver[],
): WaterSurprise {
  const { parts } = advanceBelief(before, atMs, drivers);
  const expected = parts.reduce((sum, part) => sum + part.weight * levelOf(part).litres, 0);
  const chanceOfLess = belowChance(parts, foundL);
  return {
    expectedL: Math.min(system.brimL, Math.max(0, expected)),
    foundL,
    chanceOfLess,
    chanceOfMore: 1 - chanceOfLess,
  };
}
