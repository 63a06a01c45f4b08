import type { System } from './system.ts';

/** Whether a pump moves its solution, as its method asks for one. */
export function hasPump({ method, floods }: System): boolean {
  return (
    floods !== null || ['flood-and-drain', 'nutrient-film', 'drip', 'aeroponic'].includes(method)
  );
}

export function hasAirPump({ aeration }: System): boolean {
  return aeration !== null && aeration.kind !== 'venturi';
}
