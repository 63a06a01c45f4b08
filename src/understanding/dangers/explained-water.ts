import { type Frame, namesIn } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Concept } from '../vocabulary/concept.ts';

/**
 * `floor is wet but that was me mopping`, `Pfütze am Boden, die Gießkanne ist umgekippt`: water that lies there, and
 * the message says, without a doubt, how it came there by the teller's own doing or by the rain. What leaks, drips or
 * runs over is never explained so, and mopping alone explains a wet floor only, since a puddle is mopped as well.
 */
export function isExplained(frame: Frame, at: number): boolean {
  const has = (...concepts: readonly Concept[]): boolean =>
    concepts.some((concept) => frame.places.has(concept, 0, frame.terms.length));
  const found = frame.terms[at];
  const flows = frame.terms.some(
    (term) => means(term, 'leak') && !means(term, 'lying-water', 'wet-floor'),
  );
  if (!means(found, 'lying-water', 'wet-floor', 'on-floor', 'wet') || flows) return false;
  if (has('in-doubt', 'not', 'no', 'did-not') || asks(frame.terms)) return false;
  if (has('harmless-water', 'own-doing')) return true;
  const isOfSystem = frame.clauses.some((clause) => namesIn(frame, clause).length > 0);
  return means(found, 'wet-floor', 'wet') && has('wet-work') && !isOfSystem;
}

function asks(terms: readonly Term[]): boolean {
  return terms.some((term) => term.kind === 'stop' && term.cut === 'question');
}
