import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareOfDay } from '../../src/estimation/day-driver.ts';
import { dayDrivers, type LocalDay } from '../../src/estimation/day-drivers.ts';

const day = (dayOfYear: number, weather: LocalDay['weather'] = null): LocalDay => ({
  startMs: dayOfYear * 86_400_000,
  endMs: (dayOfYear + 1) * 86_400_000,
  dayOfYear,
  weather,
});

describe('the thirst of days', () => {
  it('is that of Hargreaves where the temperatures are known', () => {
    // FAO-56 Example 20: Lyon in July, 5.0 mm/day.
    const lyon = day(196, { tMinC: 14.8, tMaxC: 26.6, leadDays: null });
    const [driver] = dayDrivers(45.72, [lyon]);
    expect(driver!.etoMm).toBeCloseTo(5.03, 2);
    expect(driver!.etoLogSd).toBe(0);
    expect(driver!.origin).toBe('observed');
  });

  it('is less sure of a forecast the further ahead it looks', () => {
    const ahead = [0, 2, 5].map((leadDays) =>
      day(180 + leadDays, { tMinC: 12, tMaxC: 22, leadDays }),
    );
    const sds = dayDrivers(50, ahead).map(({ etoLogSd }) => etoLogSd);
    expect(sds[0]).toBeGreaterThan(0);
    expect(sds[1]).toBeGreaterThan(sds[0]!);
    expect(sds[2]).toBeGreaterThan(sds[1]!);
  });

  it('follows the season without any weather, on both halves of the earth', () => {
    const eto = (latitude: number, dayOfYear: number) =>
      dayDrivers(latitude, [day(dayOfYear)])[0]!.etoMm;
    expect(eto(50, 190)).toBeGreaterThan(3 * eto(50, 10));
    expect(eto(-35, 10)).toBeGreaterThan(1.5 * eto(-35, 190));
    expect(eto(70, 355)).toBeGreaterThan(0);
  });

  it('carries a hot spell on for some days and then returns to the season', () => {
    const spell = Array.from({ length: 10 }, (_, i) =>
      day(170 + i, { tMinC: 18, tMaxC: 36, leadDays: null }),
    );
    const after = Array.from({ length: 40 }, (_, i) => day(180 + i));
    const drivers = dayDrivers(50, [...spell, ...after]);
    const usual = dayDrivers(50, after);
    expect(drivers[10]!.etoMm).toBeGreaterThan(1.2 * usual[0]!.etoMm);
    expect(drivers[49]!.etoMm).toBeCloseTo(usual[39]!.etoMm, 1);
  });

  it('takes temperatures said the wrong way round, and survives ones beyond the formula', () => {
    const [swapped] = dayDrivers(50, [day(180, { tMinC: 25, tMaxC: 12, leadDays: null })]);
    const [right] = dayDrivers(50, [day(180, { tMinC: 12, tMaxC: 25, leadDays: null })]);
    expect(swapped!.etoMm).toBe(right!.etoMm);
    const [frozen] = dayDrivers(50, [day(10, { tMinC: -40, tMaxC: -30, leadDays: null })]);
    expect(frozen!.origin).toBe('season');
  });
});

describe('the share of a day', () => {
  it('adds up over any cut, and to one', () => {
    const fraction = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fraction, (cut) => {
        expect(shareOfDay(0, cut) + shareOfDay(cut, 1)).toBeCloseTo(1, 10);
        expect(shareOfDay(0, cut)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('is mostly daylight', () => {
    expect(shareOfDay(0.25, 0.85)).toBeGreaterThan(0.85);
  });
});
