import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  afterTrial,
  factorQuantile,
  presumedMeqFor,
  presumedResponse,
} from '../../src/estimation/dose-response.ts';
import { phAfterAlkali, presumedBuffer } from '../../src/estimation/ph-buffer.ts';

const found = presumedBuffer({
  presentPh: 7.4,
  waterAlkalinityMeqPerL: 3,
  ecMsPerCm: 1.6,
  waterC: 20,
});
if (!found.ok) throw new Error('no buffer');
const buffer = found.value;

/** What is measured after a dose if the product acts by this factor. */
function trial(factor: number, presumedMeqPerL = -0.4) {
  const toPh = phAfterAlkali(buffer, 7.4, presumedMeqPerL * factor);
  return { buffer, fromPh: 7.4, toPh, presumedMeqPerL };
}

describe('the response to a dose', () => {
  test('is as presumed, give or take, before any dose', () => {
    const response = presumedResponse(1);
    expect(factorQuantile(response, 0.5)).toBeCloseTo(1, 1);
    // One standard deviation of ln is a factor of e.
    expect(factorQuantile(response, 0.8413)).toBeCloseTo(Math.E, 0);
    expect(response.trials).toBe(0);
  });

  test('comes to the true factor dose by dose', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.25, max: 2.5, noNaN: true }), (factor) => {
        let response = presumedResponse(1.1);
        for (let dose = 0; dose < 4; dose += 1) response = afterTrial(response, trial(factor));
        expect(Math.abs(Math.log(factorQuantile(response, 0.5) / factor))).toBeLessThan(0.35);
        expect(response.trials).toBe(4);
      }),
      { numRuns: 30 },
    );
  });

  test('is surer after a dose that told something, and hardly after one that told nothing', () => {
    const spread = (response: ReturnType<typeof presumedResponse>) =>
      Math.log(factorQuantile(response, 0.9) / factorQuantile(response, 0.1));
    const before = presumedResponse(1);
    const small = afterTrial(before, trial(1, -0.01));
    const large = afterTrial(before, trial(1, -0.8));
    expect(spread(large)).toBeLessThan(0.5 * spread(before));
    expect(spread(small)).toBeGreaterThan(spread(large));
  });

  test('is not taken over by one odd reading', () => {
    let response = presumedResponse(1);
    for (let dose = 0; dose < 3; dose += 1) response = afterTrial(response, trial(1));
    const odd = afterTrial(response, { ...trial(1), toPh: 7.9 });
    expect(factorQuantile(odd, 0.5)).toBeGreaterThan(0.6);
  });

  test('halves the amount where the product acts twice as strongly', () => {
    expect(presumedMeqFor(buffer, 7.4, 6, 2)).toBeCloseTo(presumedMeqFor(buffer, 7.4, 6, 1) / 2, 9);
  });
});
