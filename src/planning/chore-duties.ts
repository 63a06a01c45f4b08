import type { Chore } from '../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import { liveEntries } from '../logbook/logbook.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';

/** Share of a chore's interval by which it may be early or late, to ride along on a trip. */
const earlyShare = 0.4;
const lateShare = 0.3;

/** The household's own chores; the rhythm goes on from when they were last done. */
export function choreDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.chores.map((chore): DutyLine => {
    const lastDoneOn = lastDone(chore, question);
    const dueOn = lastDoneOn === null ? today : plusDays(lastDoneOn, chore.everyDays);
    return {
      duty: { kind: 'chore', system: chore.system, chore: chore.name, dueOn },
      ridesFrom: plusDays(dueOn, -Math.floor(chore.everyDays * earlyShare)),
      waitsUntil: plusDays(dueOn, Math.floor(chore.everyDays * lateShare)),
      reason: { kind: 'chore', everyDays: chore.everyDays, lastDoneOn },
    };
  });
}

function lastDone(chore: Chore, { logbook, greenhouse }: BoardQuestion): LocalDate | null {
  const said = liveEntries(logbook, chore.system, 'duty-done').findLast(
    (entry) => entry.duty === 'chore' && entry.chore === chore.name,
  );
  return said ? localDateOf(said.atMs, greenhouse.timeZone) : chore.lastDoneOn;
}
