import { isLabel } from '../moods/clause-kinds.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import type { Term } from './term.ts';

/** `buckets. ph. 5.9`, as it is spoken into a machine: a full stop between a quantity that ends its saying and its number cuts nothing. */
export function withoutLabelStops(terms: readonly Term[]): readonly Term[] {
  if (!terms.some((_, i) => isLabelStop(terms, i))) return terms;
  return terms.filter((_, i) => !isLabelStop(terms, i));
}

function isLabelStop(terms: readonly Term[], i: number): boolean {
  const [stop, value] = [terms[i], terms[i + 1]];
  if (i === 0 || stop?.kind !== 'stop' || stop.cut !== 'sentence' || value?.kind !== 'measure')
    return false;
  const after = terms[i + 2];
  const isAlone = after === undefined || after.kind === 'stop';
  // `bench ph. 6.2 ec 2.4`: no count of anything has decimals.
  const isReading = isAlone || value.measure.decimals > 0;
  return (
    isReading && isBare(value.measure) && isLabel(terms[i - 1]) && opensWithLabel(terms, i - 1)
  );
}

/** Before the label nothing is told in its saying that the number could not be of. */
function opensWithLabel(terms: readonly Term[], label: number): boolean {
  return terms[label - 1]?.kind !== 'word';
}
