import { type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { planTopUps, type TopUpPlan } from './trip-plan.ts';
import { visitDays } from './water-outlooks.ts';

/** When each system wants topping up, by how much and why; one decision for all together. */
export function topUpDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  const { greenhouse, outlooks } = question;
  const plans = planTopUps({
    systems: greenhouse.systems.map(({ id, method, brimL, lowL }) => ({
      method,
      brimL,
      lowL,
      outlook: outlooks.get(id)!,
    })),
    canGo: Array.from({ length: visitDays + 1 }, () => true),
    risk: 'normal',
  });
  return greenhouse.systems.map((system, position): DutyLine => {
    const plan = plans[position]!;
    const water = outlooks.get(system.id)!;
    const dateOf = (atMs: number | null): LocalDate | null =>
      atMs === null ? null : localDateOf(atMs, greenhouse.timeZone);
    return {
      duty: {
        kind: 'top-up',
        system: system.id,
        dueOn: dueOn(plan, today),
        litres: litresTold(plan.litres),
        ...(plan.latestInDays === null ? {} : { latestOn: plusDays(today, plan.latestInDays) }),
        ...(plan.due === 'alongside' ? { alongside: true } : {}),
      },
      ridesFrom: null,
      reason: {
        kind: 'water',
        litresNow: water.litres,
        litresSd: water.litresSd,
        usePerDayL: water.usePerDay,
        lowL: system.lowL,
        lowOnEarly: dateOf(water.lowAtMs.p5),
        lowOnLikely: dateOf(water.lowAtMs.p50),
        fillToL: water.fillToL,
      },
    };
  });
}

function dueOn(plan: TopUpPlan, today: LocalDate): LocalDate {
  if (plan.due === 'today') return today;
  return plusDays(today, plan.dueInDays ?? visitDays);
}

/** Litres as they are told: halves under ten, whole ones above. */
function litresTold(litres: number): number {
  return litres < 10 ? Math.round(litres * 2) / 2 : Math.round(litres);
}
