import { stems } from '../names/inflection.ts';
import { unknownUnit } from '../numbers/quantity-of-measure.ts';
import type { Lexicon } from './lexicon.ts';
import { measureTerm } from './make-term.ts';
import { isMark, type MeasureTerm, means, type NameTerm, type Term } from './term.ts';

/**
 * `three buckets and a jug into the bench`, `2 buckets into the bench`: vessels that a system happens to be called
 * after, where they are counted beside a container or lead to another system. How large they are nobody knows.
 */
export function countVessels(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  const counted: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const to = terms[i]!.kind === 'measure' ? endOfVessels(terms, i, lexicon) : null;
    counted.push(to === null ? terms[i]! : asOne(terms, i, to));
    if (to !== null) i = to;
  }
  return counted;
}

/** The last term of an amount told in such vessels that starts at `i`; null if none does. */
function endOfVessels(terms: readonly Term[], i: number, lexicon: Lexicon): number | null {
  const joint = (at: number) =>
    isMark(terms[at], '+') ||
    (terms[at]?.kind === 'stop' && (terms[at].cut === 'and' || terms[at].cut === 'then'));
  if (isContainer(terms[i]) && joint(i + 1) && areVessels(terms, i + 2, lexicon)) return i + 3;
  if (!areVessels(terms, i, lexicon)) return null;
  if (joint(i + 2) && isContainer(terms[i + 3])) return i + 3;
  return leadsToAnother(terms, i + 1) || leadsToSize(terms, i + 2) ? i + 1 : null;
}

function isContainer(term: Term | undefined): boolean {
  return term?.kind === 'measure' && term.measure.unit !== null && 'litres' in term.measure.unit;
}

/** A whole number and a plural name that is a word for vessels; not `dwc 3 buckets 5`, where names lead. */
function areVessels(terms: readonly Term[], i: number, lexicon: Lexicon): boolean {
  const [before, count, name] = [terms[i - 1], terms[i], terms[i + 1]];
  if (before?.kind === 'name' || count?.kind !== 'measure' || name?.kind !== 'name') return false;
  if (count.measure.unit !== null || !count.measure.whole || name.everyday) return false;
  return stemsOf(name, lexicon).some((stem) => stem !== name.text && isVesselWord(stem, lexicon));
}

/** A name that is a word for vessels as well, and leads to another system. */
export function isVesselNamed(terms: readonly Term[], i: number, lexicon: Lexicon): boolean {
  return isVesselName(terms[i], lexicon) && leadsToAnother(terms, i);
}

/** A name that is a word for vessels as well. */
export function isVesselName(name: Term | undefined, lexicon: Lexicon): boolean {
  if (name?.kind !== 'name' || name.everyday) return false;
  return [name.text, ...stemsOf(name, lexicon)].some((stem) => isVesselWord(stem, lexicon));
}

function stemsOf({ text }: NameTerm, lexicon: Lexicon): readonly string[] {
  return stems(text, lexicon.own.vocabulary.endings);
}

function isVesselWord(word: string, lexicon: Lexicon): boolean {
  return lexicon.own.phrases.get([word])?.concepts.has('vessel') === true;
}

/** `3 buckets of 10 litres each`: how much is in one. */
function leadsToSize(terms: readonly Term[], i: number): boolean {
  return means(terms[i], 'of') && terms[i + 1]?.kind === 'measure' && means(terms[i + 2], 'each');
}

/** `buckets into the bench`: another system follows, where something can be put in. */
function leadsToAnother(terms: readonly Term[], i: number): boolean {
  let j = i + 1;
  if (!means(terms[j], 'place') || means(terms[j], 'from', 'of')) return false;
  j++;
  while (means(terms[j], 'article')) j++;
  const other = terms[j];
  return other?.kind === 'name' && other.systems.join() !== (terms[i] as NameTerm).systems.join();
}

function asOne(terms: readonly Term[], from: number, to: number): MeasureTerm {
  const parts = terms.slice(from, to + 1);
  const count = parts.find((term) => term.kind === 'measure')!;
  const text = parts.map((part) => part.text).join(' ');
  const { from: start, glued } = count;
  const measure = { ...count.measure, unit: unknownUnit, written: text };
  return measureTerm({ from: start, to: terms[to]!.to, text, glued }, measure);
}
