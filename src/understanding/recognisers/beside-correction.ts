import { isMeasure, isName } from '../reading/frame.ts';
import type { Term } from '../reading/term.ts';
import type { Concept } from '../vocabulary/concept.ts';

/** Words of a message that puts right the product or the unit of what was just logged, and says nothing else. */
export const besideCorrection: readonly Concept[] = [
  'not',
  'instead-of',
  'meant',
  'sorry',
  'no-wait',
  'said-no',
  'rather',
  'link',
  'article',
  'pronoun',
  'filler',
  'self',
];

export function isMeasureOrName(term: Term): boolean {
  return isMeasure(term) || isName(term);
}
