import { localDateOf } from '../../greenhouse/local-time.ts';
import { dutyBoard } from '../../planning/duty-board.ts';
import { type AwayPlan, awayPlan } from '../../planning/family/away-plan.ts';
import type { Roster } from '../../planning/roster.ts';
import type { Days } from '../../understanding/arranging/arranging.ts';
import { boardQuestion } from '../board-question.ts';
import type { Standing } from '../standing.ts';

/** The plan of an absence as the greenhouse stands. */
export function planOf(
  standing: Standing,
  roster: Roster,
  { from, until }: Days,
  nowMs: number,
): AwayPlan {
  const asked = boardQuestion(standing, nowMs);
  const { backOn: _, ...stillThere } = asked;
  const isUnderWay = from < localDateOf(nowMs, standing.greenhouse.timeZone);
  // On the day of departure, what waits for the grower need not wait for the return.
  const board = isUnderWay ? asked : stillThere;
  return awayPlan({
    board,
    water: standing.water,
    duties: dutyBoard(board),
    roster,
    from,
    until,
  });
}
