import type { SpokenUnits } from '../greenhouse/greenhouse.ts';
import type { Context } from './context.ts';
import { withArrows } from './reading/arrows.ts';
import { withoutCompounds } from './reading/compounds.ts';
import { countAlone } from './reading/container-alone.ts';
import { cutAtSame } from './reading/cut-at-same.ts';
import { cutAtSo } from './reading/cut-at-so.ts';
import { cutRunOns } from './reading/cut-run-ons.ts';
import { withEachItsValue } from './reading/each-its-value.ts';
import type { Folded } from './reading/fold.ts';
import { type Frame, frameOf } from './reading/frame.ts';
import { withHoursOfOutage } from './reading/hours-of-outage.ts';
import { withoutLabelStops } from './reading/label-stops.ts';
import { type Lexicon, languageOf, lexiconFor } from './reading/lexicon.ts';
import { readingOf } from './reading/look-up.ts';
import { countOneInPart } from './reading/one-in-part.ts';
import { withOtherValues } from './reading/other-value.ts';
import { withPartsOfAmounts } from './reading/part-of-amount.ts';
import { withoutPictures } from './reading/pictures.ts';
import { putNamesRight } from './reading/put-names-right.ts';
import { putRight } from './reading/put-right.ts';
import { withRowsOfAmounts } from './reading/row-of-amounts.ts';
import { saidOnce, withoutBrackets } from './reading/said-twice.ts';
import { shadeMeasures } from './reading/shade-measures.ts';
import { shareContainers } from './reading/shared-container.ts';
import { shareVolume } from './reading/shared-volume.ts';
import { joinSplitDecimals } from './reading/split-decimals.ts';
import { joinSpokenDigits } from './reading/spoken-digits.ts';
import { withoutStruck } from './reading/struck-value.ts';
import type { Term } from './reading/term.ts';
import { termsOf } from './reading/terms-of.ts';
import { withTextSpeak } from './reading/text-speak.ts';
import type { Token } from './reading/token.ts';
import { tokenise } from './reading/tokenise.ts';
import { withUnitsOfNow } from './reading/unit-of-now.ts';
import { withUnitsOfRefused } from './reading/unit-of-refused.ts';
import { withUnitsPutRight } from './reading/units-put-right.ts';
import { countInSizeSaid } from './reading/vessel-size-said.ts';
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
export function layOut(pieces: Pieces, context: Context): Frame {
  return frameOf(context, pieces.lexicon, pieces.folded, termsIn(pieces, context.greenhouse.units));
}

// A message is laid out once to see whether it tells of a danger, and once for what it reports.
const lastTerms = new WeakMap<Lexicon, Pick<Pieces, 'tokens'> & { terms: readonly Term[] }>();

function termsIn(pieces: Pieces, units: SpokenUnits): readonly Term[] {
  const last = lastTerms.get(pieces.lexicon);
  if (last?.tokens === pieces.tokens) return last.terms;
  const terms = allTermsIn(pieces, units);
  lastTerms.set(pieces.lexicon, { tokens: pieces.tokens, terms });
  return terms;
}

function allTermsIn({ tokens, lexicon }: Pieces, units: SpokenUnits): readonly Term[] {
  const spelt = withoutCompounds(withTextSpeak(tokens, lexicon), lexicon);
  const read = joinSplitDecimals(spelt, lexicon);
  const plain = withoutPictures(termsOf(readingOf(read, lexicon)));
  const timed = withHoursOfOutage(plain, lexicon);
  const spoken = joinSpokenDigits(timed);
  const written = withPartsOfAmounts(withoutBrackets(saidOnce(spoken, units)));
  const told = countInSizeSaid(written, lexicon);
  const sized = withOtherValues(
    withEachItsValue(sizeVessels(countVessels(told, lexicon), lexicon)),
  );
  const alone = countAlone(withRowsOfAmounts(sized, lexicon), lexicon);
  const vessels = shareContainers(alone, lexicon);
  const counted = shadeMeasures(withArrows(cutAtSo(countOneInPart(shareVolume(vessels)))));
  const ofRefused = withUnitsOfNow(withUnitsOfRefused(withoutStruck(counted)));
  const right = putNamesRight(putRight(withUnitsPutRight(ofRefused, lexicon)));
  return cutRunOns(cutAtSame(withoutLabelStops(right)), lexicon);
}
