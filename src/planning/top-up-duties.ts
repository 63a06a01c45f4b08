import { daysBetween, type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import { concentrateCautions } from './cautions-for.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { isLevelInDoubt, isLevelKnown } from './level-known.ts';
import { concentratesOf } from './strength-dose.ts';
import { type TopUpMix, topUpMix } from './top-up-mix.ts';
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
    canGo: question.canGo ?? Array.from({ length: visitDays + 1 }, () => true),
    risk: greenhouse.risk,
    ...(question.backOn === undefined ? {} : { backInDays: daysBetween(today, question.backOn) }),
  });
  const concentrates = concentratesOf(question);
  return greenhouse.systems.map((system, position): DutyLine => {
    const plan = plans[position]!;
    const litres = litresTold(plan.litres);
    const levelIsKnown = isLevelKnown(question.logbook, system.id);
    const latestInDays = levelIsKnown ? plan.latestInDays : null;
    // How much to mix rests on how much fits: a guess of that is no ground for a dose.
    const mix = levelIsKnown ? topUpMix(system, litres, question, concentrates) : null;
    const water = outlooks.get(system.id)!;
    const dateOf = (atMs: number | null): LocalDate | null =>
      atMs === null ? null : localDateOf(atMs, greenhouse.timeZone);
    return {
      duty: {
        kind: 'top-up',
        system: system.id,
        dueOn: dueOn(plan, today),
        litres,
        ...(latestInDays === null ? {} : { latestOn: plusDays(today, latestInDays) }),
        ...(plan.due === 'alongside' ? { alongside: true } : {}),
        ...(mix ? { strength: mix.strength } : {}),
        ...(mix && mix.concentrates.length > 0 ? { concentrates: mix.concentrates } : {}),
      },
      ridesFrom: null,
      reason: {
        kind: 'water',
        isLevelKnown: levelIsKnown,
        litresNow: water.band.likelyL,
        litresSd: water.litresSd,
        usePerDayL: water.usePerDay,
        lowL: system.lowL,
        lowOnEarly: dateOf(water.lowAtMs.p5),
        lowOnLikely: dateOf(water.lowAtMs.p50),
        fillToL: water.fillToL,
        wantsLevel: isLevelInDoubt(system, water),
        ...(mix ? { mix: mix.reason } : {}),
      },
      ...(mix && mix.concentrates.length > 0 ? mixingOf(mix, question) : {}),
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

/** The amounts stand with the duty; what is left to say is that they must not meet undiluted. */
function mixingOf(
  { concentrates }: TopUpMix,
  { logbook, greenhouse }: BoardQuestion,
): Pick<DutyLine, 'cautions'> {
  const systems = greenhouse.systems.map(({ id }) => id);
  return { cautions: concentrateCautions(logbook, systems, concentrates[0]!.product) };
}
