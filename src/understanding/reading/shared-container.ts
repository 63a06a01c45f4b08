import type { Lexicon } from './lexicon.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** More than so many cans go into nothing at a time. */
const mostContainers = 20;

/** `bench 3 cans, buckets 2, gutters one`, `bench 12 cans dwc 2 gutters 3`: counts that stand for the container told before them. */
export function shareContainers(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  if (!terms.some(isOfContainers)) return terms;
  const shared: Term[] = [];
  for (const [i, term] of terms.entries()) {
    const before = told(shared, i);
    const next = terms[i + 1] ?? null;
    const isListed =
      before !== null && (endsList(terms, i + 1) || (isRow(terms, i) && next?.kind === 'name'));
    const another = isListed ? null : anotherBefore(shared, terms, i);
    const like = isListed ? before : another;
    const many = like && asMany(term, like, lexicon, another !== null);
    const last = shared.length - 3;
    if (many && another && another === shared[last] && areOneAmount(terms, shared[last + 1], many))
      shared.splice(last, 3, together(another, many));
    else shared.push(many ?? term);
  }
  return shared;
}

/** The containers told of the system before, in the same words: name and amount, or name, verb of adding and amount. */
function told(terms: readonly Term[], i: number): MeasureTerm | null {
  if (isRow(terms, i) && isOfContainers(terms[i - 2])) return terms[i - 2] as MeasureTerm;
  const likewise = toldLikewise(terms, i);
  if (likewise) return likewise;
  const name = terms[i - 1]?.kind === 'name' ? i - 1 : i - 2;
  const cut = behindArticle(terms, name);
  const before = terms[cut - 1];
  const verb = i - 1 - name;
  const isVerb =
    verb === 0 || (means(terms[i - 1], 'add') && terms[i - 1]!.text === terms[cut - 2]?.text);
  const isLike = terms[cut - 2 - verb]?.kind === 'name';
  const isListed = isVerb && terms[name]?.kind === 'name' && terms[cut]?.kind === 'stop' && isLike;
  return isListed && isOfContainers(before) ? before : null;
}

/** `the bench 2 cans, the jars 1`: what stands before a name and its article. */
function behindArticle(terms: readonly Term[], name: number): number {
  return means(terms[name - 1], 'article') ? name - 2 : name - 1;
}

/** `the gutters with 3 cans, the buckets with one and a half`: told of each system with the same small words. */
function toldLikewise(terms: readonly Term[], i: number): MeasureTerm | null {
  const isLed = means(terms[i - 1], 'with');
  let at = isLed ? i - 2 : i - 1;
  if (terms[at]?.kind !== 'name') return null;
  at = behindArticle(terms, at);
  if (terms[at]?.kind !== 'stop') return null;
  at -= means(terms[at - 1], 'add', 'top-up', 'fill') ? 2 : 1;
  const before = terms[at];
  if (!isOfContainers(before) || means(terms[at - 1], 'with') !== isLed) return null;
  const isNamed = terms[isLed ? at - 2 : at - 1]?.kind === 'name';
  return isNamed || opensList(terms, at) ? before : null;
}

/** `the bench took 2 cans`, `Tisch hat 2 Kannen gekriegt`: the first of a list tells the verb for all of it. */
function opensList(terms: readonly Term[], at: number): boolean {
  if (terms[at - 2]?.kind !== 'name') return false;
  const verb = terms[at - 1];
  return isOfAdding(verb) || (means(verb, 'has') && isOfAdding(terms[at + 1]));
}

/** `a jug and another half`, `eine Kanne und noch eine`: of the container that the clause before told. */
function anotherBefore(
  before: readonly Term[],
  terms: readonly Term[],
  i: number,
): MeasureTerm | null {
  const more = terms[i - 1];
  let cut = before.length - 2;
  if (!means(more, 'another') || before[cut]?.kind !== 'stop' || !endsList(terms, i + 1))
    return null;
  // `…, then another`: nothing stands between the comma and `then`.
  while (before[cut - 1]?.kind === 'stop') cut--;
  const { kind, text } = terms[i]!;
  // `noch halb` is what is left; `noch eine halbe` is one more.
  if (kind === 'measure' && !text.includes(' ') && !means(more, 'indefinite')) return null;
  const from = before.findLastIndex((term, n) => n < cut && term.kind === 'stop') + 1;
  const measures = before.slice(from, cut).filter((term) => term.kind === 'measure');
  const [only] = measures;
  return measures.length === 1 && isOfContainers(only) ? only : null;
}

/** `a jug and another half` is one and a half; of whole ones only where nobody says that they were added. */
function areOneAmount(terms: readonly Term[], joint: Term | undefined, more: MeasureTerm): boolean {
  const isJoined = joint?.kind === 'stop' && joint.cut === 'and';
  return isJoined && (!Number.isInteger(more.measure.values[0]) || !terms.some(isOfAdding));
}

function together(one: MeasureTerm, other: MeasureTerm): MeasureTerm {
  const text = `${one.text} + ${other.text}`;
  const values = [one.measure.values[0]! + other.measure.values[0]!];
  const { from, glued } = one;
  return measureTerm(
    { from, to: other.to, text, glued },
    { ...one.measure, values, written: text },
  );
}

function isOfAdding(term: Term | undefined): boolean {
  return means(term, 'add', 'top-up', 'fill');
}

/** Name and amount, name and number, and nothing that parts them. */
function isRow(terms: readonly Term[], i: number): boolean {
  return terms[i - 1]?.kind === 'name' && terms[i - 3]?.kind === 'name';
}

/** `bench one can and buckets two topped up`: the verb of both may close it. */
function endsList(terms: readonly Term[], i: number): boolean {
  const at = means(terms[i], 'top-up', 'add', 'fill') ? i + 1 : i;
  return isCut(terms[at] ?? null);
}

function isCut(term: Term | null | undefined): boolean {
  return term === null || term?.kind === 'stop';
}

function isOfContainers(term: Term | undefined): term is MeasureTerm {
  return term?.kind === 'measure' && term.measure.unit !== null && 'litres' in term.measure.unit;
}

function asMany(
  term: Term,
  like: MeasureTerm,
  lexicon: Lexicon,
  isMore = false,
): MeasureTerm | null {
  const count = countOf(term, lexicon, isMore);
  if (count === null || count > mostContainers) return null;
  const measure = {
    ...like.measure,
    values: [count],
    written: term.text,
    whole: true,
    share: false,
    decimals: 0,
  };
  return measureTerm(term, measure);
}

/** How many of something a term counts, by itself; null: it is no count. */
export function countOf(term: Term, lexicon: Lexicon, isMore: boolean): number | null {
  if (term.kind === 'word') {
    const number = lexicon.own.phrases.get([term.text])?.number ?? null;
    return number ?? (means(term, 'indefinite') ? 1 : null);
  }
  if (term.kind !== 'measure' || term.measure.unit !== null) return null;
  // `a half`, `eine halbe`: with its article it is of a thing, and no level.
  const isPart = term.measure.share && (isMore || term.text.includes(' '));
  const isCount = term.measure.whole || isPart || isHalvesInWords(term);
  return isCount && term.measure.values.length === 1 ? term.measure.values[0]! : null;
}

/** `one and a half`, `anderthalb`: more than one, and no figures that could be a reading's. */
function isHalvesInWords({ text, measure }: MeasureTerm): boolean {
  const [value] = measure.values;
  return value !== undefined && value > 1 && Number.isInteger(2 * value) && !/\d/u.test(text);
}
