import { describe, expect, test } from 'vitest';
import { boardOf } from '../../src/assistant/board-of.ts';
import { boardQuestion } from '../../src/assistant/board-question.ts';
import { outageProspects } from '../../src/planning/outage-prospects.ts';
import { openOutages } from '../../src/planning/outages.ts';
import {
  bench,
  buckets,
  gutters,
  jars,
  known,
  may,
  standingWith,
} from '../assistant/quarry-lane-standing.ts';

const all = [bench, buckets, gutters, jars];

function prospects(at: string, of: 'power' | 'pump' | 'air-pump' = 'power', waterC = 20) {
  const said = [
    ...known(buckets, 100, 1.8, may(4)),
    { system: buckets, quantity: 'water-temperature', value: waterC, at: may(4, '08:25') },
  ] as const;
  const standing = standingWith(said, at);
  return outageProspects(boardQuestion(standing, standing.nowMs), all, of, standing.nowMs);
}

describe('without power', () => {
  test('the one that is soonest in trouble comes first, and jars are not touched', () => {
    const { systems, unaffected } = prospects(may(4, '12:00'));
    const lows = systems.map(({ lowAtMs }) => lowAtMs);
    expect(lows).toEqual(lows.toSorted((one, other) => one - other));
    expect(unaffected).toEqual([jars]);
  });

  test('a film run dries within one to four hours in sun', () => {
    // Common practice: one to four hours.
    const run = prospects(may(4, '12:00')).systems.find(({ system }) => system === gutters)!;
    expect(run).toMatchObject({ by: 'drying', lowHours: 1, highHours: 4 });
    expect(run.lowAtMs).toBe(Date.parse(may(4, '13:00')));
    expect(run.byHand).toContain('pour-over-roots');
  });

  test('bounds that begin in the dark end with the next sun', () => {
    const night = prospects(may(4, '02:00')).systems.find(({ system }) => system === gutters)!;
    const day = prospects(may(4, '12:00')).systems.find(({ system }) => system === gutters)!;
    expect(night.lowHours).toBeGreaterThan(day.lowHours);
    // Sun from eight o'clock: four hours of it are the end.
    expect(night.highAtMs).toBeLessThanOrEqual(Date.parse(may(4, '12:00')));
  });

  test('roots in warm water use up their oxygen sooner', () => {
    const hours = (waterC: number) =>
      prospects(may(4, '12:00'), 'power', waterC).systems.find(({ system }) => system === buckets)!
        .likelyHours;
    expect(hours(28)).toBeLessThan(hours(18));
  });
});

describe('without one pump', () => {
  test('a dead air pump touches the buckets alone', () => {
    expect(prospects(may(4, '12:00'), 'air-pump').systems.map(({ system }) => system)).toEqual([
      buckets,
    ]);
  });
});

describe('an outage', () => {
  const out = { quantity: 'outage', of: 'power', at: may(4, '09:00') } as const;

  test('is open until the same thing is back', () => {
    const pumpBack = { quantity: 'restored', of: 'pump', at: may(4, '10:00') } as const;
    const back = { quantity: 'restored', of: 'power', at: may(4, '11:00') } as const;
    const open = (said: Parameters<typeof standingWith>[0]) =>
      openOutages(standingWith(said, may(4, '12:00')).logbook, all).length;
    expect(open([out])).toBe(1);
    expect(open([out, pumpBack])).toBe(1);
    expect(open([out, back])).toBe(0);
  });

  test('is followed by a check of what stood still, until somebody has looked', () => {
    const back = { quantity: 'restored', of: 'power', at: may(4, '11:00') } as const;
    const checks = (said: Parameters<typeof standingWith>[0]) => {
      const { today } = boardOf(standingWith(said, may(4, '12:00')), Date.parse(may(4, '12:00')));
      return today
        .filter(({ reason }) => reason.kind === 'after-outage')
        .map(({ duty }) => duty.system);
    };
    expect(checks([out, back])).toEqual([bench, buckets, gutters]);
    const looked = { system: buckets, quantity: 'ph', value: 5.8, at: may(4, '11:30') } as const;
    expect(checks([out, back, looked])).toEqual([bench, gutters]);
  });
});
