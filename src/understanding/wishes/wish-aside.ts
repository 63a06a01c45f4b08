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
export const clausesTried = 3;

/**
 * `topped up the dwc 5 l, only 200 ml pH down left`, `bought 5 l of A and topped up the bench with 2 cans`: a wish
 * about the stock at the end or the beginning of a message, and the rest; null where it has no such part.
 */
export function stockAside(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): WishAside | null {
  const cuts = cutsOf(text);
  const ofStock = (said: string): Wish | null => {
    const wish = said === '' ? null : readWish(said, greenhouse, member, atMs);
    return wish && isOfStock(wish) ? wish : null;
  };
  for (const { before, behind } of cuts.slice(-clausesTried).toReversed()) {
    const wish = before === '' ? null : ofStock(behind);
    if (wish) return { report: before, wish, said: behind };
  }
  for (const { before, behind } of cuts.slice(0, clausesTried)) {
    const wish = behind === '' ? null : ofStock(before);
    if (wish) return { report: behind, wish, said: before };
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

/** Every place where a clause may end. */
export function cutsOf(text: string): readonly CutInTwo[] {
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
