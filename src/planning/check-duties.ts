import { type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { System } from '../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../logbook/logbook.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { isLevelKnown } from './level-known.ts';

/** Readings that a check takes. */
const checked = ['ph', 'ec'] as const satisfies readonly Quantity[];
const everyDays = 1;

/** A look at every system's pH and EC each day, and at its level where that was never told. */
export function checkDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.systems.map((system) => checkOf(system, question, today));
}

function checkOf(system: System, question: BoardQuestion, today: LocalDate): DutyLine {
  const { logbook, greenhouse, createdAtMs } = question;
  const said = liveEntries(logbook, system.id, 'duty-done').findLast((e) => e.duty === 'check');
  const times = [
    ...checked.map((quantity) => latestEntry(logbook, system.id, quantity)),
    said,
  ].flatMap((entry) => (entry ? [entry.atMs] : []));
  const lastMs = times.length > 0 ? Math.max(...times) : null;
  const lastOn = lastMs === null ? null : localDateOf(lastMs, greenhouse.timeZone);
  const firstOn = localDateOf(createdAtMs, greenhouse.timeZone);
  const dueOn = lastOn === null ? firstOn : plusDays(lastOn, everyDays);
  return {
    duty: { kind: 'check', system: system.id, dueOn: dueOn < today ? today : dueOn },
    ridesFrom: dueOn,
    reason: {
      kind: 'not-measured',
      quantities: isLevelKnown(logbook, system.id) ? checked : [...checked, 'level'],
      lastOn,
    },
  };
}
