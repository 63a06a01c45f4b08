import type { Context } from './context.ts';
import { withArrows } from './reading/arrows.ts';
import { withoutCompounds } from './reading/compounds.ts';
import { cutAtSame } from './reading/cut-at-same.ts';
import { cutAtSo } from './reading/cut-at-so.ts';
import type { Folded } from './reading/fold.ts';
import { type Frame, frameOf } from './reading/frame.ts';
import { type Lexicon, languageOf, lexiconFor } from './reading/lexicon.ts';
import { readingOf } from './reading/look-up.ts';
import { countOneInPart } from './reading/one-in-part.ts';
import { putNamesRight } from './reading/put-names-right.ts';
import { putRight } from './reading/put-right.ts';
import { saidOnce, withoutBrackets } from './reading/said-twice.ts';
import { shadeMeasures } from './reading/shade-measures.ts';
import { shareContainers } from './reading/shared-container.ts';
import { shareVolume } from './reading/shared-volume.ts';
import { joinSplitDecimals } from './reading/split-decimals.ts';
import { withoutStruck } from './reading/struck-value.ts';
import { termsOf } from './reading/terms-of.ts';
import type { Token } from './reading/token.ts';
import { tokenise } from './reading/tokenise.ts';
import { countVessels } from './reading/vessels-counted.ts';
import { sizeVessels } from './reading/vessels-sized.ts';

/** A message cut into pieces, with the words that they can mean. */
export interface Pieces {
  readonly folded: Folded;
  readonly tokens: readonly Token[];
  readonly lexicon: Lexicon;
}

export function piecesOf(folded: Folded, text: string, { greenhouse, member }: Context): Pieces {
  const tokens = tokenise(text);
  const lexicon = lexiconFor(greenhouse, languageOf(tokens, greenhouse, member.language));
  return { folded, tokens, lexicon };
}

/** The pieces laid out for the recognisers. */
export function layOut({ folded, tokens, lexicon }: Pieces, context: Context): Frame {
  const read = joinSplitDecimals(withoutCompounds(tokens, lexicon), lexicon);
  const written = withoutBrackets(
    saidOnce(termsOf(readingOf(read, lexicon)), context.greenhouse.units),
  );
  const vessels = shareContainers(sizeVessels(countVessels(written, lexicon), lexicon), lexicon);
  const counted = shadeMeasures(withArrows(cutAtSo(countOneInPart(shareVolume(vessels)))));
  const terms = cutAtSame(putNamesRight(putRight(withoutStruck(counted))));
  return frameOf(context, lexicon, folded, terms);
}
