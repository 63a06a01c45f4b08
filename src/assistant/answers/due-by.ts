import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { Member } from '../../greenhouse/member.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import { boardOf } from '../board-of.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** As many as a phone shows at once. */
const mostTold = 12;

/** What a member has to do up to a day that is still to come, what is open today first. */
export function dueBy(
  standing: Standing,
  system: SystemId | null,
  by: LocalDate,
  member: Member,
  nowMs: number,
): Answer {
  const { today, later } = boardOf(standing, nowMs);
  const asked = [...today, ...later].filter(
    ({ duty }) => duty.dueOn <= by && (system === null || duty.system === system),
  );
  const { mine } = dutiesForMember(asked, member, standing.greenhouse);
  return { by, kind: 'when-next', duties: mine.slice(0, mostTold) };
}
