import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { WaterFold } from '../../logbook/water-fold.ts';
import type { BoardQuestion, DutyBoard } from '../duty-board.ts';
import type { Roster } from '../roster.ts';

/** An absence, and how everything stands. */
export interface AwayQuestion {
  readonly board: BoardQuestion;
  readonly water: WaterFold;
  readonly duties: DutyBoard;
  readonly roster: Roster;
  readonly from: LocalDate;
  readonly until: LocalDate;
}
