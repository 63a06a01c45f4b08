import { type MillimolePerL, millimolePerL } from '../units/concentration.ts';

/** What a crop takes up of sodium and chloride, and what its roots bear, mmol/L. */
export interface SaltTolerance {
  readonly uptake: { readonly sodium: MillimolePerL; readonly chloride: MillimolePerL };
  readonly rootZoneMost: { readonly sodium: MillimolePerL; readonly chloride: MillimolePerL };
}

const tolerance = (
  [uptakeSodium, uptakeChloride]: readonly [number, number],
  [mostSodium, mostChloride]: readonly [number, number],
): SaltTolerance => ({
  uptake: { sodium: millimolePerL(uptakeSodium), chloride: millimolePerL(uptakeChloride) },
  rootZoneMost: { sodium: millimolePerL(mostSodium), chloride: millimolePerL(mostChloride) },
});

/**
 * The Dutch table, by way of a trade article; the primary source, Sonneveld and Voogt 2009, was not
 * seen. The tomato's row stood displaced in the article. Tomato shuts sodium out, so it climbs even
 * from water that holds little (Varlagas and others 2010, Agric. Water Manage. 97:1242).
 */
export const SALT_TOLERANCE: ReadonlyMap<string, SaltTolerance> = new Map([
  ['tomato', tolerance([1, 1.2], [10, 15])],
  ['cucumber', tolerance([1.2, 2], [8, 10])],
  ['pepper', tolerance([0.8, 1], [8, 12])],
  ['lettuce', tolerance([1.5, 2], [8, 15])],
  ['rose', tolerance([0.3, 1], [6, 8])],
  ['gerbera', tolerance([0.4, 1.5], [10, 10])],
]);
