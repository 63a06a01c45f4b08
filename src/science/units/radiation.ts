import type { Unit } from './unit.ts';

/** Energy on a surface in a day, MJ/m²/d. */
export type MegajoulePerM2Day = Unit<'MJ/m²/d'>;
/** Power on a surface, W/m². */
export type WattPerM2 = Unit<'W/m²'>;

export const megajoulePerM2Day = (value: number): MegajoulePerM2Day => value as MegajoulePerM2Day;
export const wattPerM2 = (value: number): WattPerM2 => value as WattPerM2;

/** Mean power of a day's energy: 1 MJ/m²/d is 11.574 W/m² (FAO-56 Table 3). */
export const meanWattPerM2 = (energyMjPerM2Day: MegajoulePerM2Day): WattPerM2 =>
  wattPerM2((energyMjPerM2Day * 1e6) / 86_400);
