import { describe, expect, test } from 'vitest';
import { boardOf } from '../../src/assistant/board-of.ts';
import type { DutyKind } from '../../src/greenhouse/duty.ts';
import type { LocalDate } from '../../src/greenhouse/local-time.ts';
import type { SystemId } from '../../src/greenhouse/system.ts';
import type { WeatherDay } from '../../src/greenhouse/weather.ts';
import {
  bench,
  buckets,
  gutters,
  jars,
  known,
  may,
  type Said,
  standingWith,
  type World,
} from '../assistant/quarry-lane-standing.ts';

function lineOf(
  said: readonly Said[],
  now: string,
  kind: DutyKind,
  system: SystemId | null,
  world: World = {},
) {
  const { today, later } = boardOf(standingWith(said, now, world), Date.parse(now));
  const line = [...today, ...later].find(
    ({ duty }) => duty.kind === kind && duty.system === system,
  );
  return line ?? null;
}

describe('a change of solution', () => {
  test('is due when the top-ups sum to what the reservoir holds', () => {
    const topUps = Array.from(
      { length: 6 },
      (_, i): Said => ({
        system: buckets,
        quantity: 'top-up',
        value: 18,
        at: may(2 + i),
      }),
    );
    const line = lineOf(
      [...known(buckets, 108, 1.8, may(1)), ...topUps],
      may(8),
      'reservoir-change',
      buckets,
    )!;
    expect(line.duty.dueOn).toBe('2027-05-08');
    expect(line.reason).toMatchObject({ kind: 'change', because: 'top-ups', toppedUpL: 108 });
  });

  test('is due by age where little was topped up, small reservoirs sooner', () => {
    // Common practice: up to 200 L after three weeks, larger ones after four.
    const line = (system: SystemId) =>
      lineOf(known(system, 100, 1.8, may(1)), may(2), 'reservoir-change', system)!;
    expect(line(bench).duty.dueOn > line(gutters).duty.dueOn).toBe(true);
    expect(line(bench).duty.dueOn).toBe('2027-05-29');
  });

  test('starts anew when it was done, or said to be done', () => {
    const changed: Said = { system: bench, quantity: 'reservoir-change', value: 600, at: may(10) };
    const said: Said = {
      system: bench,
      quantity: 'duty-done',
      duty: 'reservoir-change',
      at: may(12),
    };
    expect(lineOf([changed], may(13), 'reservoir-change', bench)!.duty.dueOn).toBe('2027-06-07');
    expect(lineOf([changed, said], may(13), 'reservoir-change', bench)!.duty.dueOn).toBe(
      '2027-06-09',
    );
  });

  test('says what to mix and in which order: A, stir, B, and the old solution by local rules', () => {
    const { duty, steps, cautions } = lineOf([], may(2), 'reservoir-change', bench)!;
    expect(duty.litres).toBe(600);
    // 600 L from 0.05 to 2.4 mS/cm at 0.35 mS/cm by 1 mL/L: 600 · 2.35 / 0.35 = 4029 mL of each.
    expect(duty.concentrates).toEqual([
      { product: 'nutrient-a', mL: 4025 },
      { product: 'nutrient-b', mL: 4025 },
    ]);
    const order = steps!.map(({ kind }) => kind);
    expect(order.indexOf('empty')).toBeLessThan(order.indexOf('fill-with-water'));
    expect(order.indexOf('fill-with-water')).toBeLessThan(order.indexOf('add-one-by-one'));
    expect(cautions?.about).toContain('local-rules');
    expect(cautions?.about).toContain('concentrates-apart');
  });

  test('is never asked of jars', () => {
    expect(lineOf([], may(2), 'reservoir-change', jars)).toBeNull();
  });

  test('comes early where the pH is set right every day and does not stay', () => {
    const doses = [2, 3, 4, 5].map(
      (day): Said => ({
        system: bench,
        quantity: 'dose',
        value: 5,
        product: 'ph-down',
        at: may(day),
      }),
    );
    const line = lineOf(doses, may(6), 'reservoir-change', bench)!;
    expect(line.reason).toMatchObject({ because: 'drift' });
    expect(line.duty.dueOn).toBe('2027-05-08');
  });
});

describe('cleaning', () => {
  test('of the filter is called for by a flood of 9 minutes against 7', () => {
    const fill: Said = { system: bench, quantity: 'fill-time', value: 9, at: may(4) };
    const line = lineOf([fill], may(4), 'clean', bench)!;
    expect(line.duty.parts).toEqual(['pump-filter']);
    expect(line.reason).toMatchObject({
      because: { kind: 'fill-time', minutes: 9, usualMinutes: 7 },
    });
    expect(line.duty.dueOn).toBe('2027-05-07');
  });

  test('waits for its interval where the flood is as quick as ever', () => {
    const fill: Said = { system: bench, quantity: 'fill-time', value: 7, at: may(4) };
    expect(lineOf([fill], may(4), 'clean', bench)!.duty.dueOn > '2027-05-30').toBe(true);
  });

  test('comes sooner where the fill time creeps up', () => {
    const crept: Said = { system: bench, quantity: 'fill-time', value: 7.7, at: may(11) };
    // A tenth longer in ten days: a fifth after twenty.
    expect(lineOf([crept], may(11), 'clean', bench)!.duty.dueOn).toBe('2027-05-21');
  });

  test('is over once it was said to be done', () => {
    const fill: Said = { system: bench, quantity: 'fill-time', value: 9, at: may(4) };
    const done: Said = { system: bench, quantity: 'duty-done', duty: 'clean', at: may(5) };
    expect(lineOf([fill, done], may(5), 'clean', bench)!.reason).toMatchObject({
      because: { kind: 'interval' },
    });
  });
});

describe('aeration', () => {
  const warm = (value: number): Said => ({
    system: gutters,
    quantity: 'water-temperature',
    value,
    at: may(4),
  });
  const water = known(gutters, 110, 1.3, may(3));

  test('is left alone while the water is as it should be', () => {
    expect(lineOf([...water, warm(20)], may(4), 'aeration', gutters)).toBeNull();
  });

  test('is turned up in warm water, and once it is up no more is asked', () => {
    const line = lineOf([...water, warm(29)], may(4), 'aeration', gutters)!;
    expect(line.duty.minutesPerHour).toBeGreaterThan(10);
    const set: Said = {
      system: gutters,
      quantity: 'aeration',
      value: line.duty.minutesPerHour!,
      at: may(4, '09:00'),
    };
    expect(lineOf([...water, warm(29), set], may(4, '09:01'), 'aeration', gutters)).toBeNull();
  });

  test('is turned up before a hot spell that is forecast', () => {
    const weather = [4, 5, 6].map(
      (day): WeatherDay => ({
        date: `2027-05-0${day}` as LocalDate,
        tMinC: 20,
        tMaxC: 34,
        observed: false,
        toldOn: '2027-05-04' as LocalDate,
      }),
    );
    const line = lineOf([...water, warm(21)], may(4), 'aeration', gutters, { weather })!;
    expect(line.reason).toMatchObject({ kind: 'aeration', isForecast: true });
  });
});

describe('a calibration', () => {
  const calibrationOf = (said: readonly Said[], now: string) => {
    const { today, later } = boardOf(standingWith(said, now), Date.parse(now));
    return [...today, ...later].find(({ duty }) => duty.probe === 'pen')!;
  };

  test('is due by age, and urgent before its readings are no longer trusted', () => {
    // Set down as calibrated on 24 April; common practice is every four weeks.
    const line = calibrationOf([], may(4));
    expect(line.duty).toMatchObject({ probe: 'pen', dueOn: '2027-05-22', latestOn: '2027-05-29' });
  });

  test('is due sooner where the probe has drifted much', () => {
    const drifted: readonly Said[] = [
      { quantity: 'calibration', value: 7, read: 7.3, probe: 'pen', at: may(4) },
      { quantity: 'calibration', value: 4.01, read: 4.3, probe: 'pen', at: may(4) },
    ];
    const line = calibrationOf(drifted, may(4));
    expect(line.reason).toMatchObject({ isLearned: true, verdict: 'good' });
    // 0.45 pH of drift in 38 days, the usual counted in: 0.15 pH after 13 days.
    expect(line.duty.dueOn).toBe('2027-05-17');
  });

  test('is due at once where the last one failed', () => {
    const failed: readonly Said[] = [
      { quantity: 'calibration', value: 7, read: 7.9, probe: 'pen', at: may(4) },
      { quantity: 'calibration', value: 4.01, read: 5.5, probe: 'pen', at: may(4) },
    ];
    const line = calibrationOf(failed, may(5));
    expect(line.duty).toMatchObject({ probe: 'pen', dueOn: '2027-05-05' });
  });
});

describe('a top-up', () => {
  const at = (ec: number) => lineOf(known(buckets, 80, ec, may(4)), may(4), 'top-up', buckets)!;

  test('is plain water where EC is high, half strength in the middle, full where it is low', () => {
    expect(at(2.15).duty).toMatchObject({ strength: 'plain' });
    expect(at(2.15).duty.concentrates).toBeUndefined();
    expect(at(1.9).duty).toMatchObject({ strength: 'half' });
    expect(at(1.65).duty).toMatchObject({ strength: 'full' });
  });

  test('names the millilitres of each concentrate for the litres asked', () => {
    const { litres = 0, concentrates = [] } = at(1.65).duty;
    // From 0.05 to 1.9 mS/cm at 0.35 mS/cm by 1 mL/L of each.
    const eachMl = (litres * 1.85) / 0.35;
    expect(concentrates.map(({ product }) => product)).toEqual(['nutrient-a', 'nutrient-b']);
    for (const { mL } of concentrates) {
      expect(mL).toBeLessThanOrEqual(eachMl);
      expect(mL).toBeGreaterThan(eachMl - 5.1);
    }
  });

  test('is weaker where EC rises by itself, stronger where it falls', () => {
    const drift = (yesterday: number): readonly Said[] => [
      ...known(buckets, 80, yesterday, may(3)),
      { system: buckets, quantity: 'ec', value: 1.9, at: may(4) },
    ];
    expect(lineOf(drift(1.75), may(4), 'top-up', buckets)!.duty.strength).toBe('plain');
    expect(lineOf(drift(2.05), may(4), 'top-up', buckets)!.duty.strength).toBe('full');
  });

  test('names no strength while nobody has told how full it is', () => {
    const ec: Said = { system: buckets, quantity: 'ec', value: 1.7, at: may(4) };
    expect(lineOf([ec], may(4), 'top-up', buckets)!.duty.strength).toBeUndefined();
  });
});
