import { localDateOf } from '../greenhouse/local-time.ts';
import type { BoardQuestion } from '../planning/duty-board.ts';
import { Roster } from '../planning/roster.ts';
import { visitDays, waterOutlooks } from '../planning/water-outlooks.ts';
import type { Standing } from './standing.ts';

/** What planning is asked with, for a greenhouse as it stands at `nowMs`. */
export function boardQuestion(standing: Standing, nowMs: number): BoardQuestion {
  const { greenhouse, createdAtMs, logbook, water, weather, arrangements } = standing;
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const roster = new Roster(greenhouse, arrangements);
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
