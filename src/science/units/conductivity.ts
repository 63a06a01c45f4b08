import type { Unit } from './unit.ts';

/** Millisiemens per centimetre, mS/cm; 1 dS/m is the same. */
export type MillisiemensPerCm = Unit<'mS/cm'>;
/** Microsiemens per centimetre, µS/cm. */
export type MicrosiemensPerCm = Unit<'µS/cm'>;

export const millisiemensPerCm = (value: number): MillisiemensPerCm => value as MillisiemensPerCm;
export const microsiemensPerCm = (value: number): MicrosiemensPerCm => value as MicrosiemensPerCm;

/** @example microsiemensFromMillisiemens(millisiemensPerCm(1.413)) // 1413 */
export const microsiemensFromMillisiemens = (
  conductivityMsPerCm: MillisiemensPerCm,
): MicrosiemensPerCm => microsiemensPerCm(conductivityMsPerCm * 1000);

/** @example millisiemensFromMicrosiemens(microsiemensPerCm(1413)) // 1.413 */
export const millisiemensFromMicrosiemens = (
  conductivityUsPerCm: MicrosiemensPerCm,
): MillisiemensPerCm => millisiemensPerCm(conductivityUsPerCm / 1000);
