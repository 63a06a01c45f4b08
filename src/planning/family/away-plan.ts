import {
  daysBetween,
  instantOf,
  type LocalDate,
  localDateOf,
} from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { DutyLine } from '../duty-line.ts';
import type { AwayQuestion } from './away-question.ts';
import { type AwaySupplies, awaySupplies } from './away-supplies.ts';
import { type AwayRoute, tripsOf, withOtherWork } from './away-trips.ts';
import { type Filling, fillingOf, worthACan } from './away-water.ts';

/** What has to be done, by whom and when, so that the greenhouse gets through an absence. */
export interface AwayPlan extends AwayRoute {
  readonly from: LocalDate;
  readonly until: LocalDate;
  readonly systems: readonly Endurance[];
  readonly before: BeforeLeaving;
  readonly supplies: AwaySupplies;
}

/** Until when a system is safe (early bound: 1 in 20 runs low sooner); null: beyond the horizon. */
export interface Endurance {
  readonly system: SystemId;
  readonly asItIs: LocalDate | null;
  readonly ifFilled: LocalDate | null;
}

/** All empty once the absence is under way. */
export interface BeforeLeaving {
  readonly fill: readonly { readonly system: SystemId; readonly litres: number }[];
  /** Changes, calibrations, cleaning that would fall due meanwhile. */
  readonly lines: readonly DutyLine[];
  /** Systems whose air or flood timers are worth a look. */
  readonly timers: readonly SystemId[];
}

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
  const before = isUnderWay ? nothing : beforeLeaving(question, fillings, lines, first);
  const trips = withOtherWork(
    route.trips,
    lines.filter((line) => !before.lines.includes(line)),
  );
  return {
    from,
    until,
    systems: fillings.map(({ system, asItIs, ifFilled }) => ({
      system: system.id,
      asItIs,
      ifFilled,
    })),
    before,
    supplies: awaySupplies(question, { topUps: before.fill, lines: before.lines }, trips),
    trips,
    unsafe: route.unsafe,
  };
}

const nothing: BeforeLeaving = { fill: [], lines: [], timers: [] };

function beforeLeaving(
  { board }: AwayQuestion,
  fillings: readonly Filling[],
  others: readonly DutyLine[],
  first: LocalDate,
): BeforeLeaving {
  const lines = others.filter((line) => isForBefore(line, first));
  return {
    fill: fillings
      .filter(({ litres, system }) => litres > worthACan(system) && !isChanged(lines, system.id))
      .map(({ system, litres }) => ({ system: system.id, litres: Math.round(litres) })),
    lines,
    timers: board.greenhouse.systems
      .filter(({ aeration, floods }) => aeration !== null || floods !== null)
      .filter(({ id }) => !lines.some(({ duty }) => isAirOf(duty, id)))
      .map(({ id }) => id),
  };
}

/** Work besides water that falls due before the end. */
function othersDue({ duties, until }: AwayQuestion): readonly DutyLine[] {
  return [...duties.today, ...duties.later].filter(
    ({ duty }) => duty.kind !== 'top-up' && duty.dueOn <= until,
  );
}

const bestDoneBefore = ['reservoir-change', 'calibration', 'clean', 'dose', 'aeration'];

/** It is filled anew anyway. */
function isChanged(lines: readonly DutyLine[], system: SystemId): boolean {
  return lines.some(({ duty }) => duty.kind === 'reservoir-change' && duty.system === system);
}

/** Its timer is set anew anyway. */
function isAirOf(duty: DutyLine['duty'], system: SystemId): boolean {
  return duty.kind === 'aeration' && duty.system === system;
}

/** What is due by then, and what helpers had better not have to do. */
function isForBefore({ duty }: DutyLine, first: LocalDate): boolean {
  return duty.dueOn <= first || bestDoneBefore.includes(duty.kind);
}
