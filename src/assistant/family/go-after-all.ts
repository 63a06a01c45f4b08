import { type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { Arranging, Days } from '../../understanding/arranging/arranging.ts';
import type { Handling } from '../handling.ts';
import { may } from '../permissions.ts';
import { undoSettledRow } from '../use-cases/undo-settled-row.ts';
import { refuse } from './refuse.ts';
import { rosterOf } from './roster-of.ts';

/** Takes back that somebody cannot go, and says whose turn it is then; or that nothing stood against it. */
export function goAfterAll(
  handling: Handling,
  { handle, days: said }: Extract<Arranging, { kind: 'can-go' }>,
): void {
  const { member } = handling.heard;
  if (!may(member, 'settle-can-go', handle === member.handle)) return refuse(handling);
  const days = said ?? lastHindered(handling, handle);
  const before = rosterOf(handling.standing);
  const dates = datesOf(days);
  const isAway = dates.some((date) => before.absenceOn(handle, date));
  const isHindered = !isAway && dates.some((date) => !before.canGo(handle, date));
  if (isHindered) handling.settle([{ kind: 'can-go', handle, ...days }]);
  const roster = rosterOf(handling.standing);
  const turns = dates.filter((date) => roster.coversOn(date).includes(handle));
  const others = dates
    .filter((date) => !turns.includes(date))
    .flatMap((date) => roster.coversOn(date).slice(0, 1));
  handling.say(
    {
      kind: 'answer',
      answer: {
        kind: 'after-all',
        handle,
        ...days,
        was: isAway ? 'away' : isHindered ? 'hindered' : 'free',
        turns,
        others: [...new Set(others)],
      },
    },
    isHindered ? [undoSettledRow(handling)] : [],
  );
}

/** The days of the last word that they cannot go, as far as they are to come; else today. */
function lastHindered({ standing, nowMs }: Handling, handle: string): Days {
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const last = standing.arrangements.findLast(
    (each) => each.kind === 'cannot-go' && each.handle === handle && each.until >= today,
  );
  if (last?.kind !== 'cannot-go') return { from: today, until: today };
  return { from: last.from < today ? today : last.from, until: last.until };
}

function datesOf({ from, until }: Days): readonly LocalDate[] {
  const dates: LocalDate[] = [];
  for (let date = from; date <= until; date = plusDays(date, 1)) dates.push(date);
  return dates;
}
