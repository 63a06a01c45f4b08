import { type DutyBoard, dutyBoard } from '../planning/duty-board.ts';
import { waterOutlooks } from '../planning/water-outlooks.ts';
import type { Standing } from './standing.ts';

/** The duties of a greenhouse as it stands at `nowMs`. */
export function boardOf(standing: Standing, nowMs: number): DutyBoard {
  const { greenhouse, createdAtMs, logbook, water, weather } = standing;
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  return dutyBoard({ greenhouse, createdAtMs, logbook, outlooks, nowMs, weather });
}
