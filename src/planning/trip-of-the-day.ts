import type { LocalDate } from '../greenhouse/local-time.ts';
import type { DutyLine } from './duty-line.ts';

/**
 * Bundles work into trips. What is due and cannot wait makes a trip today; on a trip, all that is due
 * is done, and what comes due before the next trip rides along where that is not too early. Without
 * one, what may still wait is put off to the trip in sight, or to the last day that it may wait.
 */
export function tripOfTheDay(
  lines: readonly DutyLine[],
  today: LocalDate,
): { readonly today: readonly DutyLine[]; readonly later: readonly DutyLine[] } {
  const nextTripOn = nextTrip(lines, today);
  const mustGo = lines.some((line) => isDueOn(line, today) && !mayWait(line, today));
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

function mayWait({ waitsUntil }: DutyLine, today: LocalDate): boolean {
  return waitsUntil !== undefined && today < waitsUntil;
}

/** To the next trip for water, or to the last day it may wait for one. */
function putOff(line: DutyLine, nextTripOn: LocalDate | null): DutyLine {
  const { duty, waitsUntil } = line;
  const isInTime = nextTripOn !== null && (waitsUntil === undefined || nextTripOn < waitsUntil);
  const dueOn = isInTime ? nextTripOn : (waitsUntil ?? duty.dueOn);
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
