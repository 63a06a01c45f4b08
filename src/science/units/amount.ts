import type { Unit } from './unit.ts';

/** Litre, L. */
export type Litre = Unit<'L'>;
/** Millilitre, mL. */
export type Millilitre = Unit<'mL'>;
/** Flow, L/h. */
export type LitrePerHour = Unit<'L/h'>;

export const litre = (value: number): Litre => value as Litre;
export const millilitre = (value: number): Millilitre => value as Millilitre;
export const litrePerHour = (value: number): LitrePerHour => value as LitrePerHour;

/** By definition, litres in one US liquid gallon. */
const LITRES_PER_US_GALLON = 3.785411784;

/** @example litreFromMillilitre(millilitre(250)) // 0.25 */
export const litreFromMillilitre = (volumeMl: Millilitre): Litre => litre(volumeMl / 1000);

/** @example millilitreFromLitre(litre(0.25)) // 250 */
export const millilitreFromLitre = (volumeL: Litre): Millilitre => millilitre(volumeL * 1000);

/** @example litreFromUsGallon(10) // 37.85 */
export const litreFromUsGallon = (volumeUsGallon: number): Litre =>
  litre(volumeUsGallon * LITRES_PER_US_GALLON);

/** @example litrePerHourFromLitrePerMinute(20) // 1200 */
export const litrePerHourFromLitrePerMinute = (flowLPerMin: number): LitrePerHour =>
  litrePerHour(flowLPerMin * 60);

/** @example cubicMetrePerSecond(litrePerHour(3600)) // 0.001 */
export const cubicMetrePerSecond = (flowLPerH: LitrePerHour): number => flowLPerH / 3.6e6;
