import { type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { homeStory } from '../../planning/family/home-story.ts';
import type { Absence } from '../../planning/roster.ts';
import type { Arranging } from '../../understanding/arranging/arranging.ts';
import { boardOf } from '../board-of.ts';
import type { Handling } from '../handling.ts';
import { may } from '../permissions.ts';
import type { AlertTold } from '../replies/family.ts';
import { undoSettledRow } from '../use-cases/undo-settled-row.ts';
import { absenceToEnd, spanOf } from './absence-to-end.ts';
import { askOrPlan, goAway, tellPlan } from './go-away.ts';
import { refuse } from './refuse.ts';
import { rosterOf } from './roster-of.ts';

const nextTold = 3;

/** Ends an absence: the story of it; or, where it is to end later, the plan anew. */
export function comeHome(
  handling: Handling,
  { handle, on, isToCome }: Extract<Arranging, { kind: 'back' }>,
  alerts: readonly AlertTold[],
): void {
  const { member } = handling.heard;
  if (!may(member, 'settle-back', handle === member.handle)) return refuse(handling);
  const { standing, nowMs } = handling;
  const { greenhouse, logbook, rounds } = standing;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const roster = rosterOf(standing);
  const absence = absenceToEnd(roster, handle, today);
  if (!absence && on !== null && on > today) {
    // `only back on Friday`, and nobody had heard of going away.
    const days = { from: today, until: plusDays(on, -1) };
    return goAway(handling, { kind: 'away', handle, days });
  }
  if (absence && isToCome) {
    handling.say({ kind: 'answer', answer: { kind: 'back-when', handle, until: absence.until } });
    return;
  }
  if (!absence) {
    handling.say({ kind: 'answer', answer: { kind: 'nobody-away' } });
    return;
  }
  const from = on ?? today;
  if (from > plusDays(absence.until, 1)) return stayLonger(handling, absence, from, today);
  if (absence.from <= from && from <= absence.until) {
    handling.settle([{ kind: 'back', handle, on: from }]);
  }
  if (from > today || absence.from > today) {
    const later = { kind: 'back', handle, on: from } as const;
    handling.say({ kind: 'answer', answer: { kind: 'settled', items: [later], instead: [] } });
    if (absence.until >= from && absence.from < from) tellPlan(handling, null, absence);
    return;
  }
  const { fromMs, untilMs } = spanOf(absence, greenhouse, nowMs);
  const board = boardOf(handling.standing, nowMs);
  handling.say({
    kind: 'answer',
    answer: {
      kind: 'home-coming',
      story: homeStory({ greenhouse, logbook, rounds }, handle, fromMs, untilMs),
      alerts: handle === member.handle ? alerts : [],
      today: board.today,
      next: board.later.slice(0, nextTold),
    },
  });
}

/** Back later than was told: the absence goes on until then. */
function stayLonger(
  handling: Handling,
  { handle, from, until }: Absence,
  backOn: LocalDate,
  today: LocalDate,
): void {
  const longer = { kind: 'away', handle, from, until: plusDays(backOn, -1) } as const;
  handling.settle([longer]);
  handling.say({ kind: 'answer', answer: { kind: 'settled', items: [longer], instead: [] } }, [
    undoSettledRow(handling),
  ]);
  const added = plusDays(until, 1);
  askOrPlan(handling, { from: added < today ? today : added, until: longer.until });
}
