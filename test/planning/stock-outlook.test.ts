import { describe, expect, it } from 'vitest';
import type { EntryNo } from '../../src/greenhouse/entry.ts';
import { emptyLogbook, withEntries } from '../../src/logbook/logbook.ts';
import { shoppingOfDay, stockOutlook, toBuy } from '../../src/planning/stock-outlook.ts';
import { bench, entry, quarryLane } from '../wording/quarry-lane.ts';

const dayMs = 24 * 3_600_000;

/** 850 mL of pH down, of which so much was given on each of the last days. */
function afterDoses(mL: number, days: number, now: string) {
  const nowMs = Date.parse(now);
  const doses = Array.from({ length: days }, (_, i) => ({
    ...entry('dose', mL, { system: bench, product: 'ph-down', atMs: nowMs - (days - i) * dayMs }),
    no: (i + 1) as EntryNo,
  }));
  const logbook = withEntries(emptyLogbook, doses);
  return {
    nowMs,
    logbook,
    line: stockOutlook(quarryLane, logbook, nowMs).find(({ product }) => product === 'ph-down')!,
  };
}

const tuesday = '2027-05-04T08:20:00+01:00';
const saturday = '2027-05-08T08:20:00+01:00';

describe('The stock', () => {
  it('lasts as long as the pace of the last four weeks has it', () => {
    // 28 doses of 10 mL in 28 days: 570 mL left at 10 mL a day.
    const { line } = afterDoses(10, 28, tuesday);
    expect(line).toMatchObject({ leftMl: 570, lastsDays: 57, emptyOn: '2027-06-30' });
  });

  it('says nothing of how long where none was used', () => {
    const lines = stockOutlook(quarryLane, emptyLogbook, Date.parse(tuesday));
    expect(lines.map(({ lastsDays }) => lastsDays)).toEqual([null, null, null, null]);
    expect(toBuy(lines)).toEqual([]);
  });

  it('counts the pace of a young logbook over no less than a week', () => {
    // One dose of 70 mL yesterday is no 70 mL a day.
    expect(afterDoses(70, 1, tuesday).line).toMatchObject({ leftMl: 780, lastsDays: 78 });
  });

  it('is to be bought three weeks before it runs out, and told on the shopping day', () => {
    const soon = afterDoses(20, 28, saturday);
    expect(soon.line).toMatchObject({ leftMl: 290, lastsDays: 14 });
    expect(shoppingOfDay(quarryLane, soon.logbook, soon.nowMs)).toEqual([soon.line]);
    const onTuesday = afterDoses(20, 28, tuesday);
    expect(shoppingOfDay(quarryLane, onTuesday.logbook, onTuesday.nowMs)).toEqual([]);
  });

  it('is told every day once it cannot wait for the shopping day', () => {
    const urgent = afterDoses(27, 28, tuesday);
    expect(urgent.line.lastsDays).toBeLessThanOrEqual(4);
    expect(shoppingOfDay(quarryLane, urgent.logbook, urgent.nowMs)).toEqual([urgent.line]);
  });
});
