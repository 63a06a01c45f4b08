import { type MillisiemensPerCm, millisiemensPerCm } from '../units/conductivity.ts';
import type { Unit } from '../units/unit.ts';

/**
 * Scales on which growers read conductivity. "ppm" means nothing without its factor: 1 mS/cm is shown
 * as 500, 640 or 700. The conductivity factor (CF) is ten times mS/cm. Common practice.
 */
export const PPM_FACTORS = [500, 640, 700] as const;
export type PpmFactor = (typeof PPM_FACTORS)[number];

/** A reading in ppm, with the factor of the meter that shows it. */
export interface PpmReading {
  readonly ppm: number;
  readonly factor: PpmFactor;
}

/** Conductivity factor, CF. */
export type ConductivityFactor = Unit<'CF'>;

export const conductivityFactor = (value: number): ConductivityFactor =>
  value as ConductivityFactor;

const CF_PER_MILLISIEMENS = 10;

/** @example ppmFromMillisiemens(millisiemensPerCm(1.8), 500) // { ppm: 900, factor: 500 } */
export const ppmFromMillisiemens = (
  conductivityMsPerCm: MillisiemensPerCm,
  factor: PpmFactor,
): PpmReading => ({ ppm: conductivityMsPerCm * factor, factor });

/** @example millisiemensFromPpm({ ppm: 900, factor: 500 }) // 1.8 */
export const millisiemensFromPpm = (reading: PpmReading): MillisiemensPerCm =>
  millisiemensPerCm(reading.ppm / reading.factor);

/** @example conductivityFactorFromMillisiemens(millisiemensPerCm(1.8)) // 18 */
export const conductivityFactorFromMillisiemens = (
  conductivityMsPerCm: MillisiemensPerCm,
): ConductivityFactor => conductivityFactor(conductivityMsPerCm * CF_PER_MILLISIEMENS);

/** @example millisiemensFromConductivityFactor(conductivityFactor(18)) // 1.8 */
export const millisiemensFromConductivityFactor = (
  reading: ConductivityFactor,
): MillisiemensPerCm => millisiemensPerCm(reading / CF_PER_MILLISIEMENS);
