import type { System } from '../greenhouse/system.ts';

/**
 * Roots of a non-circulating system that hang in air have grown for air: raising the level over them
 * by more than about this may injure the plant.
 *
 * Source: Kratky 2004, Acta Horticulturae 648:83.
 */
const SAFE_RAISE_CM = 2;

/** How far a top-up may raise the level of this system, litres; null: up to the brim. */
export function raiseAtMostL(system: Pick<System, 'method' | 'brimL' | 'depthCm'>): number | null {
  if (system.method !== 'non-circulating') return null;
  return (system.brimL * SAFE_RAISE_CM) / system.depthCm;
}
