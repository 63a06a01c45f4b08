import type { OpenQuestion } from '../context.ts';
import { layOut, piecesOf } from '../lay-out.ts';
import { fold } from '../reading/fold.ts';
import { type Frame, isName } from '../reading/frame.ts';
import type { Statement } from '../statement.ts';

interface InTurn {
  readonly question: OpenQuestion;
  readonly said: readonly Statement[];
}

/**
 * `6.1, cm, one jug`: as many sayings as questions are open, each of which answers the one in its place, in the order in
 * which they were asked; null: one of them does not, or leaves something to ask.
 */
export function answersInTurn(
  { context, folded, terms, clauses, places }: Frame,
  answerTo: (frame: Frame, question: OpenQuestion) => readonly Statement[] | null,
): readonly InTurn[] | null {
  const asked = context.openQuestions.toReversed();
  const parts = clauses.filter(({ from, to }) => from < to);
  if (asked.length < 2 || parts.length !== asked.length) return null;
  if (places.hasWhere(isName, 0, terms.length)) return null;
  const inTurn: InTurn[] = [];
  for (const [n, { from, to }] of parts.entries()) {
    const question = asked[n]!;
    const text = folded.text.slice(terms[from]!.from, terms[to - 1]!.to);
    const alone = { ...context, openQuestions: [question] };
    // Laid out by itself: a unit alone is known by the whole of what is written.
    const said = answerTo(layOut(piecesOf(fold(text), text, alone), alone), question);
    if (!said || said.some(({ kind }) => kind !== 'answered')) return null;
    inTurn.push({ question, said });
  }
  return inTurn;
}
