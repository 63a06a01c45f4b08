import { describe, expect, it } from 'vitest';
import { GROWN, RATE, type WaterBelief } from '../../src/estimation/water-belief.ts';
import { observe } from '../../src/estimation/water-observe.ts';
import { folded, steadyFills, stillDays, tubs } from './still-weather.ts';

describe('A young crop in place of a grown one', () => {
  const grown = folded(steadyFills(11, 2, 40));
  const replanted = observe(tubs, grown, { kind: 'planted', atMs: grown.atMs }, stillDays);
  const mean = ({ parts }: WaterBelief, which: number) =>
    parts.reduce((sum, part) => sum + part.weight * part.mean[which]!, 0);

  it('drinks a fraction of what the grown one did', () => {
    expect(mean(replanted, RATE)).toBeLessThan(mean(grown, RATE) - 1);
  });

  it('keeps what a grown crop takes there', () => {
    expect(mean(replanted, GROWN)).toBeCloseTo(mean(grown, GROWN), 6);
  });
});
