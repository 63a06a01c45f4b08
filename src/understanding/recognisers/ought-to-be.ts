import { isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import type { Named } from './named.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/**
 * `hang on, ec on the bench should be 2.5`, `sorry, jars ph should have been 6.0`: behind an excuse no value that is
 * wanted, but the one that was meant. `named`: the system and the quantity that the message names.
 */
export function oughtToBe(frame: Frame, named: () => Named): TakingBack | null {
  const { terms, places, context } = frame;
  if (!means(terms[0], 'sorry', 'no-wait') || context.openQuestions.length > 0) return null;
  if (!places.hasAny(['ought-to-be', 'ought-to-have-been'])) return null;
  const [at, ...others] = places.where(isMeasure);
  if (at === undefined || others.length > 0) return null;
  if (!places.hasWhere(isLabel, 0, terms.length) || !terms.every(isSmall)) return null;
  const { system, quantity } = named();
  const corrected = numbersCorrected(frame, [at, null], quantity);
  return corrected && { kind: 'correct', ...corrected, system };
}

function isSmall(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'comma' || term.cut === 'sentence';
  return (
    isName(term) ||
    isMeasure(term) ||
    isLabel(term) ||
    means(
      term,
      'sorry',
      'no-wait',
      'ought-to-be',
      'ought-to-have-been',
      'article',
      'place',
      'of',
      'filler',
      'pronoun',
    )
  );
}
