import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf } from '../greenhouse/local-time.ts';
import type { Logbook } from '../logbook/logbook.ts';
import type { WeatherBook } from '../logbook/weather-book.ts';
import { aerationDuties } from './aeration-duties.ts';
import { afterOutageDuties } from './after-outage-duties.ts';
import { calibrationDuties } from './calibration-duties.ts';
import { changeDuties } from './change-duties.ts';
import { checkDuties } from './check-duties.ts';
import { choreDuties } from './chore-duties.ts';
import { cleanDuties } from './clean-duties.ts';
import { doseDuties } from './dose-duties.ts';
import type { DutyLine } from './duty-line.ts';
import { whileAway } from './family/while-away.ts';
import { topUpDuties } from './top-up-duties.ts';
import { tripOfTheDay } from './trip-of-the-day.ts';
import type { WaterOutlooks } from './water-outlooks.ts';

export interface BoardQuestion {
  readonly greenhouse: Greenhouse;
  readonly createdAtMs: number;
  readonly logbook: Logbook;
  readonly outlooks: WaterOutlooks;
  readonly nowMs: number;
  /** What is known of the weather; without it no hot spell is foreseen. */
  readonly weather?: WeatherBook;
  /** By days ahead, 0 being today: can anybody go? Left out: always. */
  readonly canGo?: readonly boolean[];
  /** Those who know how are away until the day before; left out: somebody is there. */
  readonly backOn?: LocalDate;
}

/** All duties in sight: those of today's trip, and those still to come, soonest first. */
export interface DutyBoard {
  readonly today: readonly DutyLine[];
  readonly later: readonly DutyLine[];
}

/** What needs doing as things stand, with reasons. Work that is not yet due rides along on a trip. */
export function dutyBoard(question: BoardQuestion): DutyBoard {
  const { greenhouse, nowMs } = question;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const lines = withoutRepeats([
    ...afterOutageDuties(question, today),
    ...doseDuties(question, today),
    ...aerationDuties(question, today),
    ...topUpDuties(question, today),
    ...checkDuties(question, today),
    ...changeDuties(question, today),
    ...calibrationDuties(question, today),
    ...cleanDuties(question, today),
    ...choreDuties(question, today),
  ]);
  const { backOn } = question;
  if (backOn === undefined) return tripOfTheDay(lines, today);
  return tripOfTheDay(whileAway(lines, backOn), today, backOn);
}

/** The same work asked for on two grounds is asked for once: on the first, which is the more urgent. */
function withoutRepeats(lines: readonly DutyLine[]): readonly DutyLine[] {
  const byWork = new Map<string, DutyLine>();
  for (const line of lines) {
    const { kind, system, product, probe, chore } = line.duty;
    const work = JSON.stringify([kind, system, product, probe, chore]);
    if (!byWork.has(work)) byWork.set(work, line);
  }
  return [...byWork.values()];
}
