/**
 * How a household tops a system up: nearly always to the brim, now one way now the other, or nearly
 * always just what was asked. The chances of these three, in this order.
 */
export type FillHabit = readonly [toBrim: number, mixed: number, asAsked: number];

/** Share of top-ups that go to the brim under each habit. */
const TO_BRIM_SHARES = [0.995, 0.6, 0.03] as const;

export const BRIM_FILLERS: FillHabit = [0.85, 0.1, 0.05];
/** Jars are topped up by an amount, since an air gap must stay. */
export const AMOUNT_ADDERS: FillHabit = [0.1, 0.2, 0.7];

/** The chance that the next top-up goes to the brim. */
export function toBrimChance(habit: FillHabit): number {
  return habit.reduce((sum, chance, i) => sum + chance * TO_BRIM_SHARES[i]!, 0);
}

/** The habit after a top-up that went to the brim with the one and was added with the other chance. */
export function learnHabit(habit: FillHabit, filled: number, added: number): FillHabit {
  const before = toBrimChance(habit);
  const weights = habit.map((chance, i) => {
    const share = TO_BRIM_SHARES[i]!;
    const neither = 1 - filled - added;
    return chance * ((filled * share) / before + (added * (1 - share)) / (1 - before) + neither);
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return [weights[0]! / total, weights[1]! / total, weights[2]! / total];
}
