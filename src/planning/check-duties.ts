import { type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import type { System } from '../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../logbook/logbook.ts';
import {
  aloneAfterTimes,
  type CheckCadence,
  checkCadence,
  checkedQuantities,
  daysWithoutReading,
  rangeOf,
  worthALookChance,
} from './check-cadence.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { CheckRhythm, DutyLine } from './duty-line.ts';
import { isLevelInDoubt, isLevelKnown } from './level-known.ts';

/** On a trip that is made anyway, it is worth measuring again from this share of the interval on. */
const ridesFromShare = 0.5;

/**
 * A look at every system's pH and EC, as often as the drift makes it worth while, on a trip that is
 * made for water where one comes in time; and at its level where that was never told, or is in doubt.
 */
export function checkDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.systems.map((system) => checkOf(system, question, today));
}

interface Measured {
  readonly lastOn: LocalDate | null;
  readonly dueOn: LocalDate;
  readonly ridesFrom: LocalDate;
  readonly aloneOn: LocalDate;
  readonly cadence: CheckCadence | null;
}

function checkOf(system: System, question: BoardQuestion, today: LocalDate): DutyLine {
  const { logbook, greenhouse, createdAtMs } = question;
  const firstOn = localDateOf(createdAtMs, greenhouse.timeZone);
  const measured = checkedQuantities.map((quantity): Measured => {
    const latest = latestEntry(logbook, system.id, quantity);
    if (!latest) {
      return { lastOn: null, dueOn: firstOn, ridesFrom: firstOn, aloneOn: firstOn, cadence: null };
    }
    const lastOn = localDateOf(latest.atMs, greenhouse.timeZone);
    const cadence = checkCadence(system, quantity, logbook);
    return {
      lastOn,
      dueOn: plusDays(lastOn, cadence.everyDays),
      ridesFrom: plusDays(lastOn, Math.ceil(cadence.everyDays * ridesFromShare)),
      aloneOn: plusDays(lastOn, cadence.aloneAfterDays),
      cadence,
    };
  });
  const soonest = measured.reduce((one, other) => (other.dueOn < one.dueOn ? other : one));
  const earliest = (which: 'ridesFrom' | 'aloneOn'): LocalDate =>
    measured.map((each) => each[which]).reduce((one, other) => (other < one ? other : one));
  const saidOn = saidDoneOn(system, question);
  const standsUntil = saidOn === null ? null : plusDays(saidOn, daysWithoutReading(system));
  const dueOn = later(soonest.dueOn, standsUntil);
  const lastOn = later(oldest(measured), saidOn);
  /** Where it was done without a figure, nothing is known to be wrong: it may wait twice as long for a trip. */
  const aloneOn =
    saidOn === null
      ? earliest('aloneOn')
      : later(earliest('aloneOn'), plusDays(saidOn, aloneAfterTimes * daysWithoutReading(system)));
  const isLevelWanted =
    !isLevelKnown(logbook, system.id) || isLevelInDoubt(system, question.outlooks.get(system.id)!);
  return {
    duty: { kind: 'check', system: system.id, dueOn: dueOn < today ? today : dueOn },
    ridesFrom:
      saidOn === null ? earliest('ridesFrom') : later(earliest('ridesFrom'), plusDays(saidOn, 1)),
    ...(lastOn === null ? {} : { waitsUntil: later(aloneOn, dueOn) }),
    reason: {
      kind: 'not-measured',
      quantities: isLevelWanted ? [...checkedQuantities, 'level'] : checkedQuantities,
      lastOn,
      drift: driftTold(soonest.cadence, system),
      rhythm: soonest.cadence && rhythmOf(soonest.cadence, system),
    },
  };
}

/** The drift where it is what wants the check; a steady system is measured for the sake of it. */
function driftTold(
  cadence: CheckCadence | null,
  system: System,
): Extract<DutyLine['reason'], { kind: 'not-measured' }>['drift'] {
  if (!cadence?.drift || cadence.drift.chanceOut <= worthALookChance) return null;
  const [lowest, highest] = rangeOf(system, cadence.quantity);
  return { ...cadence.drift, quantity: cadence.quantity, lowest, highest };
}

function rhythmOf({ quantity, everyDays, drift }: CheckCadence, system: System): CheckRhythm {
  const [lowest, highest] = rangeOf(system, quantity);
  return { quantity, everyDays, lowest, highest, foreseen: drift, worthALookChance };
}

/** The last time that a check was reported as done without a figure. */
function saidDoneOn(system: System, { logbook, greenhouse }: BoardQuestion): LocalDate | null {
  const said = liveEntries(logbook, system.id, 'duty-done').findLast(
    ({ duty }) => duty === 'check',
  );
  return said ? localDateOf(said.atMs, greenhouse.timeZone) : null;
}

function oldest(measured: readonly Measured[]): LocalDate | null {
  return measured
    .map(({ lastOn }) => lastOn)
    .reduce((one, other) => (one === null || other === null ? null : one < other ? one : other));
}

function later<T extends LocalDate | null>(one: T, other: LocalDate | null): T | LocalDate {
  if (one === null) return other ?? one;
  return other !== null && other > one ? other : one;
}
