import type { WaterBelief } from '../../estimation/water-belief.ts';
import type { WaterOutlook } from '../../estimation/water-outlook.ts';
import type { RiskSetting } from '../../greenhouse/greenhouse.ts';
import { daysBetween, instantOf, type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { DutyLine } from '../duty-line.ts';
import { planTopUps } from '../trip-plan.ts';
import { beliefInHouse, visitAfterRoundMs } from '../water-outlooks.ts';
import type { AwayQuestion } from './away-question.ts';
import { type Filling, filled, foresee, worthACan } from './away-water.ts';

export interface PlannedTrip {
  readonly date: LocalDate;
  /** null: nobody can go. */
  readonly by: string | null;
  readonly topUps: readonly { readonly system: SystemId; readonly litres: number }[];
  readonly lines: readonly DutyLine[];
}

/** The trips of an absence, and what is not safe with them, from which day. */
export interface AwayRoute {
  readonly trips: readonly PlannedTrip[];
  readonly unsafe: readonly { readonly system: SystemId; readonly from: LocalDate }[];
}

/** A system this likely to run low before the next visit is not safe; whoever risks more is told later. */
const UNSAFE_CHANCE: Readonly<Record<RiskSetting, number>> = {
  careful: 0.05,
  normal: 0.1,
  relaxed: 0.25,
};
/** Looked at past the end, so that the last trip is weighed against later ones. */
const BEYOND_DAYS = 8;

/** How everything stands at departure, or after a trip. */
interface Stage {
  readonly date: LocalDate;
  readonly atMs: number;
  readonly beliefs: readonly WaterBelief[];
  /** Days ahead of the first trip that can follow. */
  readonly earliest: 0 | 1;
}

/**
 * One trip after the other; each goes as late as the daily plan would if nobody came back, and fills
 * what has room: what is promised is safe, and the last trip may turn out to be spared.
 */
export function tripsOf(
  question: AwayQuestion,
  first: LocalDate,
  leaveMs: number,
  reach: number,
  fillings: readonly Filling[] | null,
): AwayRoute {
  const { systems } = question.board.greenhouse;
  let stage: Stage = {
    date: first,
    atMs: leaveMs,
    beliefs: systems.map(
      (system, i) =>
        fillings?.[i]?.belief ??
        beliefInHouse(question.board.greenhouse, question.water, system.id),
    ),
    earliest: fillings ? 1 : 0,
  };
  const trips: PlannedTrip[] = [];
  const unsafe = new Map<SystemId, LocalDate>();
  for (;;) {
    const outlooks = outlooksOf(stage, question, reach + BEYOND_DAYS);
    const ahead = nextTrip(stage, outlooks, question);
    const left = daysBetween(stage.date, question.until);
    const stop = ahead === null ? left : Math.min(ahead, left);
    for (const [system, from] of lowBefore(stop, stage, outlooks, question)) {
      if (!unsafe.has(system)) unsafe.set(system, from);
    }
    if (ahead === null || ahead > left) break;
    const { trip, after } = afterTrip(stage, ahead, question);
    trips.push(trip);
    stage = after;
  }
  return { trips, unsafe: [...unsafe].map(([system, from]) => ({ system, from })) };
}

function outlooksOf(stage: Stage, question: AwayQuestion, days: number): readonly WaterOutlook[] {
  const { date, atMs, beliefs } = stage;
  return question.board.greenhouse.systems.map((system, i) =>
    foresee(system, beliefs[i]!, question, atMs, date, days),
  );
}

/** Days ahead of the stage on which the next trip is made; null: none is in sight. */
function nextTrip(
  { date, earliest }: Stage,
  outlooks: readonly WaterOutlook[],
  { board, roster }: AwayQuestion,
): number | null {
  const { systems, risk } = board.greenhouse;
  const visits = outlooks[0]?.lowByVisit ?? [];
  const canGo = visits.map(
    (_, ahead) => ahead >= earliest && roster.coversOn(plusDays(date, ahead)).length > 0,
  );
  const plans = planTopUps({
    systems: systems.map(({ method, brimL, lowL }, i) => ({
      method,
      brimL,
      lowL,
      outlook: outlooks[i]!,
    })),
    canGo,
    risk,
  });
  const days = plans.flatMap(({ dueInDays }) =>
    dueInDays === null ? [] : [Math.max(earliest, dueInDays)],
  );
  return days.length === 0 ? null : Math.min(...days);
}

/** Systems that are too likely low by `stop` days ahead, and from which day. */
function lowBefore(
  stop: number,
  { date, earliest }: Stage,
  outlooks: readonly WaterOutlook[],
  { board }: AwayQuestion,
): readonly (readonly [SystemId, LocalDate])[] {
  const { systems, risk } = board.greenhouse;
  return systems.flatMap(({ id }, i) => {
    const low = outlooks[i]!.lowByVisit.findIndex(
      (chance, day) => day <= stop && chance > UNSAFE_CHANCE[risk],
    );
    return low < 0 ? [] : [[id, plusDays(date, Math.max(low, earliest))] as const];
  });
}

/** The trip made so many days ahead, and how everything stands after it. */
function afterTrip(
  stage: Stage,
  ahead: number,
  question: AwayQuestion,
): { readonly trip: PlannedTrip; readonly after: Stage } {
  const { board, roster } = question;
  const { systems, morning, timeZone } = board.greenhouse;
  const date = plusDays(stage.date, ahead);
  const atMs = ahead === 0 ? stage.atMs : instantOf(date, morning, timeZone) + visitAfterRoundMs;
  const there = outlooksOf({ ...stage, date, atMs }, question, 1);
  const rooms = systems.map((system, i) => {
    const litres = there[i]!.fillToL - there[i]!.litres;
    return litres > worthACan(system) ? litres : null;
  });
  const beliefs = systems.map((system, i) =>
    rooms[i] === null
      ? stage.beliefs[i]!
      : filled(system, stage.beliefs[i]!, question, atMs, there[i]!.fillToL),
  );
  const topUps = systems.flatMap(({ id }, i) => {
    const litres = rooms[i] ?? null;
    return litres === null ? [] : [{ system: id, litres: Math.round(litres) }];
  });
  return {
    trip: { date, by: roster.coversOn(date)[0] ?? null, topUps, lines: [] },
    after: { date, atMs, beliefs, earliest: 1 },
  };
}

/** The rest rides on the first trip on or after its day, or else on the last. */
export function withOtherWork(
  trips: readonly PlannedTrip[],
  lines: readonly DutyLine[],
): readonly PlannedTrip[] {
  if (trips.length === 0) return trips;
  const placeOf = ({ duty }: DutyLine): number => {
    const place = trips.findIndex(({ date }) => date >= duty.dueOn);
    return place < 0 ? trips.length - 1 : place;
  };
  return trips.map((trip, i) => ({
    ...trip,
    lines: lines.filter((line) => placeOf(line) === i),
  }));
}
