import type { DutyKind } from '../../greenhouse/duty.ts';
import { daysBetween, type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import type { DutyLine } from '../duty-line.ts';

/** Work for somebody who knows how: it waits for the grower, where it can wait at all. */
const forTheGrower: readonly DutyKind[] = ['reservoir-change', 'calibration', 'clean'];

/** So many days past its day such work may wait. Common practice. */
const WAITS_FOR_GROWER_DAYS = 14;
/** So many days past its slack a look or a chore waits for a trip that water asks for. Common practice. */
const WAITS_FOR_TRIP_DAYS = 3;

/**
 * Duties as they are while those who know how are away until the day before `backOn`: whoever steps
 * in goes for water, and does the rest on the way.
 */
export function whileAway(lines: readonly DutyLine[], backOn: LocalDate): readonly DutyLine[] {
  return lines.map((line): DutyLine => {
    const { duty, waitsUntil } = line;
    if (isForGrower(line) && daysBetween(duty.dueOn, backOn) <= WAITS_FOR_GROWER_DAYS) {
      return { ...line, duty: { ...duty, dueOn: later(duty.dueOn, backOn) }, ridesFrom: null };
    }
    if (waitsUntil === undefined) return line;
    const longest = plusDays(waitsUntil, WAITS_FOR_TRIP_DAYS);
    const dueOn = later(duty.dueOn, longest);
    return {
      ...line,
      duty: { ...duty, dueOn },
      ridesFrom: line.ridesFrom ?? duty.dueOn,
      waitsUntil: longest,
    };
  });
}

/** A blocked filter waits for nobody. */
function isForGrower({ duty: { kind }, waitsUntil }: DutyLine): boolean {
  return forTheGrower.includes(kind) && (kind !== 'clean' || waitsUntil !== undefined);
}

function later(one: LocalDate, other: LocalDate): LocalDate {
  return one < other ? other : one;
}
