import { isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import type { Named } from './named.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/** `aus den 1,7 mach 1,9`, `make that 1.7 a 1.9`: a value told before, and the one that it is to be. */
export function turnedInto(frame: Frame, named: () => Named): TakingBack | null {
  const { terms, places } = frame;
  if (!places.hasAny(['turn-into'])) return null;
  const [first, second, ...others] = places.where(isMeasure);
  if (first === undefined || second === undefined || others.length > 0) return null;
  // The one that was told: `the 12 l`, `den 1,7`.
  const isKnown = means(terms[first - 1], 'article') && !means(terms[first - 1], 'indefinite');
  if (!isKnown && !means(terms[first - 1], 'that-one')) return null;
  if (!terms.every((term) => isMeasure(term) || isSmall(term))) return null;
  const { system, quantity } = named();
  const corrected = numbersCorrected(frame, [second, first], quantity);
  return corrected && { kind: 'correct', ...corrected, system };
}

function isSmall(term: Term): boolean {
  if (term.kind === 'name' || isLabel(term)) return true;
  if (term.kind === 'stop') return term.cut === 'comma';
  return means(
    term,
    'turn-into',
    'article',
    'that-one',
    'pronoun',
    'from',
    'of',
    'place',
    'to',
    'filler',
    'link',
    'rather',
    'sorry',
  );
}
