import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keepAbove, keepUnder, levelOf } from '../../src/estimation/level-update.ts';
import type { MovingState } from '../../src/estimation/water-advance.ts';
import { ANCHOR, LOST, RATE, STATE_SIZE } from '../../src/estimation/water-belief.ts';

/** Anchor and loss as given; the rate goes along with the loss by `shared`. */
function stateOf(anchorSd: number, lost: number, lostSd: number, shared = 0): MovingState {
  const mean = new Array<number>(STATE_SIZE).fill(0);
  const cov = new Array<number>(STATE_SIZE * STATE_SIZE).fill(0);
  mean[ANCHOR] = 20;
  mean[LOST] = lost;
  cov[ANCHOR * STATE_SIZE + ANCHOR] = anchorSd ** 2;
  cov[LOST * STATE_SIZE + LOST] = lostSd ** 2;
  cov[RATE * STATE_SIZE + RATE] = 1;
  cov[LOST * STATE_SIZE + RATE] = shared * lostSd;
  cov[RATE * STATE_SIZE + LOST] = shared * lostSd;
  return { mean, cov };
}

/** Mean, sd and weight of a normal density below `most`, summed in small steps. */
function summedBelow(mean: number, sd: number, most: number) {
  const steps = 20_000;
  const low = mean - 9 * sd;
  const width = (most - low) / steps;
  let weight = 0;
  let first = 0;
  let second = 0;
  for (let i = 0; i < steps; i += 1) {
    const x = low + (i + 0.5) * width;
    const w = (Math.exp(-(((x - mean) / sd) ** 2) / 2) / (sd * Math.sqrt(2 * Math.PI))) * width;
    weight += w;
    first += w * x;
    second += w * x * x;
  }
  const at = first / weight;
  return { weight, mean: at, sd: Math.sqrt(second / weight - at * at) };
}

describe('a level that cannot be above the brim', () => {
  // Half of a normal: mean −√(2/π) and variance 1 − 2/π of its sd, by symmetry.
  it('halves a normal at its own mean', () => {
    const state = stateOf(3, 0, 0);
    expect(keepUnder(state, 20)).toBeCloseTo(0.5, 6);
    const { litres, variance } = levelOf(state);
    expect(litres).toBeCloseTo(20 - 3 * Math.sqrt(2 / Math.PI), 5);
    expect(variance).toBeCloseTo(9 * (1 - 2 / Math.PI), 5);
  });

  it('has the mean, the spread and the weight of the normal that was cut off', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 8, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (sd, z) => {
          const state = stateOf(sd, 4, 0);
          const most = 16 + z * sd;
          const chance = keepUnder(state, most);
          const summed = summedBelow(16, sd, most);
          const { litres, variance } = levelOf(state);
          expect(chance).toBeCloseTo(summed.weight, 4);
          expect(Math.abs(litres - summed.mean)).toBeLessThan(0.001 * sd + 1e-4);
          expect(Math.abs(Math.sqrt(variance) - summed.sd)).toBeLessThan(0.002 * sd + 1e-4);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('takes the use for higher where the loss must have been larger', () => {
    const state = stateOf(0.1, 4, 3, 0.8);
    keepUnder(state, 15);
    expect(state.mean[LOST]).toBeGreaterThan(5);
    expect(state.mean[RATE]).toBeGreaterThan(0.2);
  });

  it('is cut off below as it is above', () => {
    const [above, under] = [stateOf(3, 4, 0), stateOf(3, 4, 0)];
    expect(keepAbove(above, 14)).toBeCloseTo(keepUnder(under, 18), 6);
    expect(levelOf(above).litres - 16).toBeCloseTo(16 - levelOf(under).litres, 6);
    expect(levelOf(above).variance).toBeCloseTo(levelOf(under).variance, 6);
  });

  it('learns nothing from a brim far above', () => {
    const state = stateOf(2, 4, 1, 0.5);
    expect(keepUnder(state, 60)).toBe(1);
    expect(levelOf(state).litres).toBe(16);
  });
});
