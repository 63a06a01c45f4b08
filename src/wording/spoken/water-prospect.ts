import { daysBetween, type LocalDate } from '../../greenhouse/local-time.ts';
import type { Reason } from '../../planning/duty-line.ts';

/** What a system's water is heading for, as one sentence tells it. */
type WaterProspect =
  | { readonly kind: 'is-low' }
  | ({ readonly kind: 'low-today' } & Doubtful)
  | ({ readonly kind: 'low-by'; readonly date: LocalDate } & Doubtful)
  /** Not within the days foreseen. */
  | { readonly kind: 'lasts' };

interface Doubtful {
  /** How little may be left now, where the day told does not follow from what is likely; else null. */
  readonly leastL: number | null;
}

type WaterReason = Extract<Reason, { kind: 'water' }>;

export function waterProspect(reason: WaterReason, today: LocalDate): WaterProspect {
  if (reason.litresNow <= reason.lowL) return { kind: 'is-low' };
  const date = reason.lowOnEarly;
  if (date === null) return { kind: 'lasts' };
  if (date <= today) return { kind: 'low-today', leastL: leastLeft(reason, 0) };
  return { kind: 'low-by', date, leastL: leastLeft(reason, daysBetween(today, date)) };
}

/** One in twenty is below this many standard deviations. */
const earlyInSd = 1.645;

function leastLeft({ litresNow, litresSd, usePerDayL, lowL }: WaterReason, days: number) {
  if (litresNow - usePerDayL * (days + 1) <= lowL) return null;
  return Math.max(0, litresNow - earlyInSd * litresSd);
}
