/** So many times yes, and so many times no; what is presumed before the first case counts as cases too. */
interface Tally {
  readonly yes: number;
  readonly no: number;
}

/** How a household goes and tells of it, learned from its rounds. */
export interface ReportHabit {
  /** Nobody goes on a morning that asks for it. */
  readonly misses: Tally;
  /** Somebody went, and told nothing of the whole trip. */
  readonly keepsQuiet: Tally;
  /** Of what was topped up on a trip, one is left out of the telling. */
  readonly forgets: Tally;
  /** Whoever went left a part of the list undone, without a word. */
  readonly leavesOut: Tally;
}

/**
 * Common practice, no source: one report in ten is forgotten, one trip in fifty goes untold altogether,
 * about one morning in ten is missed, and on one trip in two hundred a part of the list is left undone.
 */
export const anyHousehold: ReportHabit = {
  misses: { yes: 0.5, no: 4.5 },
  keepsQuiet: { yes: 0.4, no: 19.6 },
  forgets: { yes: 1, no: 9 },
  leavesOut: { yes: 0.2, no: 39.8 },
};

/** The day of a round: so many top-ups were told, and so many that it asked for were not. */
export interface RoundDay {
  readonly told: number;
  readonly untold: number;
}

/** The chance that what was asked for and not told was done all the same. */
export function doneUntold(habit: ReportHabit, { told, untold }: RoundDay): number {
  const forgets = share(habit.forgets);
  const forgotten = forgets ** untold * (1 - forgets) ** told;
  if (told > 0) {
    // Any number may be left out, and any of that number, each as likely as the other.
    const all = told + untold;
    const leftOut = share(habit.leavesOut) / ((all - 1) * waysToChoose(untold, all));
    return forgotten / (forgotten + leftOut);
  }
  const missed = share(habit.misses);
  const quiet = share(habit.keepsQuiet);
  const wentUntold = (1 - missed) * (quiet + (1 - quiet) * forgotten);
  return wentUntold / (wentUntold + missed);
}

/** The habit after a day of which something was told; none of that is doubtful. */
export function afterTelling(habit: ReportHabit, { told, untold }: RoundDay): ReportHabit {
  return {
    misses: counted(habit.misses, 0, 1),
    keepsQuiet: counted(habit.keepsQuiet, 0, 1),
    forgets: counted(habit.forgets, 0, told),
    leavesOut: untold === 0 ? counted(habit.leavesOut, 0, 1) : habit.leavesOut,
  };
}

/** The habit after one untold top-up of a silence has shown itself to have been done with this chance. */
export function afterShowing(habit: ReportHabit, day: RoundDay, done: number): ReportHabit {
  const { told, untold } = day;
  const part = 1 / untold;
  if (told > 0) {
    return {
      ...habit,
      forgets: counted(habit.forgets, done, 0),
      leavesOut: counted(habit.leavesOut, (1 - done) * part, done * part),
    };
  }
  const quiet = share(habit.keepsQuiet);
  const quietly = quiet / (quiet + (1 - quiet) * share(habit.forgets) ** untold);
  return {
    ...habit,
    misses: counted(habit.misses, (1 - done) * part, done * part),
    keepsQuiet: counted(habit.keepsQuiet, done * quietly * part, done * (1 - quietly) * part),
    forgets: counted(habit.forgets, done * (1 - quietly), 0),
  };
}

function waysToChoose(some: number, all: number): number {
  let ways = 1;
  for (let i = 1; i <= some; i += 1) ways *= (all - some + i) / i;
  return ways;
}

function share({ yes, no }: Tally): number {
  return yes / (yes + no);
}

function counted({ yes, no }: Tally, moreYes: number, moreNo: number): Tally {
  return { yes: yes + moreYes, no: no + moreNo };
}
