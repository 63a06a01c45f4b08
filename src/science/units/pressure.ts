import type { Unit } from './unit.ts';

/** Kilopascal, kPa. */
export type Kilopascal = Unit<'kPa'>;
/** Standard atmosphere, atm. */
export type Atmosphere = Unit<'atm'>;

export const kilopascal = (value: number): Kilopascal => value as Kilopascal;
export const atmosphere = (value: number): Atmosphere => value as Atmosphere;

/** By definition, kPa in one standard atmosphere. */
export const STANDARD_ATMOSPHERE_KPA = 101.325;
/** By definition, mmHg (torr) in one standard atmosphere. */
const STANDARD_ATMOSPHERE_MMHG = 760;

/** @example kilopascalFromHectopascal(1013.25) // 101.325 */
export const kilopascalFromHectopascal = (pressureHpa: number): Kilopascal =>
  kilopascal(pressureHpa / 10);

/** @example kilopascalFromMmHg(760) // 101.325 */
export const kilopascalFromMmHg = (pressureMmHg: number): Kilopascal =>
  kilopascal((pressureMmHg / STANDARD_ATMOSPHERE_MMHG) * STANDARD_ATMOSPHERE_KPA);

/** @example atmosphereFromKilopascal(kilopascal(101.325)) // 1 */
export const atmosphereFromKilopascal = (pressureKpa: Kilopascal): Atmosphere =>
  atmosphere(pressureKpa / STANDARD_ATMOSPHERE_KPA);
