import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Measure } from '../numbers/measure.ts';
import {
  cmFactor,
  convert,
  gramsFactor,
  isBare,
  isVolume,
  litresFactor,
  litresPerUsGallon,
} from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { isMark, type MeasureTerm, means, type Term } from './term.ts';

/**
 * `2 cans (20 l)`, `2 cans = 20 l`, `70F, so 21C`: one amount said in two ways is one amount. Where the two
 * do not agree, the first keeps the second as what disputes it.
 */
export function saidOnce(terms: readonly Term[], units: SpokenUnits): readonly Term[] {
  let kept: Term[] | null = null;
  for (let i = 0; i < (kept ?? terms).length; i++) {
    const now: readonly Term[] = kept ?? terms;
    const sized = sizedAfter(now, i);
    if (sized) {
      kept ??= [...terms];
      kept.splice(i, 3, sized);
      continue;
    }
    const again = againAfter(now, i);
    if (!again) continue;
    const first = now[i] as MeasureTerm;
    const second = now[again.at] as MeasureTerm;
    const same = isSame(terms, i, first.measure, second.measure, units);
    if (same === null || (!same && !again.plainly)) continue;
    kept ??= [...terms];
    kept.splice(i + 1, again.end - i);
    if (!same) kept[i] = measureTerm(first, { ...first.measure, disputedBy: second.measure });
    i--;
  }
  return kept ?? terms;
}

/** `4 cans of 10 l`: how large each of them is, and no amount beside them; another size than theirs is disputed. */
function sizedAfter(terms: readonly Term[], i: number): MeasureTerm | null {
  const [first, of, second] = [terms[i], terms[i + 1], terms[i + 2]];
  if (first?.kind !== 'measure' || second?.kind !== 'measure' || !means(of, 'of')) return null;
  const { unit } = first.measure;
  const size = litresOf(second.measure);
  if (!unit || !('litres' in unit) || size === null) return null;
  if (near(unit.litres, size, tolerance * size)) return first;
  const inAll = second.measure.values.map((each) => each * value(first.measure));
  const disputedBy = { ...second.measure, values: inAll };
  return measureTerm(first, { ...first.measure, disputedBy });
}

interface Again {
  readonly at: number;
  /** The last term that says the same again. */
  readonly end: number;
  /** Said to be the same, by a bracket, a sign or a word, and not by standing beside it alone. */
  readonly plainly: boolean;
}

/** The measure after the one at `i` with nothing but a bracket, a sign or words of saying again between them. */
function againAfter(terms: readonly Term[], i: number): Again | null {
  if (terms[i]?.kind !== 'measure') return null;
  let j = i + 1;
  let bracket = false;
  let plainly = false;
  let comma = false;
  for (; j < terms.length && terms[j]!.kind !== 'measure'; j++) {
    const term = terms[j]!;
    if (isBracket(term, '(') && !bracket) bracket = plainly = true;
    else if (term.kind === 'stop' && term.cut === 'comma' && !comma && term.text === ',')
      comma = true;
    else if (isMark(term, '=', '≈', '~') || means(term, 'that-is')) plainly = true;
    else if (!(plainly || comma) || !means(term, 'about', 'filler')) return null;
  }
  if (j >= terms.length || j === i + 1) return null;
  let end = j;
  if (bracket) {
    while (means(terms[end + 1], 'about', 'ish', 'filler', 'in-all')) end++;
    if (!isBracket(terms[end + 1], ')')) return null;
    return { at: j, end: end + 1, plainly };
  }
  return ownsWhatFollows(terms[end + 1]) ? null : { at: j, end, plainly };
}

export function isBracket(term: Term | undefined, which: '(' | ')'): boolean {
  return term?.kind === 'stop' && term.text === which;
}

/** `2 cans, 20 ml A`, `20 l, 95 l left`: the second amount is of something else. */
function ownsWhatFollows(term: Term | undefined): boolean {
  return (
    term?.kind === 'word' &&
    (term.word.product !== null ||
      term.word.shyProduct !== null ||
      means(term, 'left-over', 'of', 'another', 'down', 'below'))
  );
}

/** Units are rounded when they are said in another: so far they may differ. */
const tolerance = 0.04;
const degreesTolerance = 0.6;

/** Whether two measures are one amount; null where they cannot be compared, or are written alike. */
function isSame(
  terms: readonly Term[],
  i: number,
  first: Measure,
  second: Measure,
  units: SpokenUnits,
): boolean | null {
  if (isBare(second)) return null;
  if (isVolume(second)) {
    const a = isBare(first) ? bareLitres(terms, i, first, units) : litresOf(first);
    return a === null ? null : near(a, litresOf(second)!, tolerance * a);
  }
  for (const factor of [cmFactor, gramsFactor]) {
    const [a, b] = [factor(first), factor(second)];
    if (b !== null)
      return a === null
        ? null
        : near(value(first) * a, value(second) * b, tolerance * value(first) * a);
  }
  for (const quantity of ['water-temperature', 'ec'] as const) {
    const b = convert(quantity, second, units);
    const a = convert(quantity, first, units);
    if (!b || b.unitOpen) continue;
    if (!a || a.unitOpen || (isBare(first) && !isLabelled(terms, i, quantity))) return null;
    const [x, y] = [a.values[0]!, b.values[0]!];
    return near(x, y, quantity === 'ec' ? tolerance * x : degreesTolerance);
  }
  return null;
}

function value({ values }: Measure): number {
  return values[0]!;
}

function litresOf(measure: Measure): number | null {
  const factor = litresFactor(measure);
  return factor === null ? null : value(measure) * factor;
}

function bareLitres(
  terms: readonly Term[],
  i: number,
  first: Measure,
  units: SpokenUnits,
): number | null {
  const added = terms
    .slice(Math.max(0, i - 4), i)
    .some((term) => means(term, 'top-up', 'add', 'fill'));
  return added ? value(first) * (units.volume === 'L' ? 1 : litresPerUsGallon) : null;
}

function isLabelled(
  terms: readonly Term[],
  i: number,
  quantity: 'water-temperature' | 'ec',
): boolean {
  const label = quantity === 'ec' ? 'ec' : 'temperature';
  return terms.slice(Math.max(0, i - 3), i).some((term) => means(term, label));
}

function near(a: number, b: number, within: number): boolean {
  return Math.abs(a - b) <= Math.abs(within) + 1e-9;
}

/**
 * `bench (40 l)`, `ec 2.2 (ish)`, `topped up (jars) 3 l`: brackets round an amount, a name, a probe or a word that
 * colours a number part nothing. Round anything that could be a saying of its own they stay.
 */
export function withoutBrackets(terms: readonly Term[]): readonly Term[] {
  if (!terms.some((term) => isBracket(term, '('))) return terms;
  const dropped = new Set<number>();
  terms.forEach((term, open) => {
    if (!isBracket(term, '(')) return;
    const close = terms.findIndex((other, j) => j > open && isBracket(other, ')'));
    if (close < 0 || close === open + 1) return;
    const inside = terms.slice(open + 1, close);
    if (inside.every(isPlainAmount)) dropped.add(open).add(close);
  });
  return terms.filter((_, i) => !dropped.has(i));
}

function isPlainAmount(term: Term): boolean {
  return (
    term.kind === 'name' ||
    (term.kind === 'measure' && term.measure.unit !== null) ||
    means(term, 'about', 'ish', 'each', 'in-all') ||
    (term.kind === 'word' &&
      (term.word.product !== null || term.word.shyProduct !== null || term.word.probe !== null))
  );
}
