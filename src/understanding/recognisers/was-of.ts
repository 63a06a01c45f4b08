import type { Quantity } from '../../greenhouse/quantity.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';

/**
 * `ec was the gutters`, `war die Rinne`: of which system what was told just now had been, where one other was named.
 * `named`: the quantity that the message names.
 */
export function wasOf(frame: Frame, named: () => Quantity | null): TakingBack | null {
  const { terms, context, places } = frame;
  const names = places.where(isName);
  const name = terms[names[0] ?? -1];
  if (names.length !== 1 || name?.kind !== 'name' || !name.sure) return null;
  const [system] = name.systems;
  const from = context.recentSystem;
  if (name.systems.length !== 1 || system === undefined) return null;
  if (from === null || from === system || context.openQuestions.length > 0) return null;
  if (places.hasWhere(isMeasure, 0, terms.length)) return null;
  const isPast = terms.slice(0, names[0]).some((term) => means(term, 'was'));
  if (!isPast || !terms.every(mayStandBeside) || !closes(frame, names[0]!)) return null;
  const quantity = named();
  return { kind: 'move', system, from, ...(quantity === null ? {} : { quantity }) };
}

function mayStandBeside(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'comma' || term.cut === 'sentence';
  if (term.kind === 'mark') return term.text !== '?';
  if (isName(term) || isLabel(term)) return true;
  if (means(term, 'what', 'when', 'who', 'which', 'how')) return false;
  return means(term, 'article', 'pronoun', 'was', 'filler', 'place', 'sorry', 'for-somebody', 'of');
}

/** Nothing told of the system itself: `the ec of the gutters was`. */
function closes({ terms }: Frame, name: number): boolean {
  return terms.slice(name + 1).every((term) => term.kind === 'stop' || term.kind === 'mark');
}
