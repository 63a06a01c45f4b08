import type { SystemId } from '../greenhouse/system.ts';
import { readAnswer } from './answers/read-answer.ts';
import type { Context } from './context.ts';
import { newStatements } from './new-statements.ts';
import { unclear } from './nothing-said.ts';
import { withoutCompounds } from './reading/compounds.ts';
import { cutAtSo } from './reading/cut-at-so.ts';
import { fold } from './reading/fold.ts';
import { type Frame, frameOf } from './reading/frame.ts';
import { languageOf, lexiconFor } from './reading/lexicon.ts';
import { readingOf } from './reading/look-up.ts';
import { putRight } from './reading/put-right.ts';
import { saidOnce, withoutBrackets } from './reading/said-twice.ts';
import { shadeMeasures } from './reading/shade-measures.ts';
import { termsOf } from './reading/terms-of.ts';
import { tokenise } from './reading/tokenise.ts';
import { findNote, noteEntry } from './recognisers/note.ts';
import { recogniseTakingBack } from './recognisers/taking-back.ts';
import type { Statement, Understanding } from './statement.ts';

/** Longer messages are no report from a greenhouse; only a note may be as long as it likes. */
const longestRead = 2000;

/** Reads one message against its context. Never throws, whatever the text. */
export function understand(text: string, context: Context): Understanding {
  const folded = fold(text.length > longestRead ? text.slice(0, longestRead) : text);
  // A few letters fold into many: what is looked at stays bounded either way.
  const isTooLong = text.length > longestRead || folded.text.length > 2 * longestRead;
  const tokens = tokenise(isTooLong ? '' : folded.text);
  const lexicon = lexiconFor(
    context.greenhouse,
    languageOf(tokens, context.greenhouse, context.member.language),
  );
  const note = findNote(folded, lexicon);
  if (isTooLong) {
    const whole = { ...folded, original: text };
    const kept = note ? noteEntry(context, whole, lexicon, note) : unclear(folded, context, text);
    return { foldedText: folded.text, statements: [kept], named: [] };
  }
  const said = note ? tokens.filter(({ to }) => to <= note.from) : tokens;
  const read = withoutCompounds(said, lexicon);
  const written = withoutBrackets(
    saidOnce(termsOf(readingOf(read, lexicon)), context.greenhouse.units),
  );
  const terms = putRight(shadeMeasures(cutAtSo(written)));
  const frame = frameOf(context, lexicon, folded, terms);
  const { statements, named } =
    note && read.length === 0 ? { statements: [], named: [] } : readFrame(frame);
  if (note) {
    const rest = statements.filter(
      (statement) => statement.kind !== 'doubt' || statement.reason.kind !== 'unclear',
    );
    return {
      foldedText: folded.text,
      statements: [...rest, noteEntry(context, folded, lexicon, note)],
      named,
    };
  }
  return { foldedText: folded.text, statements, named };
}

interface Read {
  readonly statements: readonly Statement[];
  readonly named: readonly SystemId[];
}

function readFrame(frame: Frame): Read {
  const named = namesSaid(frame);
  const answer = readAnswer(frame);
  if (answer) return { statements: [answer], named };
  frame.taken.fill(false);
  frame.timed.fill(false);
  const back = recogniseTakingBack(frame);
  if (back) return { statements: [back], named };
  return { statements: newStatements(frame), named };
}

function namesSaid(frame: Frame): SystemId[] {
  return [
    ...new Set(
      frame.terms.flatMap((term) => (term.kind === 'name' && term.sure ? term.systems : [])),
    ),
  ];
}
