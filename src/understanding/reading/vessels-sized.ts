import { isVolume, litresFactor, unitIs } from '../numbers/quantity-of-measure.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** Nobody carries more than this at a time, in litres. */
const largestVesselL = 30;

/** `3 cans of 10 l each`, `2 cans at 8 l`: how many vessels, and how much is in one, tell one amount. */
export function sizeVessels(terms: readonly Term[]): readonly Term[] {
  const sized: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const to = endOfSize(terms, i);
    sized.push(to === null ? terms[i]! : asOne(terms, i, to));
    if (to !== null) i = to;
  }
  return sized;
}

/** The last term of how much is in one of the vessels counted at `i`; null: it is not told. */
function endOfSize(terms: readonly Term[], i: number): number | null {
  const count = terms[i];
  if (count?.kind !== 'measure' || !isCounted(count)) return null;
  let at = i + 1;
  while (means(terms[at], 'each', 'of', 'at', 'to', 'with', 'article')) at++;
  const size = terms[at];
  if (size?.kind !== 'measure' || !isSize(size)) return null;
  if (means(terms[at + 1], 'each')) return at + 1;
  const between = terms.slice(i + 1, at);
  const isEach = between.some((term) => means(term, 'each'));
  const isAt = between.length === 1 && means(between[0], 'at', 'of') && !means(between[0], 'to');
  return isEach || isAt ? at : null;
}

function isCounted({ measure }: MeasureTerm): boolean {
  const isVessel =
    (measure.unit !== null && 'litres' in measure.unit) || unitIs(measure, 'unknown');
  return isVessel && measure.values.length === 1;
}

function isSize({ measure }: MeasureTerm): boolean {
  if (!isVolume(measure) || (measure.unit && 'litres' in measure.unit)) return false;
  return litresFactor(measure)! * measure.values[0]! <= largestVesselL;
}

function asOne(terms: readonly Term[], from: number, to: number): MeasureTerm {
  const parts = terms.slice(from, to + 1);
  const [count, size] = parts.filter((term) => term.kind === 'measure');
  const { measure } = size!;
  const values = measure.values.map((value) => value * count!.measure.values[0]!);
  const text = parts.map((part) => part.text).join(' ');
  return { ...count!, to: terms[to]!.to, text, measure: { ...measure, values, written: text } };
}
