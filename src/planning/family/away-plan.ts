import type { WaterBelief } from '../../estimation/water-belief.ts';
import { observe } from '../../estimation/water-observe.ts';
import { outlook, type WaterOutlook } from '../../estimation/water-outlook.ts';
import type { RiskSetting } from '../../greenhouse/greenhouse.ts';
import {
  daysBetween,
  instantOf,
  type LocalDate,
  localDateOf,
  plusDays,
} from '../../greenhouse/local-time.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import { beliefOf, type WaterFold, waterSystemOf } from '../../logbook/water-fold.ts';
import type { BoardQuestion, DutyBoard } from '../duty-board.ts';
import type { DutyLine } from '../duty-line.ts';
import { raiseAtMostL } from '../fill-ceiling.ts';
import type { Roster } from '../roster.ts';
import { stockLeftMl } from '../stock-left.ts';
import { planTopUps } from '../trip-plan.ts';
import { visitAfterRoundMs } from '../water-outlooks.ts';

/** What has to be done, by whom and when, so that the greenhouse gets through an absence. */
export interface AwayPlan {
  readonly from: LocalDate;
  readonly until: LocalDate;
  readonly systems: readonly Endurance[];
  readonly before: BeforeLeaving;
  readonly trips: readonly PlannedTrip[];
  /** What is not safe as planned, and from which day. */
  readonly unsafe: readonly { readonly system: SystemId; readonly from: LocalDate }[];
}

/** Until when a system is safe (early bound: 1 in 20 runs low sooner); null: beyond the horizon. */
export interface Endurance {
  readonly system: SystemId;
  readonly asItIs: LocalDate | null;
  readonly ifFilled: LocalDate | null;
}

export interface BeforeLeaving {
  readonly fill: readonly { readonly system: SystemId; readonly litres: number }[];
  /** Changes, calibrations, cleaning that would fall due meanwhile. */
  readonly lines: readonly DutyLine[];
  /** Systems whose air or flood timers are worth a look. */
  readonly timers: readonly SystemId[];
  readonly buy: readonly { readonly product: string; readonly mL: number }[];
}

export interface PlannedTrip {
  readonly date: LocalDate;
  /** null: nobody can go. */
  readonly by: string | null;
  readonly topUps: readonly { readonly system: SystemId; readonly litres: number }[];
  readonly lines: readonly DutyLine[];
}

export interface AwayQuestion {
  readonly board: BoardQuestion;
  readonly water: WaterFold;
  readonly duties: DutyBoard;
  readonly roster: Roster;
  readonly from: LocalDate;
  readonly until: LocalDate;
}

/** Less room than this share of the usable litres is not worth carrying a can for. */
const WORTH_A_CAN_SHARE = 0.08;
/** A system this likely to run low before the next visit is not safe; whoever risks more is told later. */
const UNSAFE_CHANCE: Readonly<Record<RiskSetting, number>> = {
  careful: 0.05,
  normal: 0.1,
  relaxed: 0.25,
};

/** The plan as things stand: every system full at departure, then trips as late as is safe. */
export function awayPlan(question: AwayQuestion): AwayPlan {
  const { board, from, until } = question;
  const { greenhouse, nowMs } = board;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const first = from < today ? today : from;
  const leaveMs = Math.max(nowMs, instantOf(first, greenhouse.morning, greenhouse.timeZone));
  const reach = daysBetween(first, until) + 2;
  const fillings = greenhouse.systems.map((system) =>
    fillingOf(system, question, leaveMs, first, reach),
  );
  const isUnderWay = from < today;
  const route = tripsOf(question, first, leaveMs, reach, isUnderWay ? null : fillings);
  const lines = othersDue(question);
  const before = isUnderWay ? [] : lines.filter((line) => isForBefore(line, first));
  return {
    from,
    until,
    systems: fillings.map(({ system, asItIs, ifFilled }) => ({
      system: system.id,
      asItIs,
      ifFilled,
    })),
    before: {
      fill: isUnderWay
        ? []
        : fillings
            .filter(({ litres, system }) => litres > worthACan(system))
            .map(({ system, litres }) => ({ system: system.id, litres: Math.round(litres) })),
      lines: before,
      timers: isUnderWay
        ? []
        : greenhouse.systems
            .filter(({ aeration, floods }) => aeration !== null || floods !== null)
            .filter(({ id }) => !before.some(({ duty }) => isAirOf(duty, id)))
            .map(({ id }) => id),
      buy: isUnderWay ? [] : toBuy(board, before),
    },
    trips: withOtherWork(
      route.trips,
      lines.filter((line) => !before.includes(line)),
    ),
    unsafe: route.unsafe,
  };
}

interface Filling {
  readonly system: System;
  readonly belief: WaterBelief;
  readonly litres: number;
  readonly asItIs: LocalDate | null;
  readonly ifFilled: LocalDate | null;
}

function fillingOf(
  system: System,
  question: AwayQuestion,
  leaveMs: number,
  first: LocalDate,
  reach: number,
): Filling {
  const { board, water } = question;
  const { timeZone } = board.greenhouse;
  const now = foresee(system, beliefOf(water, system.id), question, leaveMs, first, reach);
  const belief = filled(system, beliefOf(water, system.id), question, leaveMs, now.fillToL);
  const full = foresee(system, belief, question, leaveMs, first, reach);
  const dateOf = (atMs: number | null) => (atMs === null ? null : localDateOf(atMs, timeZone));
  return {
    system,
    belief,
    litres: Math.max(0, now.fillToL - now.litres),
    asItIs: dateOf(board.outlooks.get(system.id)?.lowAtMs.p5 ?? null),
    ifFilled: dateOf(full.lowAtMs.p5),
  };
}

function foresee(
  system: System,
  belief: WaterBelief,
  { board, water }: AwayQuestion,
  atMs: number,
  date: LocalDate,
  days: number,
): WaterOutlook {
  const { morning, timeZone } = board.greenhouse;
  return outlook(waterSystemOf(system), belief, {
    atMs,
    drivers: water.drivers,
    visitsAtMs: Array.from({ length: days + 1 }, (_, ahead) =>
      ahead === 0 ? atMs : instantOf(plusDays(date, ahead), morning, timeZone) + visitAfterRoundMs,
    ),
    raiseAtMostL: raiseAtMostL(system),
  });
}

function filled(
  system: System,
  belief: WaterBelief,
  { water }: AwayQuestion,
  atMs: number,
  litres: number,
): WaterBelief {
  const seen = { kind: 'level', atMs, litres, approximate: false } as const;
  return observe(waterSystemOf(system), belief, seen, water.drivers);
}

/** One trip after the other; each goes as late as the daily plan would, and fills what has room. */
function tripsOf(
  question: AwayQuestion,
  first: LocalDate,
  leaveMs: number,
  reach: number,
  fillings: readonly Filling[] | null,
): Pick<AwayPlan, 'trips' | 'unsafe'> {
  const { board, water, roster, until } = question;
  const { systems, morning, timeZone } = board.greenhouse;
  let beliefs = systems.map((system, i) => fillings?.[i]?.belief ?? beliefOf(water, system.id));
  let date = first;
  let atMs = leaveMs;
  let earliest = fillings ? 1 : 0;
  const trips: PlannedTrip[] = [];
  const unsafe = new Map<SystemId, LocalDate>();
  const lastDays = reach + 8;
  for (;;) {
    const outlooks = systems.map((system, i) =>
      foresee(system, beliefs[i]!, question, atMs, date, lastDays),
    );
    const canGo = Array.from(
      { length: lastDays + 1 },
      (_, ahead) =>
        (ahead >= earliest || ahead > 0) && roster.coversOn(plusDays(date, ahead)).length > 0,
    );
    const ahead = nextTrip(systems, outlooks, canGo, earliest, board.greenhouse.risk);
    const stop =
      ahead === null ? daysBetween(date, until) : Math.min(ahead, daysBetween(date, until));
    for (const [i, system] of systems.entries()) {
      const low = outlooks[i]!.lowByVisit.findIndex(
        (chance, day) => day <= stop && chance > UNSAFE_CHANCE[board.greenhouse.risk],
      );
      if (low >= 0 && !unsafe.has(system.id))
        unsafe.set(system.id, plusDays(date, Math.max(low, earliest)));
    }
    if (ahead === null || plusDays(date, ahead) > until) break;
    const on = plusDays(date, ahead);
    const visitMs = ahead === 0 ? atMs : instantOf(on, morning, timeZone) + visitAfterRoundMs;
    const there = systems.map((system, i) =>
      foresee(system, beliefs[i]!, question, visitMs, on, 1),
    );
    const topUps = systems.flatMap((system, i) => {
      const litres = there[i]!.fillToL - there[i]!.litres;
      return litres > worthACan(system) ? [{ system: system.id, litres: Math.round(litres) }] : [];
    });
    trips.push({ date: on, by: roster.coversOn(on)[0] ?? null, topUps, lines: [] });
    beliefs = systems.map((system, i) =>
      topUps.some((each) => each.system === system.id)
        ? filled(system, beliefs[i]!, question, visitMs, there[i]!.fillToL)
        : beliefs[i]!,
    );
    date = on;
    atMs = visitMs;
    earliest = 1;
  }
  return { trips, unsafe: [...unsafe].map(([system, from]) => ({ system, from })) };
}

function nextTrip(
  systems: readonly System[],
  outlooks: readonly WaterOutlook[],
  canGo: readonly boolean[],
  earliest: number,
  risk: RiskSetting,
): number | null {
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

function worthACan({ brimL, lowL }: System): number {
  return WORTH_A_CAN_SHARE * (brimL - lowL);
}

/** Work besides water that falls due before the end. */
function othersDue({ duties, until }: AwayQuestion): readonly DutyLine[] {
  return [...duties.today, ...duties.later].filter(
    ({ duty }) => duty.kind !== 'top-up' && duty.dueOn <= until,
  );
}

const bestDoneBefore = ['reservoir-change', 'calibration', 'clean', 'dose', 'aeration'];

/** Its timer is set anew anyway. */
function isAirOf(duty: DutyLine['duty'], system: SystemId): boolean {
  return duty.kind === 'aeration' && duty.system === system;
}

/** What is due by then, and what helpers had better not have to do. */
function isForBefore({ duty }: DutyLine, first: LocalDate): boolean {
  return duty.dueOn <= first || bestDoneBefore.includes(duty.kind);
}

/** The rest rides on the first trip on or after its day, or else on the last. */
function withOtherWork(
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

/** What the stock lacks for the work before leaving and for as many days again as were logged of late. */
function toBuy(
  { greenhouse, logbook }: BoardQuestion,
  before: readonly DutyLine[],
): BeforeLeaving['buy'] {
  return greenhouse.stock.flatMap((item) => {
    const needed = before
      .flatMap(({ duty }) => duty.concentrates ?? [])
      .filter(({ product }) => product === item.product)
      .reduce((sum, { mL }) => sum + mL, 0);
    const left = stockLeftMl(item, greenhouse, logbook);
    return needed > left ? [{ product: item.product, mL: Math.ceil(needed - left) }] : [];
  });
}
