import type { WaterOutlook } from '../estimation/water-outlook.ts';
import type { RiskSetting } from '../greenhouse/greenhouse.ts';
import type { Method } from '../greenhouse/system.ts';

export interface TripSystem {
  readonly method: Method;
  readonly brimL: number;
  readonly lowL: number;
  /** Foreseen for the visits of the question. */
  readonly outlook: WaterOutlook;
}

export interface TripQuestion {
  readonly systems: readonly TripSystem[];
  /** By days ahead, 0 being today, one for each visit of the outlooks: can anybody go? */
  readonly canGo: readonly boolean[];
  readonly risk: RiskSetting;
  /** Days ahead of the first visit that costs nobody a trip, since whoever was away is back; absent: none. */
  readonly backInDays?: number;
}

/** What the plan says of one system, in the order asked. */
export interface TopUpPlan {
  /** Due on its own today, worth doing since someone goes anyway, or not yet. */
  readonly due: 'today' | 'alongside' | 'later';
  /** Days ahead of the visit on which it will be due; null: beyond the visits asked about. */
  readonly dueInDays: number | null;
  /** Days ahead of the last visit that comes before it is more likely low than not. */
  readonly latestInDays: number | null;
  /** What a top-up today takes; 0 where there is no room worth a can. */
  readonly litres: number;
  /** Chance that it is low by the next visit if nobody goes today. */
  readonly chanceLowIfLeft: number;
}

/**
 * A day of one system below the mark is as bad as this many trips, in a greenhouse of one system; in
 * a larger one a single system counts for less, by the root of their number. The trip is made when
 * the risk of leaving it outweighs what leaving it saves: one trip shared over the days a fill lasts.
 * Tuned by `npm run bench:season` so that normal keeps low days at about 1 in 1000.
 */
const TRIPS_A_LOW_DAY: Readonly<Record<RiskSetting, number>> = {
  careful: 24,
  normal: 5,
  relaxed: 2,
};

/** How much a low mark passed hurts, by method: common practice. A flood bench's pebbles hold water
 * for a day, jars are meant to fall; mist and film stop with the pump. */
const HARM: Readonly<Record<Method, number>> = {
  'flood-and-drain': 1,
  'deep-water-culture': 1,
  'nutrient-film': 1.2,
  'non-circulating': 0.8,
  drip: 1,
  aeroponic: 1.5,
};

/** What is asked for is more than the room expected by this many standard deviations. */
const ENOUGH_SDS = 1.3;
/** Less room than this share of the usable litres is not worth carrying a can for. */
const WORTH_A_CAN_SHARE = 0.08;

/** When to go, and what to top up then: one decision for all systems together. */
export function planTopUps(question: TripQuestion): readonly TopUpPlan[] {
  const { systems, canGo } = question;
  const tripsALowDay = TRIPS_A_LOW_DAY[question.risk] / Math.sqrt(systems.length);
  const daysAFill = daysUntilTrip(systems, lowByVisitIfFilled, canGo, tripsALowDay);
  const { backInDays = canGo.length } = question;
  const firstDue = (some: readonly TripSystem[]): number | null => {
    const due = firstDayDue(some, daysAFill, canGo, tripsALowDay);
    if (backInDays >= canGo.length) return due;
    // No sooner than without the return, since what is known then may spare the trip.
    return Math.max(due ?? backInDays, firstTripBefore(backInDays, some, canGo, tripsALowDay));
  };
  const goesToday = firstDue(systems) === 0;
  const harms = systems.map((system) => harmOfLeaving([system], lowByVisit, 0, canGo));
  const worst = Math.max(...harms);
  return systems.map((system, i): TopUpPlan => {
    const harm = harms[i] ?? 0;
    const { litres: levelL, litresSd, fillToL } = system.outlook;
    const roomL = fillToL - levelL;
    const worthACan = roomL > WORTH_A_CAN_SHARE * (system.brimL - system.lowL);
    const dueToday = goesToday && (harm >= worst || harm * tripsALowDay * daysAFill > 1);
    const due = dueToday ? 'today' : goesToday && worthACan ? 'alongside' : 'later';
    const alone = firstDue([system]);
    return {
      due,
      dueInDays: dueToday ? 0 : alone,
      latestInDays: latestVisit(system.outlook.lowByVisit),
      litres: worthACan || dueToday ? litresToTake(system, roomL, litresSd) : 0,
      chanceLowIfLeft: lowByVisit(system)[nextVisit(0, canGo)] ?? 1,
    };
  });
}

/**
 * The litres asked for are enough to reach the brim nine times in ten: whoever fills to the brim
 * brings some back, and whoever adds just what was asked ends at the brim too, and tells by what was
 * left over how much was lost. Where the level must not be raised far, it is the raise itself.
 */
function litresToTake(system: TripSystem, roomL: number, litresSd: number): number {
  if (system.outlook.fillToL < system.brimL) return roomL;
  return Math.min(system.brimL, roomL + ENOUGH_SDS * litresSd);
}

type Chances = (system: TripSystem) => readonly number[];
const lowByVisit: Chances = (system) => system.outlook.lowByVisit;
const lowByVisitIfFilled: Chances = (system) => system.outlook.lowByVisitIfFilled;

/** Days a fill of everything lasts: the next trip if all were topped up today. */
function daysUntilTrip(
  systems: readonly TripSystem[],
  chances: Chances,
  canGo: readonly boolean[],
  tripsALowDay: number,
): number {
  for (let day = 1; day < canGo.length; day += 1) {
    if (canGo[day] && risksTooMuch(systems, chances, day, day, canGo, tripsALowDay)) return day;
  }
  return canGo.length;
}

function firstDayDue(
  systems: readonly TripSystem[],
  daysAFill: number,
  canGo: readonly boolean[],
  tripsALowDay: number,
): number | null {
  for (let day = 0; day < canGo.length - 1; day += 1) {
    if (canGo[day] && risksTooMuch(systems, lowByVisit, day, daysAFill, canGo, tripsALowDay)) {
      return day;
    }
  }
  return null;
}

/**
 * The day of the first of the trips that are best until somebody is back: each trip costs one, and so
 * does each expected day below the mark as many as it is worth. Where none is best, it is the day of
 * the return. Every later stretch is taken to begin as full as one that begins today.
 */
function firstTripBefore(
  backInDays: number,
  systems: readonly TripSystem[],
  canGo: readonly boolean[],
  tripsALowDay: number,
): number {
  const asItIs = costOfStretches(systems, lowByVisit, backInDays, tripsALowDay);
  const filled = costOfStretches(systems, lowByVisitIfFilled, backInDays, tripsALowDay);
  /** By day: what a trip on it is to cost, with all that follows. */
  const costs: number[] = [];
  const best = (stretches: readonly number[], since: number, first: number) => {
    let [cost, next] = [stretches[backInDays - since]!, backInDays];
    for (let day = backInDays - 1; day >= first; day -= 1) {
      const whole = canGo[day] ? stretches[day - since]! + costs[day]! : Number.POSITIVE_INFINITY;
      if (whole < cost) [cost, next] = [whole, day];
    }
    return { cost, next };
  };
  for (let day = backInDays - 1; day >= 0; day -= 1) {
    costs[day] = 1 + best(filled, day, day + 1).cost;
  }
  return best(asItIs, 0, 0).next;
}

/** By its length in days: what a stretch without a trip is expected to cost. */
function costOfStretches(
  systems: readonly TripSystem[],
  chances: Chances,
  longest: number,
  tripsALowDay: number,
): readonly number[] {
  const costs = [0];
  for (let day = 1; day <= longest; day += 1) {
    const harm = systems.reduce(
      (sum, system) => sum + HARM[system.method] * (chances(system)[day] ?? 1),
      0,
    );
    costs.push(costs[day - 1]! + harm * tripsALowDay);
  }
  return costs;
}

/** Whether leaving the trip of `day` to the next day somebody can go costs more than it saves. */
function risksTooMuch(
  systems: readonly TripSystem[],
  chances: Chances,
  day: number,
  daysAFill: number,
  canGo: readonly boolean[],
  tripsALowDay: number,
): boolean {
  const savedTrips = (nextVisit(day, canGo) - day) / daysAFill;
  return harmOfLeaving(systems, chances, day, canGo) * tripsALowDay > savedTrips;
}

/** Expected days below the mark, weighed by harm, between a visit left out and the next one. */
function harmOfLeaving(
  systems: readonly TripSystem[],
  chances: Chances,
  day: number,
  canGo: readonly boolean[],
): number {
  const until = nextVisit(day, canGo);
  let harm = 0;
  for (const system of systems) {
    for (let d = day + 1; d <= until; d += 1) {
      harm += HARM[system.method] * (chances(system)[d] ?? 1);
    }
  }
  return harm;
}

function nextVisit(day: number, canGo: readonly boolean[]): number {
  const next = canGo.indexOf(true, day + 1);
  return next === -1 ? canGo.length : next;
}

function latestVisit(lowBy: readonly number[]): number | null {
  const low = lowBy.findIndex((chance) => chance > 0.5);
  return low === -1 ? null : Math.max(0, low - 1);
}
