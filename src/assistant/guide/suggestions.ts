import type { Method, Range, System } from '../../greenhouse/system.ts';

type Suggested = Pick<System, 'ph' | 'ecMsPerCm' | 'waterTemperatureC'>;

const wanted = (ph: Range, ecMsPerCm: Range, waterTemperatureC: Range): Suggested => ({
  ph,
  ecMsPerCm,
  waterTemperatureC,
});

const fruiting: Range = [18, 26];
const cool: Range = [14, 24];
const usual: Range = [18, 24];

/** What crops of this trade are kept at; common practice, no source. */
const byCrop: ReadonlyMap<string, Suggested> = new Map([
  ['tomato', wanted([5.8, 6.4], [2, 2.8], fruiting)],
  ['cucumber', wanted([5.5, 6.2], [1.6, 2.2], usual)],
  ['pepper', wanted([5.8, 6.4], [1.8, 2.4], fruiting)],
  ['chilli', wanted([5.8, 6.4], [1.6, 2.2], fruiting)],
  ['aubergine', wanted([5.8, 6.4], [2, 2.6], fruiting)],
  ['courgette', wanted([5.8, 6.4], [1.8, 2.4], fruiting)],
  ['strawberry', wanted([5.6, 6.2], [1, 1.6], cool)],
  ['lettuce', wanted([5.5, 6.5], [1, 1.6], cool)],
  ['basil', wanted([5.5, 6.2], [1, 1.6], usual)],
  ['spinach', wanted([5.8, 6.5], [1.4, 2], cool)],
  ['herb', wanted([5.5, 6.5], [1, 1.6], usual)],
]);
const anyCrop = wanted([5.5, 6.5], [1.2, 2], usual);

export function suggestedFor(crop: string | null): Suggested {
  return byCrop.get(crop ?? '') ?? anyCrop;
}

/** How deep home reservoirs of each kind mostly are, cm; common practice. */
export const usualDepthCm: Readonly<Record<Method, number>> = {
  'flood-and-drain': 60,
  'deep-water-culture': 30,
  'nutrient-film': 40,
  'non-circulating': 18,
  drip: 40,
  aeroponic: 40,
};

/**
 * Where trouble begins, as a share of the brim: a third keeps a pump under water, roots that hang in
 * still or bubbled water need more or bear less. Common practice.
 */
const lowShare: Readonly<Record<Method, number>> = {
  'flood-and-drain': 0.25,
  'deep-water-culture': 2 / 3,
  'nutrient-film': 1 / 3,
  'non-circulating': 1 / 6,
  drip: 1 / 3,
  aeroponic: 1 / 3,
};

export function suggestedLowL(method: Method, brimL: number): number {
  const litres = brimL * lowShare[method];
  return litres >= 20 ? Math.round(litres / 5) * 5 : Number(litres.toFixed(1));
}

/** What a system of this kind mostly runs: air all the time in bubbled water, floods every four hours. */
export function usualRunning(method: Method): Pick<System, 'aeration' | 'floods'> {
  return {
    aeration: method === 'deep-water-culture' ? { kind: 'air-stones', minutesPerHour: 60 } : null,
    floods: method === 'flood-and-drain' ? { everyMin: 240, fillMin: 15 } : null,
  };
}
