import { describe, expect, it } from 'vitest';
import {
  afterShowing,
  afterTelling,
  anyHousehold,
  doneUntold,
  type ReportHabit,
  type RoundDay,
} from '../../src/logbook/report-habit.ts';
import { diceOf } from '../bench/season/dice.ts';

const silentAbout = (untold: number, asked: number): RoundDay => ({ told: asked - untold, untold });

function times(count: number, habit: ReportHabit, step: (before: ReportHabit) => ReportHabit) {
  let after = habit;
  for (let i = 0; i < count; i += 1) after = step(after);
  return after;
}

/** A household as it truly is. */
interface Truth {
  readonly misses: number;
  readonly forgets: number;
  readonly leavesOut: number;
}

/** Plays rounds of `asked` top-ups; the chances given to the untold ones, and whether they were done. */
function play(truth: Truth, asked: number, rounds: number) {
  const dice = diceOf(JSON.stringify({ truth, asked }));
  const cases: { chance: number; isDone: boolean }[] = [];
  let habit = anyHousehold;
  for (let round = 0; round < rounds; round += 1) {
    const goes = dice.uniform() >= truth.misses;
    const leaves = dice.uniform() < truth.leavesOut ? Math.ceil(dice.uniform() * (asked - 1)) : 0;
    const from = Math.floor(dice.uniform() * asked);
    const done = Array.from({ length: asked }, (_, i) => goes && (i + from) % asked >= leaves);
    const told = done.map((isDone) => isDone && dice.uniform() >= truth.forgets);
    const toldCount = told.filter(Boolean).length;
    const day = silentAbout(asked - toldCount, asked);
    if (day.untold > 0) {
      const chance = doneUntold(habit, day);
      for (const [i, isDone] of done.entries()) if (!told[i]) cases.push({ chance, isDone });
    }
    if (toldCount > 0) habit = afterTelling(habit, day);
    for (const [i, isDone] of done.entries()) {
      if (!told[i]) habit = afterShowing(habit, day, isDone ? 1 : 0);
    }
  }
  return cases;
}

describe('How a household reports', () => {
  it('makes an untold top-up likely done beside told ones, unlikely where nothing was told', () => {
    expect(doneUntold(anyHousehold, silentAbout(1, 4))).toBeGreaterThan(0.95);
    expect(doneUntold(anyHousehold, silentAbout(2, 4))).toBeGreaterThan(0.75);
    expect(doneUntold(anyHousehold, silentAbout(4, 4))).toBeLessThan(0.3);
  });

  it('is believed to go the more readily the more of its mornings were told of', () => {
    const steady = times(20, anyHousehold, (habit) => afterTelling(habit, { told: 1, untold: 0 }));
    const before = doneUntold(anyHousehold, silentAbout(1, 1));
    expect(doneUntold(steady, silentAbout(1, 1))).toBeGreaterThan(before + 0.1);
  });

  it('is no longer believed after its silences showed mornings missed', () => {
    const missing = times(5, anyHousehold, (habit) => afterShowing(habit, silentAbout(1, 1), 0));
    expect(doneUntold(missing, silentAbout(1, 1))).toBeLessThan(0.2);
  });

  it('is no longer believed to have done the rest after parts of the list were left out', () => {
    const hasty = times(5, anyHousehold, (habit) => afterShowing(habit, silentAbout(1, 3), 0));
    const before = doneUntold(anyHousehold, silentAbout(1, 3));
    expect(doneUntold(hasty, silentAbout(1, 3))).toBeLessThan(before - 0.15);
  });

  it('says chances that hold, whatever the household is like', () => {
    const truths: Truth[] = [
      { misses: 0.02, forgets: 0.1, leavesOut: 0.01 },
      { misses: 0.15, forgets: 0.05, leavesOut: 0.05 },
      { misses: 0.3, forgets: 0.3, leavesOut: 0.2 },
    ];
    for (const truth of truths) {
      for (const asked of [1, 3, 6]) {
        const cases = play(truth, asked, 600);
        const foreseen = cases.reduce((sum, { chance }) => sum + chance, 0) / cases.length;
        const happened = cases.filter(({ isDone }) => isDone).length / cases.length;
        expect(Math.abs(foreseen - happened), JSON.stringify({ truth, asked })).toBeLessThan(0.08);
      }
    }
  });
});
