import type { Lexicon } from './lexicon.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';
import type { Unit } from './word-list.ts';

/**
 * `2 cans in the bench, jug to the jars`, `put can in the bench`, `jug and a half went in the jars`: a container of this
 * greenhouse that nobody counts is one of it, where it stands as an amount does.
 */
export function countAlone(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  const { containers } = lexicon;
  if (!terms.some((term) => term.kind === 'word' && containers.has(term.text))) return terms;
  const counted: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const term = terms[i]!;
    const unit = term.kind === 'word' ? containers.get(term.text) : undefined;
    const half = unit && means(terms[i + 1], 'half-more') ? 1 : 0;
    if (unit && isAmount(terms, i, i + half)) {
      counted.push(oneOf(terms, i, i + half, unit));
      i += half;
    } else counted.push(term);
  }
  return counted;
}

function isAmount(terms: readonly Term[], from: number, to: number): boolean {
  const before = terms[from - 1];
  const opens = before === undefined || before.kind === 'stop';
  if (opens) return goesIntoSystem(terms, to) || (to > from && isOfAdding(terms[to + 1]));
  if (isOfAdding(before)) return goesIntoSystem(terms, to);
  // `topped up the jars with jug`.
  if (means(before, 'with')) return isEnd(terms[to + 1]) && saysAdded(terms, from - 1);
  // `bench 2 cans, jars jug`.
  return before.kind === 'name' && isEnd(terms[to + 1]) && isOneForOne(terms, from - 1);
}

/** `to the jars`, and nothing more but the verb of it. */
function goesIntoSystem(terms: readonly Term[], i: number): boolean {
  let at = i + 1;
  if (means(terms[at], 'of') && means(terms[at + 1], 'solution')) at += 2;
  // `jug went to the jars`: its place is part of the verb.
  if (isOfAdding(terms[at]) || means(terms[at], 'took')) at++;
  else if (!isWhereTo(terms[at])) return false;
  if (isWhereTo(terms[at])) at++;
  while (means(terms[at], 'article')) at++;
  if (terms[at]?.kind !== 'name') return false;
  at++;
  while (isOfAdding(terms[at]) || means(terms[at], 'filler', 'now')) at++;
  return isEnd(terms[at]);
}

function isWhereTo(term: Term | undefined): boolean {
  return means(term, 'place') && !means(term, 'from', 'of', 'with', 'at');
}

/** A name and an amount were told before it, and it is a name and its container. */
function isOneForOne(terms: readonly Term[], name: number): boolean {
  const cut = means(terms[name - 1], 'article') ? name - 2 : name - 1;
  if (terms[cut]?.kind !== 'stop') return false;
  const before = terms[cut - 1];
  return (
    before?.kind === 'measure' && before.measure.unit !== null && 'litres' in before.measure.unit
  );
}

function saysAdded(terms: readonly Term[], to: number): boolean {
  for (let i = to - 1; i >= 0 && terms[i]!.kind !== 'stop'; i--)
    if (isOfAdding(terms[i])) return true;
  return false;
}

function isOfAdding(term: Term | undefined): boolean {
  return means(term, 'add', 'top-up', 'fill', 'refill', 'add-plainly', 'goes-in');
}

function isEnd(term: Term | undefined): boolean {
  return term === undefined || term.kind === 'stop';
}

function oneOf(terms: readonly Term[], from: number, to: number, unit: Unit): MeasureTerm {
  const [first, last] = [terms[from]!, terms[to]!];
  const text = from === to ? first.text : `${first.text} ${last.text}`;
  return measureTerm(
    { from: first.from, to: last.to, text, glued: first.glued },
    {
      values: [from === to ? 1 : 1.5],
      unit,
      approximate: false,
      bound: false,
      share: false,
      disputedBy: undefined,
      written: text,
      whole: from === to,
      decimals: 0,
    },
  );
}
