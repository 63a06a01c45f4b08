import type { BoardQuestion } from '../planning/duty-board.ts';
import { waterOutlooks } from '../planning/water-outlooks.ts';
import type { Standing } from './standing.ts';

/** What planning is asked with, for a greenhouse as it stands at `nowMs`. */
export function boardQuestion(standing: Standing, nowMs: number): BoardQuestion {
  const { greenhouse, createdAtMs, logbook, water, weather } = standing;
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  return { greenhouse, createdAtMs, logbook, outlooks, nowMs, weather };
}
