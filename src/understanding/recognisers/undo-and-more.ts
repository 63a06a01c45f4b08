import { newStatements } from '../new-statements.ts';
import { type Frame, frameOf, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Statement } from '../statement.ts';

/** `undo that, bench ph 6.0`: what was told last is struck out, and something else is told in its place. */
export function undoAndMore(frame: Frame): readonly Statement[] | null {
  const opening = frame.clauses.find(({ from, to }) => from < to);
  if (!opening || !frame.terms.slice(opening.from, opening.to).some(isUndo)) return null;
  if (!frame.terms.slice(opening.from, opening.to).every(isOfUndoing)) return null;
  const rest = frame.terms.slice(opening.to + 1);
  if (!rest.some(isMeasure) || !rest.some((term) => term.kind === 'name')) return null;
  const more = newStatements(frameOf(frame.context, frame.lexicon, frame.folded, rest));
  const isNews = more.some(({ kind }) => kind === 'entry');
  if (!isNews) return null;
  const span = { from: 0, to: frame.terms[opening.to - 1]!.to };
  return [{ kind: 'taking-back', back: { kind: 'undo' }, span, because: ['undo'] }, ...more];
}

function isUndo(term: Term): boolean {
  return means(term, 'undo');
}

function isOfUndoing(term: Term): boolean {
  return isUndo(term) || means(term, 'filler', 'sorry', 'no-wait', 'pronoun', 'said-no', 'thanks');
}
