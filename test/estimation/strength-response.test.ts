import { describe, expect, test } from 'vitest';
import { afterMix, presumedStrength, riseAt } from '../../src/estimation/strength-response.ts';

describe('what concentrates add', () => {
  test('is learned from mixes, each making it surer', () => {
    let response = presumedStrength(0.35, 0.45);
    const spreads = [0, 1, 2, 3].map(() => {
      response = afterMix(response, { riseMsPerCm: 0.8, eachMlPerL: 4 });
      return riseAt(response, 1) / riseAt(response, -1);
    });
    // 0.8 mS/cm by 4 mL/L is 0.2 mS/cm by 1 mL/L.
    expect(riseAt(response, 0)).toBeCloseTo(0.2, 1);
    expect(spreads.at(-1)!).toBeLessThan(spreads[0]!);
    expect(response.trials).toBe(4);
  });

  test('is not learned from a mix that did not rise', () => {
    const before = presumedStrength(0.35, 0.45);
    expect(afterMix(before, { riseMsPerCm: -0.2, eachMlPerL: 4 })).toEqual(before);
    expect(afterMix(before, { riseMsPerCm: 0.3, eachMlPerL: 0 })).toEqual(before);
  });
});
