import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toBrimChance } from '../../src/estimation/fill-habit.ts';
import type { WaterEvent } from '../../src/estimation/water-event.ts';
import { observe } from '../../src/estimation/water-observe.ts';
import { outlook } from '../../src/estimation/water-outlook.ts';
import { startBelief } from '../../src/estimation/water-start.ts';
import type { WaterSystem } from '../../src/estimation/water-system.ts';
import { dayMs, folded, hourMs, outlookOf, steadyFills, stillDays, tubs } from './still-weather.ts';

const jars: WaterSystem = {
  brimL: 24,
  lowL: 4,
  crop: 'lettuce',
  plants: 12,
  filledToBrim: false,
};

describe('the water estimate', () => {
  it('learns a steady use from a few top-ups to the brim', () => {
    const after = outlookOf(folded(steadyFills(6, 3, 6)), 19 * dayMs);
    expect(after.usePerDay).toBeGreaterThan(5);
    expect(after.usePerDay).toBeLessThan(7);
    expect(after.usePerDaySd).toBeLessThan(2);
  });

  it('gets surer with every top-up', () => {
    const spread = [1, 3, 8].map((fills) => {
      const { usePerDay, usePerDaySd } = outlookOf(
        folded(steadyFills(6, 3, fills)),
        (fills * 3 + 1) * dayMs,
      );
      return usePerDaySd / usePerDay;
    });
    expect(spread[1]).toBeLessThan(spread[0]!);
    expect(spread[2]).toBeLessThan(spread[1]!);
  });

  it('knows the level after a fill, and ever less well as days go by', () => {
    const belief = folded(steadyFills(6, 3, 6));
    const [soon, later] = [18.5, 22].map((day) => outlookOf(belief, day * dayMs));
    expect(soon!.litres).toBeGreaterThan(103);
    expect(later!.litres).toBeLessThan(soon!.litres - 12);
    expect(later!.litresSd).toBeGreaterThan(soon!.litresSd);
  });

  it('follows a crop that doubles in ten days', () => {
    const growing = Array.from(
      { length: 10 },
      (_, i): WaterEvent => ({
        kind: 'top-up',
        atMs: (i + 1) * 2 * dayMs + 8 * hourMs,
        litres: Math.round(3 * 2 ** ((2 * i + 1) / 10)),
        approximate: false,
        askedL: null,
      }),
    );
    const belief = folded([...steadyFills(3, 2, 0), ...growing]);
    const { usePerDay } = outlookOf(belief, 20.5 * dayMs);
    expect(usePerDay).toBeGreaterThan(4.6);
  });

  it('adds what was added to a level just read off, however used to fills it is', () => {
    const at = 20 * dayMs;
    const added = (litres: number, read: number): WaterEvent => ({
      kind: 'top-up',
      atMs: at + 60_000,
      litres,
      approximate: false,
      askedL: null,
      read: { litres: read, approximate: false },
    });
    const level = { kind: 'level', atMs: at, litres: 80, approximate: false } as const;
    const short = folded([...steadyFills(6, 3, 6), level, added(5, 80)]);
    const { band } = outlookOf(short, at + hourMs);
    expect(band.likelyL).toBeGreaterThan(82);
    expect(band.likelyL).toBeLessThan(88);
    expect(toBrimChance(short.habit)).toBeGreaterThan(0.9);
    const full = folded([...steadyFills(6, 3, 6), level, added(28, 80)]);
    expect(outlookOf(full, at + hourMs).band.likelyL).toBeGreaterThan(106);
  });

  it('is not led astray by one mistyped amount', () => {
    const wrong: WaterEvent = {
      kind: 'top-up',
      atMs: 21 * dayMs + 8 * hourMs,
      litres: 81,
      approximate: false,
      askedL: null,
    };
    const right = { ...wrong, litres: 18 };
    const [misled, led] = [wrong, right].map(
      (event) => outlookOf(folded([...steadyFills(6, 3, 6), event]), 22 * dayMs).usePerDay,
    );
    expect(misled! / led!).toBeLessThan(1.3);
  });

  it('takes a forgotten top-up of jars for the amount that was asked, not for full jars', () => {
    const at = (day: number) => day * dayMs + 8 * hourMs;
    const level = { kind: 'level', atMs: at(0), litres: 8, approximate: false } as const;
    const silent = { kind: 'unreported-top-up', atMs: at(1), chance: 0.97, askedL: 2.5 } as const;
    const belief = [level, silent].reduce(
      (held, event) => observe(jars, held, event, stillDays),
      startBelief(jars, 0),
    );
    const { litres } = outlook(jars, belief, {
      atMs: at(1) + hourMs,
      drivers: stillDays.slice(0, 62),
      visitsAtMs: [],
      raiseAtMostL: 2.5,
    });
    expect(litres).toBeGreaterThan(8);
    expect(litres).toBeLessThan(14);
  });

  it('keeps jars that amounts are added to below their brim, however long nobody looks', () => {
    const at = (day: number) => day * dayMs + 8 * hourMs;
    const added = Array.from(
      { length: 20 },
      (_, i): WaterEvent => ({
        kind: 'top-up',
        atMs: at(3 * (i + 1)),
        litres: 2.5,
        approximate: false,
        askedL: 2.5,
      }),
    );
    const full = { kind: 'level', atMs: at(0), litres: 24, approximate: false } as const;
    const belief = [full, ...added].reduce(
      (held, event) => observe(jars, held, event, stillDays),
      startBelief(jars, 0),
    );
    const { litres, litresSd } = outlook(jars, belief, {
      atMs: at(60) + hourMs,
      drivers: stillDays.slice(0, 122),
      visitsAtMs: [],
      raiseAtMostL: 2.5,
    });
    expect(litres).toBeLessThan(24);
    // No more than where nothing is known but that it is between empty and full: 24 / √12.
    expect(litresSd).toBeLessThan(7);
  });

  it('tells by amounts other than those asked that jars are filled up after all', () => {
    const told = [3, 2, 3, 2, 3, 3, 2, 3];
    const belief = told.reduce(
      (held, litres, i) =>
        observe(
          jars,
          held,
          {
            kind: 'top-up',
            atMs: (3 * i + 3) * dayMs + 8 * hourMs,
            litres,
            approximate: false,
            askedL: 2.5,
          },
          stillDays,
        ),
      observe(
        jars,
        startBelief(jars, 0),
        { kind: 'level', atMs: 8 * hourMs, litres: 24, approximate: false },
        stillDays,
      ),
    );
    expect(toBrimChance(belief.habit)).toBeGreaterThan(0.6);
  });

  it('takes a forgotten top-up for done or not, and finds out at the next', () => {
    const before = steadyFills(6, 3, 6);
    const silent: WaterEvent = {
      kind: 'unreported-top-up',
      atMs: 21 * dayMs,
      chance: 0.6,
      askedL: null,
    };
    const next = (litres: number): WaterEvent => ({
      kind: 'top-up',
      atMs: 22 * dayMs + 8 * hourMs,
      litres,
      approximate: false,
      askedL: null,
    });
    const unsure = outlookOf(folded([...before, silent]), 21.2 * dayMs);
    expect(unsure.litresSd).toBeGreaterThan(5);
    for (const litres of [7, 24]) {
      const sure = outlookOf(folded([...before, silent, next(litres)]), 22.5 * dayMs);
      expect(sure.litresSd).toBeLessThan(3);
      expect(sure.usePerDay).toBeGreaterThan(4.5);
      expect(sure.usePerDay).toBeLessThan(8);
    }
  });

  it('takes an unknown amount for a fill, but is less sure of it', () => {
    const before = steadyFills(6, 3, 6);
    const topUp = { kind: 'top-up', atMs: 21 * dayMs, approximate: true, askedL: null } as const;
    const unknown = outlookOf(folded([...before, { ...topUp, litres: null }]), 21.1 * dayMs);
    const told = outlookOf(folded([...before, { ...topUp, litres: 17 }]), 21.1 * dayMs);
    expect(unknown.litres).toBeGreaterThan(100);
    expect(unknown.litresSd).toBeGreaterThan(told.litresSd);
  });

  it('notices who adds just what was asked, and no longer takes it for a fill', () => {
    const asAsked = Array.from(
      { length: 6 },
      (_, i): WaterEvent => ({
        kind: 'top-up',
        atMs: (i + 1) * 3 * dayMs + 8 * hourMs,
        litres: 14,
        approximate: false,
        askedL: 14,
      }),
    );
    const filled = folded(steadyFills(5, 3, 6));
    const added = folded([...steadyFills(5, 3, 0), ...asAsked]);
    expect(toBrimChance(filled.habit)).toBeGreaterThan(0.95);
    expect(toBrimChance(added.habit)).toBeLessThan(0.3);
  });

  it('believes a plain level reading over its own guess', () => {
    const read: WaterEvent = { kind: 'level', atMs: 20 * dayMs, litres: 90, approximate: false };
    const after = outlookOf(folded([...steadyFills(6, 3, 6), read]), 20 * dayMs);
    expect(after.litres).toBeGreaterThan(88);
    expect(after.litres).toBeLessThan(96);
  });

  it('starts a change of solution at what was put in', () => {
    const change: WaterEvent = { kind: 'reservoir-change', atMs: 20 * dayMs, litres: 100 };
    expect(outlookOf(folded([...steadyFills(6, 3, 6), change]), 20 * dayMs).litres).toBeCloseTo(
      100,
    );
  });

  it('expects evaporation only where nothing grows', () => {
    const bare = { ...tubs, plants: 0, crop: null };
    const [dry, green] = [bare, tubs].map((system) => startBelief(system, 0).parts[0]!.mean);
    expect(dry![2]).toBeLessThan(green![2]!);
  });

  it('stays finite whatever is logged', () => {
    const event = fc.oneof(
      fc.record({
        kind: fc.constant('top-up' as const),
        litres: fc.option(fc.integer({ min: 0, max: 2000 })),
        approximate: fc.boolean(),
        askedL: fc.option(fc.integer({ min: 1, max: 100 })),
      }),
      fc.record({
        kind: fc.constant('level' as const),
        litres: fc.integer({ min: 0, max: 150 }),
        approximate: fc.boolean(),
      }),
      fc.record({
        kind: fc.constant('reservoir-change' as const),
        litres: fc.option(fc.integer({ min: 0, max: 120 })),
      }),
      fc.record({
        kind: fc.constant('unreported-top-up' as const),
        chance: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        askedL: fc.option(fc.integer({ min: 0, max: 120 })),
      }),
      fc.record({ kind: fc.constant('cut' as const) }),
    );
    const log = fc.array(fc.tuple(event, fc.integer({ min: 0, max: 20 * 24 })), { maxLength: 15 });
    fc.assert(
      fc.property(log, (entries) => {
        let atMs = 0;
        const events = entries.map(([what, hours]): WaterEvent => {
          atMs += hours * hourMs;
          return { ...what, atMs };
        });
        const seen = outlookOf(folded(events), atMs);
        const figures = [seen.litres, seen.litresSd, seen.usePerDay, seen.usePerDaySd];
        for (const figure of figures) expect(Number.isFinite(figure)).toBe(true);
        expect(seen.litres).toBeGreaterThanOrEqual(0);
        expect(seen.litres).toBeLessThanOrEqual(tubs.brimL);
        for (const { p5, p50, p95 } of seen.useNext) {
          expect(p5).toBeLessThanOrEqual(p50);
          expect(p50).toBeLessThanOrEqual(p95);
        }
        for (const [k, chance] of seen.lowByVisit.entries()) {
          expect(chance).toBeGreaterThanOrEqual(seen.lowByVisit[k - 1] ?? 0);
          expect(chance).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 60 },
    );
  });
});
