import { type DutyBoard, dutyBoard } from '../planning/duty-board.ts';
import { boardQuestion } from './board-question.ts';
import type { Standing } from './standing.ts';

/** The duties of a greenhouse as it stands at `nowMs`. */
export function boardOf(standing: Standing, nowMs: number): DutyBoard {
  return dutyBoard(boardQuestion(standing, nowMs));
}
