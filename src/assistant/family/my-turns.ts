import { localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import { boardOf } from '../board-of.ts';
import type { Handling } from '../handling.ts';
import { rosterOf } from './roster-of.ts';

/** Further ahead nobody plans who goes. */
const daysTold = 14;
const mostDutiesTold = 3;

/** The member's own days, by turn or taken, and the work that is due next. */
export function answerMyTurns(handling: Handling): void {
  const { standing, nowMs, heard } = handling;
  const { member } = heard;
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const roster = rosterOf(standing);
  const dates = Array.from({ length: daysTold }, (_, i) => plusDays(today, i));
  const days = dates.filter((date) => roster.coversOn(date)[0] === member.handle);
  const board = boardOf(standing, nowMs);
  const { mine } = dutiesForMember([...board.today, ...board.later], member, standing.greenhouse);
  handling.say({
    kind: 'answer',
    answer: {
      kind: 'my-turns',
      days,
      isEveryDay: days.length === dates.length,
      claims: dates
        .flatMap((date) => roster.claimsOn(date))
        .filter(({ handle }) => handle === member.handle)
        .map(({ byHandle: _by, atMs: _at, ...settled }) => ({ handle: settled.handle, settled })),
      next: mine.slice(0, mostDutiesTold),
    },
  });
}
