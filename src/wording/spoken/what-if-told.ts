import type { SystemIf, WhatIf } from '../../planning/what-if/what-if.ts';

/** A chance below this is no more than a worry. */
const WORTH_A_WORD = 0.05;
const MOST_TOLD = 4;

/** The systems that may run low if so, the likeliest first; and the next nearest to it. */
export function systemsAtRisk({ systems }: WhatIf): {
  readonly low: readonly SystemIf[];
  readonly nearest: SystemIf | null;
} {
  const known = systems
    .filter(({ isLevelKnown }) => isLevelKnown)
    .toSorted((one, other) => other.chanceLow - one.chanceLow);
  const low = known.filter(({ chanceLow }) => chanceLow >= WORTH_A_WORD).slice(0, MOST_TOLD);
  return { low, nearest: known[0] ?? null };
}

/** Whole below ten, then by fives, and by tens from fifty on. */
function roundly(n: number): number {
  const step = n < 10 ? 1 : n < 50 ? 5 : 10;
  return Math.round(n / step) * step;
}

/** A chance as people say it: one in so many, or so many in ten. */
export type ChanceTold =
  | { readonly kind: 'hardly' }
  | { readonly kind: 'one-in'; readonly n: number }
  | { readonly kind: 'in-ten'; readonly n: number }
  | { readonly kind: 'nearly-certain' };

export function chanceTold(chance: number): ChanceTold {
  if (chance < 0.01) return { kind: 'hardly' };
  if (chance >= 0.95) return { kind: 'nearly-certain' };
  if (chance < 0.35) return { kind: 'one-in', n: roundly(1 / chance) };
  return { kind: 'in-ten', n: Math.round(10 * chance) };
}
