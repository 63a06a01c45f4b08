import type { MegajoulePerM2Day } from './radiation.ts';
import type { Unit } from './unit.ts';

/** A depth of water lost or gained in a day, mm/d; the same number is L/m²/d. */
export type MillimetrePerDay = Unit<'mm/d'>;

export const millimetrePerDay = (value: number): MillimetrePerDay => value as MillimetrePerDay;

/** Inverse of the latent heat of vaporization at about 20 °C, 1/2.45, as FAO-56 rounds it (eq 20). */
const MM_PER_MEGAJOULE_PER_M2 = 0.408;

/**
 * The evaporation that an energy would drive (FAO-56 eq 20).
 * @example evaporationEquivalentMmPerDay(megajoulePerM2Day(12)) // 4.9, FAO-56 Example 1
 */
export const evaporationEquivalentMmPerDay = (
  energyMjPerM2Day: MegajoulePerM2Day,
): MillimetrePerDay => millimetrePerDay(energyMjPerM2Day * MM_PER_MEGAJOULE_PER_M2);
