import { systemsNamed } from '../asking/asked-things.ts';
import { layOut, piecesOf } from '../lay-out.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { fold } from '../reading/fold.ts';
import { type Frame, isPadding } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Statement } from '../statement.ts';
import { insteadOf, questionsOf } from './read-answer.ts';

/**
 * `for the bench`, `the ph of the bench`, where it was asked what 5.9 is and nobody had said of which system either:
 * what `bench 5.9` or `bench ph 5.9` would be. Null: that was not asked, or it says more.
 */
export function numberOfSystem(
  frame: Frame,
  readNews: (frame: Frame) => readonly Statement[],
): readonly Statement[] | null {
  const [question] = questionsOf(frame);
  if (!question) return null;
  const { reason, choices, waiting } = question.doubt;
  if (reason.kind !== 'which-quantity' || choices.length > 0 || waiting) return null;
  const said = systemAndLabel(frame);
  if (said === null) return null;
  const context = { ...frame.context, repliedTo: null, openQuestions: [] };
  const folded = fold(`${said} ${reason.value}`);
  const span = { from: 0, to: frame.folded.text.length };
  const read = readNews(layOut(piecesOf(folded, folded.text, context), context));
  return insteadOf(
    question,
    read.map((statement) => ({ ...statement, span })),
  );
}

/** One system by its name, and the word for a quantity, or one of them, and nothing besides. */
function systemAndLabel(frame: Frame): string | null {
  const { terms, context } = frame;
  const [only, ...others] = systemsNamed(frame, 0, terms.length);
  const [label, ...moreLabels] = terms.filter(isLabel);
  if (others.length > 0 || moreLabels.length > 0 || !terms.every(isSmall)) return null;
  const name = context.greenhouse.systems.find(({ id }) => id === only)?.name;
  const said = [name, label?.text].filter((part) => part !== undefined);
  return said.length > 0 ? said.join(' ') : null;
}

function isSmall(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question';
  return (
    term.kind === 'name' ||
    isLabel(term) ||
    isPadding(term) ||
    means(term, 'place', 'of', 'article', 'pronoun')
  );
}
