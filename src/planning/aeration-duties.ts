import { type LocalDate, plusDays } from '../greenhouse/local-time.ts';
import type { Aeration, System } from '../greenhouse/system.ts';
import { latestEntry } from '../logbook/logbook.ts';
import { aerationNeedMinPerHour } from './aeration-need.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { lastSaidDoneMs } from './last-done.ts';

/** A setting is changed only where it is this far off: up soon, down without haste. */
const UP_SHARE = 1.5;
const DOWN_SHARE = 0.5;
const LEAST_STEP_MIN = 5;
/** Water in a greenhouse on a hot day: this much above the day's mean outside. An estimate. */
const WATER_ABOVE_MEAN_C = 4;
const FORECAST_DAYS = 2;
/** A reading of the water holds for so long. */
const READING_HOLDS_MS = 3 * 86_400_000;
const DOWN_DAYS = 7;

/** Where the air should run longer, or may run shorter: heat, a low reservoir, more plants. */
export function aerationDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.systems.flatMap((system) => {
    const { aeration } = system;
    return aeration ? aerationOf(system, aeration, question, today) : [];
  });
}

function aerationOf(
  system: System,
  aeration: Aeration,
  question: BoardQuestion,
  today: LocalDate,
): readonly DutyLine[] {
  const { logbook } = question;
  const set = latestEntry(logbook, system.id, 'aeration');
  const present = set?.value ?? aeration.minutesPerHour;
  const warmth = expectedWaterC(system, question, today);
  if (warmth === null) return [];
  const { litres } = question.outlooks.get(system.id)!;
  const wanted = aerationNeedMinPerHour(system, { litres, waterC: warmth.waterC });
  if (wanted === null || Math.abs(wanted - present) < LEAST_STEP_MIN) return [];
  const isUp = wanted >= UP_SHARE * present;
  const isDown = wanted <= DOWN_SHARE * present && !warmth.isForecast;
  const saidMs = lastSaidDoneMs(logbook, system.id, 'aeration');
  const wasJustDone = saidMs !== null && question.nowMs - saidMs < READING_HOLDS_MS;
  if ((!isUp && !isDown) || wasJustDone) return [];
  return [
    {
      duty: {
        kind: 'aeration',
        system: system.id,
        dueOn: isUp ? warmth.on : plusDays(today, DOWN_DAYS),
        minutesPerHour: wanted,
      },
      ridesFrom: today,
      reason: {
        kind: 'aeration',
        presentMinPerHour: present,
        waterC: warmth.waterC,
        isForecast: warmth.isForecast,
      },
    },
  ];
}

interface ExpectedWarmth {
  readonly waterC: number;
  readonly on: LocalDate;
  readonly isForecast: boolean;
}

/** The water as measured of late, or as warm as the next days will make it; null: neither is known. */
function expectedWaterC(
  system: System,
  { logbook, weather, nowMs }: BoardQuestion,
  today: LocalDate,
): ExpectedWarmth | null {
  const reading = latestEntry(logbook, system.id, 'water-temperature');
  const measured = reading && nowMs - reading.atMs < READING_HOLDS_MS ? reading.value : null;
  const foreseen = Array.from({ length: FORECAST_DAYS + 1 }, (_, days) => plusDays(today, days))
    .flatMap((on): ExpectedWarmth[] => {
      const day = weather?.get(on);
      if (!day) return [];
      const waterC = (day.tMinC + day.tMaxC) / 2 + WATER_ABOVE_MEAN_C;
      return [{ waterC, on, isForecast: true }];
    })
    .toSorted((one, other) => other.waterC - one.waterC);
  const [hottest] = foreseen;
  if (measured !== null && (!hottest || measured >= hottest.waterC)) {
    return { waterC: measured, on: today, isForecast: false };
  }
  return hottest ?? null;
}
