import type { Context } from './context.ts';
import { layOut, piecesOf } from './lay-out.ts';
import { unclear } from './nothing-said.ts';
import { readFrame } from './read-frame.ts';
import { fold } from './reading/fold.ts';
import { findNote, noteEntry } from './recognisers/note.ts';
import type { Understanding } from './statement.ts';

/** Longer messages are no report from a greenhouse; only a note may be as long as it likes. */
const longestRead = 2000;

/** Reads one message against its context. Never throws, whatever the text. */
export function understand(text: string, context: Context): Understanding {
  const folded = fold(text.length > longestRead ? text.slice(0, longestRead) : text);
  // A few letters fold into many: what is looked at stays bounded either way.
  const isTooLong = text.length > longestRead || folded.text.length > 2 * longestRead;
  const pieces = piecesOf(folded, isTooLong ? '' : folded.text, context);
  const { tokens, lexicon } = pieces;
  const note = findNote(folded, lexicon);
  if (isTooLong) {
    const whole = { ...folded, original: text };
    const kept = note ? noteEntry(context, whole, lexicon, note) : unclear(folded, context, text);
    return { foldedText: folded.text, statements: [kept], named: [] };
  }
  const said = note ? tokens.filter(({ to }) => to <= note.from) : tokens;
  const frame = layOut({ ...pieces, tokens: said }, context);
  const { statements, named } =
    note && said.length === 0 ? { statements: [], named: [] } : readFrame(frame);
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
