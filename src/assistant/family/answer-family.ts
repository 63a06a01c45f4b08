import { localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { howTo } from '../../planning/family/how-to.ts';
import { Roster } from '../../planning/roster.ts';
import type { Arranging, Days } from '../../understanding/arranging/arranging.ts';
import { boardOf } from '../board-of.ts';
import { boardQuestion } from '../board-question.ts';
import type { Handling } from '../handling.ts';

/** Further ahead nobody plans who goes. */
const daysTold = 14;
const daysUnsaid = 7;

/** Who goes on each day, and what was taken. */
export function answerWhoGoes(handling: Handling, days: Days | null): void {
  const { standing, nowMs } = handling;
  const { greenhouse, arrangements } = standing;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const roster = new Roster(greenhouse, arrangements);
  const first = days?.from ?? today;
  const last = days?.until ?? plusDays(today, daysUnsaid - 1);
  const dates = Array.from({ length: daysTold }, (_, i) => plusDays(first, i)).filter(
    (date) => date <= last,
  );
  handling.say({
    kind: 'answer',
    answer: {
      kind: 'roster',
      days: dates.map((date) => ({ date, handles: roster.coversOn(date).slice(0, 1) })),
      claims: dates
        .flatMap((date) => roster.claimsOn(date))
        .map(({ byHandle: _by, atMs: _at, ...settled }) => ({ handle: settled.handle, settled })),
    },
  });
}

/** A duty unfolded into steps; where no system is named, that of the round, if it is one. */
export function tellHowTo(
  handling: Handling,
  { system: named, duty: said }: Extract<Arranging, { kind: 'how-to' }>,
): void {
  const { standing, nowMs, heard } = handling;
  const { today, later } = boardOf(standing, nowMs);
  const lines = [...today, ...later];
  const due = today.filter(({ duty }) => said === null || duty.kind === said);
  const ids = [...new Set(due.flatMap(({ duty }) => duty.system ?? []))];
  const { systems } = standing.greenhouse;
  const id = named ?? (ids.length === 1 ? ids[0]! : systems.length === 1 ? systems[0]!.id : null);
  const system = systems.find((each) => each.id === id);
  if (!system) {
    handling.say({ kind: 'answer', answer: { kind: 'no-such-duty' } });
    return;
  }
  const kind = said ?? today.find(({ duty }) => duty.system === system.id)?.duty.kind ?? 'top-up';
  const tips = standing.arrangements.flatMap((each) =>
    each.kind === 'tip' &&
    (each.system === null || each.system === system.id) &&
    (each.duty === null || each.duty === kind)
      ? [each.text]
      : [],
  );
  handling.say({
    kind: 'answer',
    answer: {
      kind: 'how-to',
      how: howTo({
        board: boardQuestion(standing, nowMs),
        lines,
        system,
        duty: kind,
        tips,
        member: heard.member,
      }),
    },
  });
}
