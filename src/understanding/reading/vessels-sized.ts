import { stems } from '../names/inflection.ts';
import { isVolume, litresFactor, unitIs, unknownUnit } from '../numbers/quantity-of-measure.ts';
import type { Lexicon } from './lexicon.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';
import { isVesselName, isVesselNamed } from './vessels-counted.ts';

/** Nobody carries more than this at a time, in litres. */
const largestVesselL = 30;

/** `3 cans of 10 l each`, `2 cans at 8 l`: how many vessels, and how much is in one, tell one amount. */
export function sizeVessels(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  const sized: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const isSingle = terms[i]!.kind === 'measure' || means(terms[i], 'indefinite');
    const mayBegin = isSingle && !isInRow(terms, i);
    const to = mayBegin ? (endOfSize(terms, i, lexicon) ?? endOfOneSized(terms, i, lexicon)) : null;
    const open = to === null && mayBegin ? endOfOpenCount(terms, i, lexicon) : null;
    const end = to ?? open;
    if (end === null) sized.push(terms[i]!);
    else {
      const one = asOne(terms, i, end);
      sized.push(open === null ? one : measureTerm(one, { ...one.measure, unit: unknownUnit }));
      i = end;
    }
  }
  return sized;
}

/** `topped up 20 l bench 10 l buckets`: before each system its amount, though one is called like a vessel. */
function isInRow(terms: readonly Term[], i: number): boolean {
  const [before, amount, after] = [terms[i - 2], terms[i], terms[i + 2]];
  if (terms[i - 1]?.kind !== 'name' || terms[i + 1]?.kind !== 'name') return false;
  const isBetweenAmounts = before?.kind === 'measure' && isVolume(before.measure);
  const isOfVolume = amount?.kind === 'measure' && isVolume(amount.measure);
  return isBetweenAmounts && isOfVolume && (after === undefined || after.kind === 'stop');
}

/** `bench 6 8 l can added`: six of them, or a value and one can; how much was added has to be asked. */
function endOfOpenCount(terms: readonly Term[], i: number, lexicon: Lexicon): number | null {
  const [before, count, size, vessel] = [terms[i - 1], terms[i], terms[i + 1], terms[i + 2]];
  if (before?.kind !== 'name' || count?.kind !== 'measure' || size?.kind !== 'measure') return null;
  const isVessel = means(vessel, 'vessel') || isVesselName(vessel, lexicon);
  const { unit, whole, values } = count.measure;
  const isCount = unit === null && whole && values[0]! >= 2 && values[0]! <= mostVessels;
  return isCount && isSize(size) && isVessel && means(terms[i + 3], 'add', 'top-up') ? i + 2 : null;
}

/** The last term of how much is in one of the vessels counted at `i`; null: it is not told. */
function endOfSize(terms: readonly Term[], i: number, lexicon: Lexicon): number | null {
  const count = terms[i];
  if (count?.kind !== 'measure') return null;
  if (isCountOfSized(terms, i, lexicon)) return i + 2;
  if (isSizeOfNamed(terms, i, lexicon)) return i + 1;
  if (!isCounted(count)) return null;
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

/** How many vessels somebody carries at most. */
export const mostVessels = 20;

/** `two 8 l watering cans`: a count, how much is in one, and what it is; not `dwc 5 8 l can`, where a value may stand. */
function isCountOfSized(terms: readonly Term[], i: number, lexicon: Lexicon): boolean {
  const [before, count, size] = [terms[i - 1], terms[i], terms[i + 1]];
  if (count?.kind !== 'measure' || size?.kind !== 'measure') return false;
  const { unit, whole, values } = count.measure;
  if (unit !== null || !whole || !isSize(size)) return false;
  if (values.length > 1 || values[0]! < 2 || values[0]! > mostVessels) return false;
  if (before?.kind === 'measure' || means(before, 'ph', 'ec', 'temperature')) return false;
  const isGiven = means(before, 'add', 'top-up', 'has', 'took');
  if (!isGiven && (before?.kind === 'name' || means(before, 'at', 'link')))
    return isPlural(terms[i + 2], lexicon);
  return means(terms[i + 2], 'vessel') || isVesselName(terms[i + 2], lexicon);
}

/** `gave the gutters three 4 l bottles`: only of several one says so. */
function isPlural(term: Term | undefined, lexicon: Lexicon): boolean {
  if (term?.kind !== 'word' || !means(term, 'vessel')) return false;
  return stems(term.text, lexicon.own.vocabulary.endings).some(
    (stem) =>
      stem !== term.text && lexicon.own.phrases.get([stem])?.concepts.has('vessel') === true,
  );
}

/** `a 5 litre bucket into the gutters`: it carries the water, though a system is called so. */
function isSizeOfNamed(terms: readonly Term[], i: number, lexicon: Lexicon): boolean {
  const size = terms[i];
  return size?.kind === 'measure' && isSize(size) && isVesselNamed(terms, i + 1, lexicon);
}

/** `poured a 5 l bottle into the jars`, `8 l can added to the bench`: one that is given, and how much is in it. */
function endOfOneSized(terms: readonly Term[], i: number, lexicon: Lexicon): number | null {
  const at = means(terms[i], 'indefinite') ? i + 1 : i;
  const [size, vessel] = [terms[at], terms[at + 1]];
  if (size?.kind !== 'measure' || !isSize(size) || isHeldBack(terms[i - 1])) return null;
  if (!means(vessel, 'vessel') && !isVesselName(vessel, lexicon)) return null;
  const ofWater = means(terms[at + 2], 'solution') ? 1 : 0;
  const end = at + 1 + ofWater;
  const after = terms[end + 1];
  const isEnd = after === undefined || after.kind === 'stop';
  if (!isEnd && !means(after, 'place', 'add', 'top-up') && after.kind !== 'name') return null;
  return isGivenIn(terms, i, end, ofWater > 0) ? end : null;
}

/** `the 10 l bucket`, `from a 5 l bottle`, `6 8 l can`: what is spoken of, where it came from, or a number beside. */
function isHeldBack(before: Term | undefined): boolean {
  return before?.kind === 'measure' || means(before, 'article', 'from', 'with', 'numbered');
}

/** A verb of adding and a system stand in the same clause; a vessel may be put into a system without its water. */
function isGivenIn(terms: readonly Term[], from: number, to: number, isWater: boolean): boolean {
  let [start, end] = [from, to];
  while (start > 0 && terms[start - 1]!.kind !== 'stop') start--;
  while (end + 1 < terms.length && terms[end + 1]!.kind !== 'stop') end++;
  const beside = [...terms.slice(start, from), ...terms.slice(to + 1, end + 1)];
  const isGiven = beside.some(
    (term) =>
      means(term, 'top-up') || (means(term, 'add') && (isWater || !means(term, 'set', 'took'))),
  );
  return isGiven && beside.some(({ kind }) => kind === 'name');
}

function isCounted({ measure }: MeasureTerm): boolean {
  const isVessel =
    (measure.unit !== null && 'litres' in measure.unit) || unitIs(measure, 'unknown');
  return isVessel && measure.values.length === 1;
}

/** How much may be in a vessel that is carried, told in a unit of volume. */
export function isSize({ measure }: MeasureTerm): boolean {
  if (!isVolume(measure) || (measure.unit && 'litres' in measure.unit)) return false;
  return litresFactor(measure)! * measure.values[0]! <= largestVesselL;
}

function asOne(terms: readonly Term[], from: number, to: number): MeasureTerm {
  const parts = terms.slice(from, to + 1);
  const measures = parts.filter((term) => term.kind === 'measure');
  const [count, size] = [measures[0], measures.at(-1)];
  const { measure } = size!;
  const times = measures.length > 1 ? count!.measure.values[0]! : 1;
  const values = measure.values.map((value) => value * times);
  const text = parts.map((part) => part.text).join(' ');
  const { from: start, glued } = count!;
  return measureTerm(
    { from: start, to: terms[to]!.to, text, glued },
    { ...measure, values, written: text },
  );
}
