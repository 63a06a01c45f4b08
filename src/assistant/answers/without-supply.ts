import type { SystemId } from '../../greenhouse/system.ts';
import { outageProspects } from '../../planning/outage-prospects.ts';
import type { Ask } from '../../understanding/statement.ts';
import { boardQuestion } from '../board-question.ts';
import type { AdviceAnswer } from '../replies/advice.ts';
import type { Standing } from '../standing.ts';

/** How long systems would last from now on without power, a pump or air. */
export function withoutSupply(
  standing: Standing,
  { of }: Extract<Ask, { kind: 'without-supply' }>,
  systems: readonly SystemId[],
  nowMs: number,
): AdviceAnswer {
  const question = boardQuestion(standing, nowMs);
  return { kind: 'without-supply', of, ...outageProspects(question, systems, of, nowMs) };
}
