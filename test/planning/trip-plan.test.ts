import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WaterOutlook } from '../../src/estimation/water-outlook.ts';
import type { RiskSetting } from '../../src/greenhouse/greenhouse.ts';
import { raiseAtMostL } from '../../src/planning/fill-ceiling.ts';
import { planTopUps, type TopUpPlan, type TripSystem } from '../../src/planning/trip-plan.ts';

const visits = 30;

/** A system that is low for certain from a visit on, and lasts so many days when filled. */
function lasting(days: number, daysAFill: number, room = 30): TripSystem {
  return chancy(
    (k) => (k >= days ? 1 : 0),
    (k) => (k >= daysAFill ? 1 : 0),
    room,
  );
}

function chancy(
  low: (visit: number) => number,
  lowIfFilled: (visit: number) => number,
  room = 30,
): TripSystem {
  const outlook: WaterOutlook = {
    atMs: 0,
    litres: 108 - room,
    litresSd: 2,
    band: { atMs: 0, lowL: 105 - room, likelyL: 108 - room, highL: 111 - room },
    usePerDay: 5,
    usePerDaySd: 1,
    lowAtMs: { p5: null, p50: null, p95: null },
    useNext: [],
    lossNext: [],
    lowCurve: [],
    lowByVisit: Array.from({ length: visits }, (_, k) => low(k)),
    lowByVisitIfFilled: Array.from({ length: visits }, (_, k) => lowIfFilled(k)),
    fillToL: 108,
  };
  return { method: 'deep-water-culture', brimL: 108, lowL: 72, outlook };
}

function plan(
  systems: readonly TripSystem[],
  risk: RiskSetting = 'normal',
  away: readonly number[] = [],
  backInDays?: number,
): readonly TopUpPlan[] {
  const canGo = Array.from({ length: visits }, (_, day) => !away.includes(day));
  const back = backInDays === undefined ? {} : { backInDays };
  return planTopUps({ systems, canGo, risk, ...back });
}

describe('the trip plan', () => {
  it('leaves systems alone that last', () => {
    const [tub] = plan([lasting(4, 6)]);
    expect(tub!.due).toBe('later');
    expect(tub!.dueInDays).toBe(3);
    expect(tub!.latestInDays).toBe(3);
  });

  it('goes on the last morning before the low mark', () => {
    const [tub] = plan([lasting(1, 6)]);
    expect(tub!.due).toBe('today');
    expect(tub!.dueInDays).toBe(0);
    expect(tub!.chanceLowIfLeft).toBe(1);
  });

  it('tops up alongside what has room, since somebody goes anyway', () => {
    const [due, roomy, full] = plan([lasting(1, 6), lasting(9, 12, 20), lasting(11, 12, 1)]);
    expect(due!.due).toBe('today');
    expect(roomy!.due).toBe('alongside');
    expect(full!.due).toBe('later');
  });

  it('has nothing alongside where nobody goes', () => {
    for (const { due } of plan([lasting(4, 6), lasting(9, 12)])) expect(due).toBe('later');
  });

  it('goes before days on which nobody can', () => {
    const tub = lasting(3, 6);
    expect(plan([tub])[0]!.due).toBe('later');
    expect(plan([tub], 'normal', [1, 2, 3])[0]!.due).toBe('today');
  });

  it('cannot go today when nobody can', () => {
    expect(plan([lasting(1, 6)], 'normal', [0])[0]!.due).toBe('later');
  });

  it('risks less for the careful than for the relaxed', () => {
    const tub = chancy(
      (k) => (k === 0 ? 0 : Math.min(1, 0.02 * 3 ** (k - 1))),
      (k) => k / 60,
    );
    const days = (['careful', 'normal', 'relaxed'] as const).map(
      (risk) => plan([tub], risk)[0]!.dueInDays ?? visits,
    );
    expect(days[0]).toBeLessThanOrEqual(days[1]!);
    expect(days[1]).toBeLessThan(days[2]!);
  });

  it('risks less for a trip that lasts long than for one that must be made again soon', () => {
    const low = (k: number) => (k === 0 ? 0 : 0.03 * k);
    const long = chancy(low, (k) => (k > 15 ? 1 : 0));
    const short = chancy(low, (k) => (k > 2 ? 1 : 0));
    expect(plan([long])[0]!.due).toBe('today');
    expect(plan([short])[0]!.due).toBe('later');
  });

  it('goes daily to a system that does not last a day', () => {
    const small = chancy(
      (k) => (k === 0 ? 0.2 : 1),
      (k) => (k === 0 ? 0 : 1),
    );
    expect(plan([small])[0]!.due).toBe('today');
  });

  it('adds up the risks of all systems', () => {
    const risky = () =>
      chancy(
        (k) => 0.02 * k,
        (k) => (k > 5 ? 1 : 0),
      );
    expect(plan([risky()])[0]!.due).toBe('later');
    const many = plan(Array.from({ length: 6 }, risky));
    expect(many.some(({ due }) => due === 'today')).toBe(true);
  });

  it('asks for enough to reach the brim, and no more than a raise where that is the limit', () => {
    const tub = lasting(1, 6, 30);
    expect(plan([tub])[0]!.litres).toBeGreaterThan(30);
    const jar = { ...tub, outlook: { ...tub.outlook, fillToL: tub.outlook.litres + 3 } };
    expect(plan([jar])[0]!.litres).toBeCloseTo(3);
  });

  it('spares a trip for what lasts until somebody is back', () => {
    const tub = chancy(
      (k) => (k >= 4 ? 0.1 : 0),
      (k) => (k >= 9 ? 1 : 0),
    );
    expect(plan([tub])[0]!.dueInDays).toBe(3);
    expect(plan([tub], 'normal', [], 4)[0]!).toMatchObject({ due: 'later', dueInDays: 4 });
  });

  it('makes the trips that are needed until somebody is back, the last as late as any', () => {
    const tub = lasting(3, 6);
    expect(plan([tub], 'normal', [], 4)[0]!.dueInDays).toBe(2);
    expect(plan([lasting(1, 6)], 'normal', [], 4)[0]!.due).toBe('today');
  });

  it('goes no sooner since somebody comes back', () => {
    const chance = fc.double({ min: 0, max: 0.3, noNaN: true });
    const days = fc.integer({ min: 1, max: visits - 1 });
    fc.assert(
      fc.property(fc.array(fc.tuple(chance, chance), { minLength: 1 }), days, (pairs, back) => {
        const systems = pairs.map(([a, b]) =>
          chancy(
            (k) => Math.min(1, a * k),
            (k) => Math.min(1, (a * b * k) / 2),
          ),
        );
        const without = plan(systems);
        const isBack = plan(systems, 'normal', [], back);
        for (const [i, { dueInDays }] of isBack.entries()) {
          expect(dueInDays).toBeGreaterThanOrEqual(Math.min(without[i]!.dueInDays ?? back, back));
        }
      }),
    );
  });

  it('names somebody due whenever it sends anybody', () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(chance, chance), { minLength: 1, maxLength: 6 }), (pairs) => {
        const plans = plan(
          pairs.map(([a, b]) =>
            chancy(
              (k) => (k === 0 ? 0 : a),
              (k) => (k > 3 ? b : 0),
            ),
          ),
        );
        const dues = plans.map(({ due }) => due);
        if (dues.includes('alongside')) expect(dues).toContain('today');
        for (const { litres } of plans) expect(litres).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('the fill ceiling', () => {
  it('is two centimetres above the level for jars, and the brim for all others', () => {
    const jars = { method: 'non-circulating', brimL: 24, depthCm: 18 } as const;
    expect(raiseAtMostL(jars)).toBeCloseTo(2.667, 3);
    expect(raiseAtMostL({ ...jars, method: 'drip' })).toBeNull();
  });
});
