/**
 * What is taken for granted about an outage. None of it was measured in the greenhouse at hand, so
 * every figure has bounds and says how well it stands.
 */

/** A low, a likely and a high figure, with their unit and their standing. */
export interface Assumption {
  readonly quantity: string;
  readonly unit: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly standing: 'common practice' | 'from memory' | 'estimate';
  readonly because: string;
}

export const ROOT_RESPIRATION: Assumption = {
  quantity: 'oxygen use of fresh roots at 20 °C',
  unit: 'mg/g/h',
  low: 0.08,
  likely: 0.24,
  high: 0.48,
  standing: 'from memory',
  because:
    'Lambers, Chapin and Pons, Plant Physiological Ecology: 10 to 60 nmol of oxygen a gram dry mass ' +
    'and second, with 7 % of dry matter',
};

export const OXYGEN_AT_THE_START: Assumption = {
  quantity: 'oxygen when the air stops, as a share of saturation',
  unit: '1',
  low: 0.75,
  likely: 0.9,
  high: 1,
  standing: 'estimate',
  because: 'an aerated tank is kept near saturation',
};

/** Divided by the depth it is the exchange per hour; rafts and lids take most of it away. */
export const STILL_SURFACE_TRANSFER: Assumption = {
  quantity: 'oxygen transfer through a still surface',
  unit: 'm/h',
  low: 0,
  likely: 0,
  high: 0.01,
  standing: 'from memory',
  because: 'sheltered water takes up 0.5 to 2 cm/h; a lid or raft lets less through',
};

const rootMass = (low: number, likely: number, high: number): Assumption => ({
  quantity: 'fresh roots of a plant',
  unit: 'g',
  low,
  likely,
  high,
  standing: 'estimate',
  because: 'from a young plant to a full-grown one',
});

/** Used when the crop is none of those below. */
export const ROOT_MASS_OF_ANY_CROP: Assumption = rootMass(10, 80, 400);

export const ROOT_MASS: ReadonlyMap<string, Assumption> = new Map([
  ['lettuce', rootMass(10, 25, 50)],
  ['basil', rootMass(10, 30, 60)],
  ['strawberry', rootMass(20, 50, 100)],
  ['pepper', rootMass(40, 100, 250)],
  ['cucumber', rootMass(60, 150, 350)],
  ['tomato', rootMass(60, 150, 400)],
]);

const bareRoots = (low: number, likely: number, high: number, because: string): Assumption => ({
  quantity: 'roots out of water until they suffer',
  unit: 'h',
  low,
  likely,
  high,
  standing: 'common practice',
  because,
});

/** How long roots that a pump no longer wets last, in sun and in dull weather or at night. */
export const DRAINED_ROOTS = {
  'nutrient-film': {
    sun: bareRoots(1, 2, 4, 'a film holds no store of water: one to four hours in sun'),
    dull: bareRoots(3, 6, 12, 'about three times as long without sun'),
  },
  'flood-and-drain': {
    sun: bareRoots(4, 8, 24, 'the medium stays moist: several hours to a day'),
    dull: bareRoots(
      8,
      20,
      48,
      'about twice as long without sun; three warm days were once survived',
    ),
  },
  drip: {
    sun: bareRoots(3, 6, 24, 'the medium stays moist, but less so than after a flood'),
    dull: bareRoots(6, 16, 48, 'about twice as long without sun'),
  },
  aeroponic: {
    sun: bareRoots(0.25, 0.75, 2, 'bare roots in air dry within the hour'),
    dull: bareRoots(0.5, 1.5, 4, 'about twice as long without sun'),
  },
} as const satisfies Readonly<
  Record<string, { readonly sun: Assumption; readonly dull: Assumption }>
>;
