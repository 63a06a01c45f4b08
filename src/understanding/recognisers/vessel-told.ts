import { isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isName, measureOf } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/**
 * `the can in the jars was a jug`: what was poured into a system was another amount; `oh no, those jugs went in the jars`:
 * it went into another system. Of a vessel spoken of as known, so that no more was poured.
 */
export function vesselTold(frame: Frame): TakingBack | null {
  const { terms, places } = frame;
  const [name, ...names] = places.where(isName);
  const called = terms[name ?? -1];
  if (name === undefined || names.length > 0 || called?.kind !== 'name') return null;
  const [system] = called.systems;
  if (!called.sure || called.systems.length !== 1 || system === undefined) return null;
  const vessel = terms.findIndex((term) => !isExcuse(term)) + 1;
  if (!isKnown(terms[vessel - 1]) || !means(terms[vessel], 'vessel')) return null;
  if (!terms.slice(vessel + 1).every(mayFollow)) return null;
  const verb = terms.findIndex((term, i) => i > vessel && isTelling(term));
  const [amount, ...amounts] = places.where(isMeasure);
  if (verb < 0 || amounts.length > 0) return null;
  if (amount === undefined)
    return verb < name && saysWhere(terms, verb, name)
      ? { kind: 'move', system, quantity: 'top-up' }
      : null;
  const isOfIt = name < verb && verb < amount && isVolume(measureOf(frame, amount));
  const corrected = isOfIt ? numbersCorrected(frame, [amount, null], 'top-up') : null;
  return corrected && { kind: 'correct', ...corrected, system };
}

function isExcuse(term: Term): boolean {
  return (
    term.kind === 'stop' ||
    (means(term, 'sorry', 'no-wait', 'said-no', 'filler') && !means(term, 'article'))
  );
}

/** `the`, `those`; not `a`. */
function isKnown(term: Term | undefined): boolean {
  return means(term, 'article', 'pronoun') && !means(term, 'indefinite');
}

function isTelling(term: Term): boolean {
  return (
    means(term, 'was', 'goes-in') ||
    (means(term, 'took') && !means(term, 'place')) ||
    (means(term, 'add') && means(term, 'received'))
  );
}

/** `went in the jars`, `were for the jars`. */
function saysWhere(terms: readonly Term[], verb: number, name: number): boolean {
  const isIn = means(terms[verb], 'received', 'goes-in');
  return isIn || terms.slice(verb + 1, name).some((term) => means(term, 'place'));
}

function mayFollow(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'comma' || term.cut === 'sentence';
  return (
    isName(term) ||
    isMeasure(term) ||
    isTelling(term) ||
    means(term, 'article', 'place', 'filler', 'pronoun', 'merely')
  );
}
