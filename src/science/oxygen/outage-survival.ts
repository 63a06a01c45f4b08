import { holds, type Outcome } from '../outcome.ts';
import { DRAINED_ROOTS } from './outage-assumptions.ts';
import type { OutageCase, Survival } from './outage-case.ts';
import { standingWaterSurvival } from './standing-water-survival.ts';

/**
 * How long a system lasts in an outage, with bounds.
 *
 * Roots that hang in water are limited by its oxygen: h = (C₀ − Climit) · V / (q m), down to 3 mg/L
 * for the low and the likely figure and to 2 mg/L for the high one. Roots that a pump wets are
 * limited by drying, by a table of common practice. Jars whose roots have an air gap need no power.
 *
 * Source: oxygen balance as in `oxygen-depletion.ts`; the figures in `outage-assumptions.ts`, each
 * with its standing. The bounds are wide because roots were not weighed.
 * @example outageSurvival({ method: 'nutrient-film', failure: 'power', sky: 'sun', … })
 *   // 1 to 4 h, likely 2
 */
export function outageSurvival(outage: OutageCase): Outcome<Survival> {
  switch (outage.method) {
    case 'non-circulating':
      return holds({ kind: 'not-affected' });
    case 'deep-water-culture':
      // Air stones hold the oxygen alone when only the circulation stops.
      if (outage.failure === 'circulation') return holds({ kind: 'not-affected' });
      return standingWaterSurvival(outage);
    case 'nutrient-film':
    case 'flood-and-drain':
    case 'drip':
    case 'aeroponic': {
      // Where a pump wets the roots, the falling water takes up air of its own.
      if (outage.failure === 'aeration') return holds({ kind: 'not-affected' });
      const drying = DRAINED_ROOTS[outage.method][outage.sky];
      return holds({
        kind: 'limited',
        by: 'drying',
        lowHours: drying.low,
        likelyHours: drying.likely,
        highHours: drying.high,
        assumptions: [drying],
      });
    }
  }
}
