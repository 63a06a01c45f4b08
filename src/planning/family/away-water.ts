import type { WaterBelief } from '../../estimation/water-belief.ts';
import { observe } from '../../estimation/water-observe.ts';
import { outlook, type WaterOutlook } from '../../estimation/water-outlook.ts';
import { instantOf, type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { System } from '../../greenhouse/system.ts';
import { waterSystemOf } from '../../logbook/water-fold.ts';
import { raiseAtMostL } from '../fill-ceiling.ts';
import { beliefInHouse, visitAfterRoundMs } from '../water-outlooks.ts';
import type { AwayQuestion } from './away-question.ts';

/** Less room than this share of the usable litres is not worth carrying a can for. */
const WORTH_A_CAN_SHARE = 0.08;

/** A system at departure: what fills it, and how long it lasts. */
export interface Filling {
  readonly system: System;
  readonly belief: WaterBelief;
  readonly litres: number;
  readonly asItIs: LocalDate | null;
  readonly ifFilled: LocalDate | null;
}

export function fillingOf(
  system: System,
  question: AwayQuestion,
  leaveMs: number,
  first: LocalDate,
  reach: number,
): Filling {
  const { board, water } = question;
  const { timeZone } = board.greenhouse;
  const before = beliefInHouse(board.greenhouse, water, system.id);
  const now = foresee(system, before, question, leaveMs, first, reach);
  const belief = filled(system, before, question, leaveMs, now.fillToL);
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

/** What the water does from an instant on, with a look on each of the days after it. */
export function foresee(
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

/** The belief once it has been filled to so many litres. */
export function filled(
  system: System,
  belief: WaterBelief,
  { water }: AwayQuestion,
  atMs: number,
  litres: number,
): WaterBelief {
  const seen = { kind: 'level', atMs, litres, approximate: false } as const;
  return observe(waterSystemOf(system), belief, seen, water.drivers);
}

/** Litres of room from which a can is worth carrying. */
export function worthACan({ brimL, lowL }: System): number {
  return WORTH_A_CAN_SHARE * (brimL - lowL);
}
