import { describe, expect, it } from 'vitest';
import { advanceBelief } from '../../src/estimation/water-advance.ts';
import type { WaterBelief } from '../../src/estimation/water-belief.ts';
import { observe } from '../../src/estimation/water-observe.ts';
import { dayMs, folded, outlookOf, steadyFills, stillDays, tubs } from './still-weather.ts';

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    Object.values(value).forEach(frozen);
    Object.freeze(value);
  }
  return value;
}

describe('folding the log', () => {
  const events = steadyFills(6, 3, 10);

  it('gives the same belief for the same log, number for number', () => {
    expect(folded(events)).toEqual(folded(events));
  });

  it('goes on from a checkpoint as if it had never stopped', () => {
    const checkpoint = structuredClone(folded(events.slice(0, 5)));
    expect(folded(events.slice(5), checkpoint)).toEqual(folded(events));
  });

  it('changes none of its arguments', () => {
    const before = frozen(folded(events.slice(0, 5)));
    const drivers = frozen(structuredClone(stillDays));
    const copy = structuredClone(before);
    observe(tubs, before, frozen({ ...events[5]! }), drivers);
    advanceBelief(before, 40 * dayMs, drivers);
    outlookOf(before, 20 * dayMs);
    expect(before).toEqual(copy);
  });

  it('is moved on the same way in one stride or in many', () => {
    const belief = folded(events);
    const many = [31, 31.4, 32.9, 35].reduce(
      (moved: WaterBelief, day) => advanceBelief(moved, day * dayMs, stillDays),
      belief,
    );
    const one = advanceBelief(belief, 35 * dayMs, stillDays);
    for (const [i, part] of one.parts.entries()) {
      expect(many.parts[i]!.mean[1]).toBeCloseTo(part.mean[1]!, 1);
      expect(many.parts[i]!.mean[2]).toBeCloseTo(part.mean[2]!, 8);
    }
  });

  it('never goes back in time', () => {
    const belief = folded(events);
    expect(advanceBelief(belief, belief.atMs - dayMs, stillDays)).toBe(belief);
  });
});
