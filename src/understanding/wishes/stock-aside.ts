import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { languages, type Member } from '../../greenhouse/member.ts';
import { vocabularies } from '../vocabulary/languages.ts';
import { readWish } from './read-wish.ts';
import type { Wish } from './wish.ts';

/** A report, and what is said of the stock after it. */
interface StockAside {
  readonly report: string;
  readonly wish: Wish;
}

/** As many of the last clauses are looked at. */
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
): StockAside | null {
  const cuts = [...text.matchAll(betweenClauses)].slice(-clausesTried);
  for (const { 0: cut, index } of cuts.toReversed()) {
    const report = text.slice(0, index).trim();
    const wish =
      report === '' ? null : readWish(text.slice(index + cut.length), greenhouse, member, atMs);
    if (wish && isOfStock(wish)) return { report, wish };
  }
  return null;
}

const joints = languages
  .flatMap((language) => [...vocabularies[language].words.and, ...vocabularies[language].words.but])
  .filter((word) => /^\p{L}+$/u.test(word));
const betweenClauses = new RegExp(`[,.;!]\\s+|\\n|\\s(?:${joints.join('|')})\\s`, 'giu');

function isOfStock(wish: Wish): boolean {
  if (wish.kind === 'stock-unsaid' || wish.kind === 'stock-opened') return true;
  return wish.kind === 'change' && wish.change.kind.startsWith('stock-');
}
