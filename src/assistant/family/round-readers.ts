import type { LocalDate } from '../../greenhouse/local-time.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { Standing } from '../standing.ts';
import { rosterOf } from './roster-of.ts';

export interface RoundReader {
  readonly handle: string;
  readonly isHelper: boolean;
  /** A grower who is away and wants one quiet line. */
  readonly isAway: boolean;
}

/** Who gets the round of a day: the growers, and while one is away whoever covers that day as well. */
export function roundReaders(standing: Standing, date: LocalDate): readonly RoundReader[] {
  const { greenhouse } = standing;
  const roster = rosterOf(standing);
  const growers = greenhouse.members
    .filter(({ role }) => role === 'grower')
    .map(({ handle }) => ({ handle, isAway: roster.absenceOn(handle, date) !== null }));
  const isAnyAway = growers.some(({ isAway }) => isAway);
  const covers = isAnyAway ? roster.coversOn(date) : [];
  return [
    ...growers
      .filter(({ handle, isAway }) => !isAway || roster.wantsNews(handle))
      .map((grower) => ({ ...grower, isHelper: false })),
    ...covers
      .filter((handle) => !growers.some((grower) => grower.handle === handle))
      .map((handle) => ({ handle, isHelper: true, isAway: false })),
  ];
}

/** What a helper may do of the day's duties. */
export function forHelper(
  lines: readonly DutyLine[],
  handle: string,
  { greenhouse }: Standing,
): readonly DutyLine[] {
  const member = greenhouse.members.find((each) => each.handle === handle);
  return member ? dutiesForMember(lines, member, greenhouse).mine : lines;
}
