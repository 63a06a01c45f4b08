import { type LocalDate, plusDays } from '../greenhouse/local-time.ts';
import type { DutyLine } from './duty-line.ts';

/** So many days longer a look or a chore waits where somebody goes anyway by then. Common practice. */
const NEAR_TRIP_DAYS = 2;

/**
 * Bundles work into trips. What is due and cannot wait makes a trip today; on a trip, all that is due
 * is done, and what comes due before the next trip rides along where that is not too early. Without
 * one, what may still wait is put off to the trip in sight, or to the last day that it may wait.
 */
export function tripOfTheDay(
  lines: readonly DutyLine[],
  today: LocalDate,
  /** The day on which somebody comes back who goes anyway; null: nobody was away. */
  backOn: LocalDate | null = null,
): { readonly today: readonly DutyLine[]; readonly later: readonly DutyLine[] } {
  const waterOn = nextTrip(lines, today);
  const nextTripOn =
    waterOn !== null && backOn !== null && backOn < waterOn ? backOn : (waterOn ?? backOn);
  const mustGo = lines.some((line) => isDueOn(line, today) && !mayWait(line, today, nextTripOn));
  const settled = lines.map((line) => {
    if (mustGo) return ridingAlong(line, today);
    return isDueOn(line, today) ? putOff(line, nextTripOn) : line;
  });
  const isToday = (line: DutyLine): boolean => isDueOn(line, today) || isAlongside(line);
  return {
    today: settled.filter(isToday),
    later: settled
      .filter((line) => !isToday(line))
      .toSorted((one, other) => (one.duty.dueOn < other.duty.dueOn ? -1 : 1)),
  };
}

/** The next day after today on which water alone asks for a trip; null: none is in sight. */
function nextTrip(lines: readonly DutyLine[], today: LocalDate): LocalDate | null {
  const days = lines
    .filter(({ duty }) => duty.kind === 'top-up' && duty.dueOn > today)
    .map(({ duty }) => duty.dueOn);
  return days.reduce<LocalDate | null>(
    (soonest, day) => (soonest === null || day < soonest ? day : soonest),
    null,
  );
}

function mayWait(line: DutyLine, today: LocalDate, nextTripOn: LocalDate | null): boolean {
  if (line.waitsUntil === undefined) return false;
  return today < line.waitsUntil || isInTime(line, nextTripOn);
}

/** Whether the next trip comes while the line may wait, or soon after. */
function isInTime({ duty, waitsUntil }: DutyLine, nextTripOn: LocalDate | null): boolean {
  if (nextTripOn === null || waitsUntil === undefined) return nextTripOn !== null;
  // What is out of range is not left so for a trip that is only foreseen.
  return nextTripOn <= (duty.kind === 'dose' ? waitsUntil : plusDays(waitsUntil, NEAR_TRIP_DAYS));
}

/** To the next trip for water, or to the last day it may wait for one. */
function putOff(line: DutyLine, nextTripOn: LocalDate | null): DutyLine {
  const { duty, waitsUntil } = line;
  const dueOn = isInTime(line, nextTripOn) ? nextTripOn! : (waitsUntil ?? duty.dueOn);
  return { ...line, duty: { ...duty, dueOn } };
}

function isDueOn(line: DutyLine, today: LocalDate): boolean {
  return line.duty.dueOn <= today && !isAlongside(line);
}

function isAlongside(line: DutyLine): boolean {
  return line.duty.alongside === true;
}

/** On a day when someone goes anyway, what is due within its slack is done on the same trip. */
function ridingAlong(line: DutyLine, today: LocalDate): DutyLine {
  const isNear = line.ridesFrom !== null && line.ridesFrom <= today && line.duty.dueOn > today;
  return isNear ? { ...line, duty: { ...line.duty, alongside: true } } : line;
}
