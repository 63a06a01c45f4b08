import { instantOf, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { homeStory } from '../../planning/family/home-story.ts';
import { Roster } from '../../planning/roster.ts';
import type { Arranging } from '../../understanding/arranging/arranging.ts';
import { boardOf } from '../board-of.ts';
import type { Handling } from '../handling.ts';
import { may } from '../permissions.ts';
import { tellPlan } from './go-away.ts';
import { refuse } from './refuse.ts';

const nextTold = 3;

/** Ends an absence: the story of it; or, where it is to end later, the plan anew. */
export function comeHome(
  handling: Handling,
  { handle, on }: Extract<Arranging, { kind: 'back' }>,
): void {
  const { member } = handling.heard;
  if (!may(member, 'settle-back', handle === member.handle)) return refuse(handling);
  const { standing, nowMs } = handling;
  const { greenhouse, arrangements, logbook, rounds } = standing;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const roster = new Roster(greenhouse, arrangements);
  const absence =
    roster.absenceOn(handle, today) ??
    roster.absences.findLast((each) => each.handle === handle && each.until < today) ??
    roster.absences.find((each) => each.handle === handle);
  if (!absence) {
    handling.say({ kind: 'answer', answer: { kind: 'nobody-away' } });
    return;
  }
  const from = on ?? today;
  if (absence.from <= from && from <= absence.until) {
    handling.settle([{ kind: 'back', handle, on: from }]);
  }
  if (from > today || absence.from > today) {
    const later = { kind: 'back', handle, on: from } as const;
    handling.say({ kind: 'answer', answer: { kind: 'settled', items: [later], instead: [] } });
    if (absence.until >= from && absence.from < from) tellPlan(handling, null);
    return;
  }
  const { timeZone, morning } = greenhouse;
  const leftMs = Math.max(absence.toldAtMs, instantOf(absence.from, morning, timeZone));
  const endMs = Math.min(nowMs, instantOf(plusDays(absence.until, 1), morning, timeZone));
  const board = boardOf(handling.standing, nowMs);
  handling.say({
    kind: 'answer',
    answer: {
      kind: 'home-coming',
      story: homeStory({ greenhouse, logbook, rounds }, handle, leftMs, Math.max(leftMs, endMs)),
      today: board.today,
      next: board.later.slice(0, nextTold),
    },
  });
}
