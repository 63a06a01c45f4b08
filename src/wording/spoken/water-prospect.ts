import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { Reason } from '../../planning/duty-line.ts';

/** What a system's water is heading for, as one sentence tells it. */
type WaterProspect =
  | { readonly kind: 'is-low' }
  | { readonly kind: 'low-today' }
  | { readonly kind: 'low-by'; readonly date: LocalDate }
  /** Not within the days foreseen. */
  | { readonly kind: 'lasts' };

export function waterProspect(
  reason: Extract<Reason, { kind: 'water' }>,
  today: LocalDate,
): WaterProspect {
  if (reason.litresNow <= reason.lowL) return { kind: 'is-low' };
  if (reason.lowOnEarly === null) return { kind: 'lasts' };
  if (reason.lowOnEarly <= today) return { kind: 'low-today' };
  return { kind: 'low-by', date: reason.lowOnEarly };
}
