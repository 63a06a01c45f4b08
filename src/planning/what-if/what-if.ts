import type { WaterOutlook } from '../../estimation/water-outlook.ts';
import { daysBetween, type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { Scenario } from '../../greenhouse/scenario.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import type { BoardQuestion } from '../duty-board.ts';
import { isLevelKnown } from '../level-known.ts';
import { planTopUps } from '../trip-plan.ts';
import { visitDays, type WaterOutlooks } from '../water-outlooks.ts';

/** How it would go, beside how it goes as things stand. */
export interface WhatIf {
  readonly scenario: Scenario;
  /** When somebody goes for water: as planned, and if so; null: beyond what is foreseen. */
  readonly planned: LocalDate | null;
  readonly instead: LocalDate | null;
  /** Trips for water within these days: as planned, and if so. */
  readonly withinDays: number;
  readonly tripsPlanned: number;
  readonly tripsInstead: number;
  readonly systems: readonly SystemIf[];
}

export interface SystemIf {
  readonly system: SystemId;
  /** Nobody has said how full it is: its figures are guesses. */
  readonly isLevelKnown: boolean;
  /** Chance that it runs low before somebody goes. */
  readonly chanceLow: number;
  readonly lowOnLikely: LocalDate | null;
  readonly usePerDayL: number;
  readonly usePerDayIfL: number;
  /** What a fill takes on the day of the trip if so. */
  readonly fillL: number;
}

const WITHIN_DAYS = 14;
/**
 * Common practice: what evaporates from wet pebbles and open water is at most this share of all that is
 * lost; the rest goes through leaves, whatever the floods.
 */
export const EVAPORATED_SHARE = 0.15;

/** `board`: as things stand; `if`: the outlooks if it were so, the same where only the day of the trip changes. */
export function whatIf(
  scenario: Scenario,
  board: BoardQuestion,
  ifOutlooks: WaterOutlooks,
): WhatIf {
  const { greenhouse, outlooks, nowMs } = board;
  const { systems } = greenhouse;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const on = (days: number | null): LocalDate | null =>
    days === null ? null : plusDays(today, days);
  const planned = nextTripIn(board, (id) => outlooks.get(id)!);
  const afterFill = nextTripIn(board, (id) => filled(ifOutlooks.get(id)!)) ?? visitDays;
  const plannedAfterFill = nextTripIn(board, (id) => filled(outlooks.get(id)!)) ?? visitDays;
  const instead = insteadIn(scenario, board, ifOutlooks, today, afterFill);
  return {
    scenario,
    planned: on(planned),
    instead: on(instead),
    withinDays: WITHIN_DAYS,
    tripsPlanned: tripsFrom(planned, plannedAfterFill),
    tripsInstead: tripsFrom(instead, afterFill) + (scenario.kind === 'fill-all' ? 1 : 0),
    systems: systems.map((system) => {
      const now = outlooks.get(system.id)!;
      const then = scenario.kind === 'fill-all' ? filled(now) : ifOutlooks.get(system.id)!;
      return systemIf(system, board, now, then, { scenario, instead });
    }),
  };
}

function systemIf(
  system: System,
  { logbook, greenhouse }: BoardQuestion,
  now: WaterOutlook,
  then: WaterOutlook,
  { scenario, instead }: { readonly scenario: Scenario; readonly instead: number | null },
): SystemIf {
  const useIfL = then.usePerDay * floodShare(system, scenario);
  const days = Math.min(instead ?? visitDays, visitDays);
  const leftL = Math.max(0, now.litres - days * useIfL);
  const likelyMs = scenario.kind === 'fill-all' ? null : then.lowAtMs.p50;
  return {
    system: system.id,
    isLevelKnown: isLevelKnown(logbook, system.id),
    chanceLow: then.lowByVisit[days] ?? 1,
    lowOnLikely: likelyMs === null ? null : localDateOf(likelyMs, greenhouse.timeZone),
    usePerDayL: now.usePerDay,
    usePerDayIfL: useIfL,
    fillL:
      scenario.kind === 'fill-all'
        ? Math.max(0, now.fillToL - now.litres)
        : Math.max(0, now.fillToL - leftL),
  };
}

/** Use against now's, where floods come more or less often: what evaporates goes with them, at the most. */
function floodShare({ floods }: System, scenario: Scenario): number {
  if (scenario.kind !== 'floods' || !floods) return 1;
  return 1 + EVAPORATED_SHARE * (scenario.times - 1);
}

/** Days until the next trip if so. */
function insteadIn(
  scenario: Scenario,
  board: BoardQuestion,
  ifOutlooks: WaterOutlooks,
  today: LocalDate,
  afterFill: number,
): number | null {
  switch (scenario.kind) {
    case 'go-on':
      return daysBetween(today, scenario.on);
    case 'fill-all':
      return afterFill;
    case 'weather':
    case 'floods':
      return nextTripIn(board, (id) => ifOutlooks.get(id)!);
  }
}

/** Days until the plan sends somebody for water; null: not within what is foreseen. */
function nextTripIn(
  { greenhouse, canGo }: BoardQuestion,
  outlookOf: (system: SystemId) => WaterOutlook,
): number | null {
  const plans = planTopUps({
    systems: greenhouse.systems.map(({ id, method, brimL, lowL }) => ({
      method,
      brimL,
      lowL,
      outlook: outlookOf(id),
    })),
    canGo: canGo ?? Array.from({ length: visitDays + 1 }, () => true),
    risk: greenhouse.risk,
  });
  const days = plans.flatMap(({ dueInDays }) => (dueInDays === null ? [] : [dueInDays]));
  return days.length === 0 ? null : Math.min(...days);
}

/** The outlook as it would be after filling up now. */
function filled(outlook: WaterOutlook): WaterOutlook {
  return { ...outlook, litres: outlook.fillToL, lowByVisit: outlook.lowByVisitIfFilled };
}

/** Trips within the days looked at: the first, and then each as long after as a fill lasts. */
function tripsFrom(first: number | null, afterFill: number): number {
  if (first === null || first >= WITHIN_DAYS) return 0;
  return 1 + Math.floor((WITHIN_DAYS - 1 - first) / Math.max(1, afterFill));
}
