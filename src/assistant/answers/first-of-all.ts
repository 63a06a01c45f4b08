import type { Member } from '../../greenhouse/member.ts';
import { dutiesForMember } from '../../planning/duties-for-member.ts';
import { openOutages } from '../../planning/outages.ts';
import { boardOf } from '../board-of.ts';
import type { PlainAnswer } from '../replies/plain.ts';
import type { Standing } from '../standing.ts';

/** The one thing that whoever asks does next, in the order of the trip; what is out goes before it. */
export function firstOfAll(
  standing: Standing,
  nowMs: number,
  member: Member,
): Extract<PlainAnswer, { kind: 'first' }> {
  const { greenhouse, logbook } = standing;
  const { today, later } = boardOf(standing, nowMs);
  const due = today.filter(({ duty }) => duty.alongside !== true);
  const { mine, leftToGrower } = dutiesForMember(due, member, greenhouse);
  const [line = null, then = null] = mine;
  const ids = greenhouse.systems.map(({ id }) => id);
  return {
    kind: 'first',
    out: openOutages(logbook, ids).map(({ of, system, sinceMs }) => ({ of, system, sinceMs })),
    line,
    then,
    thenCount: Math.max(0, mine.length - 1),
    next: dutiesForMember(later, member, greenhouse).mine[0] ?? null,
    leftToGrower,
  };
}
