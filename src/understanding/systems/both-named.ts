import type { SystemId } from '../../greenhouse/system.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { clauseHas, type Frame, isName } from '../reading/frame.ts';
import { isUnknown, means } from '../reading/term.ts';
import type { Mention } from './mention.ts';

/**
 * `gutters got a can and the jars a jug, both ph 6`: of the readings of a clause that names no system itself, the two
 * that were named before it. Unsure where they are more than two. Null: it is said of something else.
 */
export function bothNamedBefore(frame: Frame, i: number): Mention | null {
  const { terms, places } = frame;
  if (!means(terms[i], 'both')) return null;
  const clause = frame.clauseOf[i]!;
  const { from, to } = frame.clauses[clause]!;
  if (places.hasWhere(isName, from, to) || !tellsReading(frame, from, to)) return null;
  // `both boxes`, `both pens`.
  if (isUnknown(terms[i + 1]) || means(terms[i + 1], 'vessel', 'counted', 'plant-part'))
    return null;
  const named = new Set<SystemId>();
  for (const term of terms.slice(0, from))
    if (term.kind === 'name' && term.sure) for (const system of term.systems) named.add(system);
  if (named.size < 2) return null;
  return {
    systems: [...named],
    from: i,
    to: i,
    clause,
    lastClause: clause,
    unsure: named.size > 2,
    written: terms[i]!.text,
    slip: false,
    afterPlace: false,
  };
}

function tellsReading(frame: Frame, from: number, to: number): boolean {
  return frame.places.hasWhere(isLabel, from, to) || clauseHas(frame, { from, to }, 'full');
}
