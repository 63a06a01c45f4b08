import { describe, expect, it } from 'vitest';
import { useModels } from '../../src/estimation/use-model.ts';
import type { WaterBelief } from '../../src/estimation/water-belief.ts';
import { amongOthers } from '../../src/estimation/water-house.ts';
import { startBelief } from '../../src/estimation/water-start.ts';
import { folded, steadyFills, tubs } from './still-weather.ts';

describe('a system among the others of its greenhouse', () => {
  const even = folded(steadyFills(4, 4, 40));
  const fresh = startBelief(tubs, 0);

  it('is what it was where it stands alone, or beside others of which nothing is known', () => {
    expect(amongOthers(even, [])).toBe(even);
    const beside = amongOthers(even, [fresh, fresh]);
    for (const [i, part] of beside.parts.entries()) {
      expect(part.weight).toBeCloseTo(even.parts[i]!.weight, 10);
    }
  });

  it('has evener days beside systems whose days are even', () => {
    expect(evenShare(even)).toBeGreaterThan(evenShare(fresh));
    const beside = amongOthers(fresh, [even, even]);
    expect(evenShare(beside)).toBeGreaterThan(evenShare(fresh));
    expect(beside.parts.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 10);
  });

  it('keeps its own level and use, and no model is ruled out', () => {
    const beside = amongOthers(
      fresh,
      Array.from({ length: 20 }, () => even),
    );
    for (const [i, part] of beside.parts.entries()) {
      expect(part.mean).toEqual(fresh.parts[i]!.mean);
      expect(part.weight).toBeGreaterThan(0);
    }
  });
});

/** Weight of the models whose days are the evenest. */
function evenShare({ parts }: WaterBelief): number {
  const least = Math.min(...useModels.map(({ noiseSd }) => noiseSd));
  return parts
    .filter(({ model }) => useModels[model]!.noiseSd === least)
    .reduce((sum, { weight }) => sum + weight, 0);
}
