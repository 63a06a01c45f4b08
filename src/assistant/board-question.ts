import { localDateOf } from '../greenhouse/local-time.ts';
import type { BoardQuestion } from '../planning/duty-board.ts';
import { visitDays, waterOutlooks } from '../planning/water-outlooks.ts';
import { rosterOf } from './family/roster-of.ts';
import type { Standing } from './standing.ts';

/** What planning is asked with, for a greenhouse as it stands at `nowMs`. */
export function boardQuestion(standing: Standing, nowMs: number): BoardQuestion {
  const { greenhouse, createdAtMs, logbook, water, weather } = standing;
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const roster = rosterOf(standing);
  const canGo = roster.canGoAhead(today, visitDays + 1);
  const backOn = roster.growerBackOn(today);
  return {
    greenhouse,
    createdAtMs,
    logbook,
    outlooks,
    nowMs,
    weather,
    canGo,
    ...(backOn === null ? {} : { backOn }),
  };
}
