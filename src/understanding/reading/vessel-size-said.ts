import { stems } from '../names/inflection.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import type { Lexicon } from './lexicon.ts';
import { countOf } from './shared-container.ts';
import { type MeasureTerm, means, type Term } from './term.ts';
import { isVesselName } from './vessels-counted.ts';
import { isSize, mostVessels } from './vessels-sized.ts';

/** A clause that says how much is in one of the vessels: terms `from` up to but not including `to`. */
interface SizeSaid {
  readonly from: number;
  readonly to: number;
  readonly size: MeasureTerm;
  /** What the vessel is called there. */
  readonly vessel: string;
  /** Whether it is one of the greenhouse's own containers, and so no system's reservoir. */
  readonly isKnown: boolean;
}

/**
 * `a can is 9 litres and I put two in the bench`: what is counted is the vessel whose size the message tells, and
 * neither litres nor the can that this greenhouse knows.
 */
export function countInSizeSaid(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  const said = sizeSaid(terms, lexicon);
  if (!said) return terms;
  const counted = terms.map((term, i) =>
    i >= said.from && i < said.to ? term : (inVessels(terms, i, said, lexicon) ?? term),
  );
  const isCounted = counted.some((term, i) => term !== terms[i]);
  if (!isCounted && !isOnlyExplained(terms, said)) return terms;
  const to = terms[said.to]?.kind === 'stop' ? said.to + 1 : said.to;
  const from = to === said.to && terms[said.from - 1]?.kind === 'stop' ? said.from - 1 : said.from;
  return [...counted.slice(0, from), ...counted.slice(to)];
}

/** `my can is 9 l, put 5 l in the bench`: nothing is counted in it, and what else is told has its own numbers. */
function isOnlyExplained(terms: readonly Term[], { from, to, isKnown }: SizeSaid): boolean {
  return isKnown && terms.some(({ kind }, i) => kind === 'measure' && (i < from || i >= to));
}

function sizeSaid(terms: readonly Term[], lexicon: Lexicon): SizeSaid | null {
  if (!terms.some((term) => term.kind === 'measure' && isSizeTerm(term))) return null;
  let from = 0;
  while (from <= terms.length) {
    let to = from;
    while (to < terms.length && terms[to]!.kind !== 'stop') to++;
    const said = sizeIn(terms, from, to, lexicon);
    if (said) return said;
    from = to + 1;
  }
  return null;
}

function isSizeTerm(term: MeasureTerm): boolean {
  return isSize(term) || term.measure.disputedBy !== undefined;
}

/** `a can is 9 l`, `the bucket holds 8 l`, `it's a 9 l can`, `eine Kanne sind 9 l`, and nothing else in the clause. */
function sizeIn(
  terms: readonly Term[],
  from: number,
  to: number,
  lexicon: Lexicon,
): SizeSaid | null {
  let at = from;
  const isGoingIn = means(terms[at], 'place');
  if (isGoingIn) at++;
  while (at < to && isSmall(terms[at]!)) at++;
  const [first, second] = [terms[at], terms[at + 1]];
  const whole = { from, to };
  // `die Kanne hat noch 3 l`: what is in it, and not how large it is.
  const saysHowLarge = !means(second, 'has') || means(second, 'capacity');
  const isKnown = first?.kind === 'measure' || (saysHowLarge && isContainer(first, lexicon));
  if (first?.kind === 'measure' && isSize(first) && means(second, 'vessel'))
    return isEnd(terms, at + 2, to) && !isGoingIn
      ? { size: first, vessel: second!.text, isKnown: false, ...whole }
      : null;
  const vessel = vesselAt(first, lexicon);
  if (vessel === null) return null;
  if (first?.kind === 'measure' && first.measure.disputedBy && at + 1 === to)
    return { size: { ...first, measure: first.measure.disputedBy }, vessel, isKnown, ...whole };
  if (!means(second, ...(isGoingIn ? (['runs'] as const) : saysSize))) return null;
  let last = at + 2;
  while (last < to && isSmall(terms[last]!)) last++;
  const size = terms[last];
  if (size?.kind !== 'measure' || !isSize(size)) return null;
  return isEnd(terms, last + 1, to) ? { size, vessel, isKnown, ...whole } : null;
}

/** `my can`: one that this greenhouse measures by. */
function isContainer(term: Term | undefined, { units }: Lexicon): boolean {
  return term?.kind === 'word' && units.get([term.text]) !== undefined;
}

const saysSize = ['link', 'has', 'capacity', 'is-it'] as const;

function isSmall(term: Term): boolean {
  return (
    means(term, 'article', 'pronoun', 'filler', 'about', 'each', 'self', 'of') &&
    !means(term, 'vessel')
  );
}

function isEnd(terms: readonly Term[], from: number, to: number): boolean {
  return terms.slice(from, to).every((term) => isSmall(term) || means(term, 'vessel', 'add'));
}

/** What one vessel is called: `can`, `a can`, `bucket`; null: it is none. */
function vesselAt(term: Term | undefined, lexicon: Lexicon): string | null {
  if (means(term, 'vessel') || isVesselName(term, lexicon)) return term!.text;
  if (term?.kind !== 'measure') return null;
  const { unit, values } = term.measure;
  const isOne = unit !== null && 'litres' in unit && values.length === 1 && values[0] === 1;
  return isOne ? lastWord(term.text) : null;
}

function lastWord(text: string): string {
  return text.slice(text.lastIndexOf(' ') + 1);
}

/** An amount counted in the vessels, in the unit that their size was told in; null: it is something else. */
function inVessels(
  terms: readonly Term[],
  i: number,
  { size, vessel }: SizeSaid,
  lexicon: Lexicon,
): MeasureTerm | null {
  const term = terms[i]!;
  const count = isOfVessel(term, vessel, lexicon)
    ? term.measure.values[0]!
    : isCountGiven(terms, i)
      ? countOf(term, lexicon, false)
      : null;
  if (count === null || count > mostVessels) return null;
  const { from, to, text, glued } = term;
  const values = size.measure.values.map((litres) => litres * count);
  return {
    kind: 'measure',
    from,
    to,
    text,
    glued,
    measure: { ...size.measure, values, written: `${text} × ${size.text}`, whole: false },
  };
}

/** `2 cans`, of the vessel called a can. */
function isOfVessel(term: Term, vessel: string, lexicon: Lexicon): term is MeasureTerm {
  if (term.kind !== 'measure' || term.measure.unit === null || isSize(term)) return false;
  if (term.measure.disputedBy || term.measure.values.length > 1) return false;
  const { endings } = lexicon.own.vocabulary;
  const called = [lastWord(term.text), ...stems(lastWord(term.text), endings)];
  return [vessel, ...stems(vessel, endings)].some((each) => called.includes(each));
}

/** `put two in`, `gave the jars two`, `hab zwei in den Tisch`, `two of them in the bench`: a bare number of what was given. */
function isCountGiven(terms: readonly Term[], i: number): boolean {
  const [before, term, after] = [terms[i - 1], terms[i]!, terms[i + 1]];
  if (term.kind === 'measure' ? !isBare(term.measure) : !means(term, 'pronoun')) return false;
  if (means(after, 'of-it')) return true;
  const isEnd = after === undefined || after.kind === 'stop' || after.kind === 'name';
  if (!isEnd && !means(after, 'place', 'add', 'top-up', 'filler', 'received')) return false;
  // `the bottle is 1.5 l, four in the dwc`: the count opens the clause, and leads to a system.
  const opens = (before === undefined || before.kind === 'stop') && means(after, 'place');
  const isLed =
    opens ||
    before?.kind === 'name' ||
    means(before, 'add', 'top-up', 'has', 'self', 'took', 'another');
  return isLed && isGivenIn(terms, i);
}

/** A verb of adding in its clause, or a system that it leads to. */
function isGivenIn(terms: readonly Term[], i: number): boolean {
  let [from, to] = [i, i + 1];
  while (from > 0 && terms[from - 1]!.kind !== 'stop') from--;
  while (to < terms.length && terms[to]!.kind !== 'stop') to++;
  const isAdded = terms.slice(from, to).some((term) => means(term, 'add', 'top-up', 'fill'));
  const isInto =
    means(terms[i + 1], 'place') && terms.slice(i, to).some(({ kind }) => kind === 'name');
  return isAdded || isInto;
}
