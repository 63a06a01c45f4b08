import type { Greenhouse, VolumeUnit } from '../../greenhouse/greenhouse.ts';
import type { Range, System } from '../../greenhouse/system.ts';

/** Two systems to make examples of; the same twice where there is only one. */
export function exampleSystems({ systems }: Greenhouse): readonly [System, System] {
  const [first, second = first] = systems;
  if (!first || !second) throw new Error('a greenhouse without systems, expected at least one');
  return [first, second];
}

/** A value that the system would be glad of, rounded to so many decimals. */
export function middleOf([lowest, highest]: Range, decimals: number): number {
  return Number(((lowest + highest) / 2).toFixed(decimals));
}

/** A top-up such as anybody may type: 12 litres, or 3 gallons. */
export const exampleTopUpL: Readonly<Record<VolumeUnit, number>> = { L: 12, gal: 11.356235352 };

/** The size of a rain butt such as stands at many a house: 200 litres, or 55 gallons. */
export const exampleButtL: Readonly<Record<VolumeUnit, number>> = { L: 200, gal: 208.197649 };
