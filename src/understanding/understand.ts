import type { Context } from './context.ts';
import { unclear } from './nothing-said.ts';
import { readFrame } from './read-frame.ts';
import { withoutCompounds } from './reading/compounds.ts';
import { cutAtSame } from './reading/cut-at-same.ts';
import { cutAtSo } from './reading/cut-at-so.ts';
import { fold } from './reading/fold.ts';
import { frameOf } from './reading/frame.ts';
import { languageOf, lexiconFor } from './reading/lexicon.ts';
import { readingOf } from './reading/look-up.ts';
import { putNamesRight, putRight } from './reading/put-right.ts';
import { saidOnce, withoutBrackets } from './reading/said-twice.ts';
import { shadeMeasures } from './reading/shade-measures.ts';
import { joinSplitDecimals } from './reading/split-decimals.ts';
import { termsOf } from './reading/terms-of.ts';
import { tokenise } from './reading/tokenise.ts';
import { countVessels } from './reading/vessels-counted.ts';
import { findNote, noteEntry } from './recognisers/note.ts';
import type { Understanding } from './statement.ts';

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
  const read = joinSplitDecimals(withoutCompounds(said, lexicon), lexicon);
  const written = withoutBrackets(
    saidOnce(termsOf(readingOf(read, lexicon)), context.greenhouse.units),
  );
  const counted = shadeMeasures(cutAtSo(countVessels(written, lexicon)));
  const terms = cutAtSame(putNamesRight(putRight(counted)));
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
