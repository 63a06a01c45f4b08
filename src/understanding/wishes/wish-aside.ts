import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { languages, type Member } from '../../greenhouse/member.ts';
import { vocabularies } from '../vocabulary/languages.ts';
import { readWish } from './read-wish.ts';
import type { Wish } from './wish.ts';

/** A report, and the wish that stands beside it in the same message. */
export interface WishAside {
  readonly report: string;
  readonly wish: Wish;
  /** The words of the wish. */
  readonly said: string;
}

/** As many clauses from the end of the message, or from its beginning, are looked at. */
const clausesTried = 3;

/**
 * `topped up the dwc 5 l, only 200 ml pH down left`: the last clauses of a message where they are a wish about the
 * stock, and what goes before them; null where the message has no such end.
 */
export function stockAside(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): WishAside | null {
  for (const cut of cutsOf(text).slice(-clausesTried).toReversed()) {
    const wish = cut.before === '' ? null : readWish(cut.behind, greenhouse, member, atMs);
    if (wish && isOfStock(wish)) return { report: cut.before, wish, said: cut.behind };
  }
  return null;
}

/**
 * `where's the pH down and gutters are 6.5 pH`, `dwc pH 5.9, how do I calibrate the pen`: a question to look something
 * up, and a report before or behind it. All ways of parting them, the shortest question first.
 */
export function* askedAsides(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): Generator<WishAside> {
  const cuts = cutsOf(text);
  const asks = (said: string): Wish | null => {
    const wish = said === '' ? null : readWish(said, greenhouse, member, atMs);
    return wish && lookedUp.includes(wish.kind) ? wish : null;
  };
  for (const { before, behind } of cuts.slice(0, clausesTried)) {
    const wish = behind === '' ? null : asks(before);
    if (wish) yield { report: behind, wish, said: before };
  }
  for (const { before, behind } of cuts.slice(-clausesTried).toReversed()) {
    const wish = before === '' ? null : asks(behind);
    if (wish) yield { report: before, wish, said: behind };
  }
}

/** What is looked up and told, and is about nothing that the report beside it tells. */
const lookedUp: readonly Wish['kind'][] = ['where', 'how-to', 'mixing', 'explain', 'stock'];

interface CutInTwo {
  readonly before: string;
  readonly behind: string;
}

function cutsOf(text: string): readonly CutInTwo[] {
  return [...text.matchAll(betweenClauses)].map(({ 0: cut, index }) => ({
    before: text.slice(0, index).trim(),
    behind: text.slice(index + cut.length).trim(),
  }));
}

const joints = languages
  .flatMap((language) => [...vocabularies[language].words.and, ...vocabularies[language].words.but])
  .filter((word) => /^\p{L}+$/u.test(word));
const betweenClauses = new RegExp(`[,.;!?]\\s+|\\n|\\s(?:${joints.join('|')})\\s`, 'giu');

function isOfStock(wish: Wish): boolean {
  if (wish.kind === 'stock-unsaid' || wish.kind === 'stock-opened') return true;
  return wish.kind === 'change' && wish.change.kind.startsWith('stock-');
}
