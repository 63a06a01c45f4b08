import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import { longestWish, readWish } from './read-wish.ts';
import type { Wish } from './wish.ts';
import { clausesTried, cutsOf } from './wish-aside.ts';

type StockWish = Extract<Wish, { kind: 'change' }>;

/** So many words of the first purchase go for the second as well: `we have bought 5 l of`. */
const mostWordsShared = 6;
/** And so many at the end of the second for the first: `… gekauft`. */
const mostEndingsShared = 2;

/**
 * `bought 5 l A and 5 l B`, `we bought 5 l of A and B`: a purchase of one product and of another, or one count of
 * both. Null: the message is no such thing.
 */
export function stockOfTwo(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): readonly [StockWish, StockWish] | null {
  const read = (said: string): StockWish | null => {
    const wish = readWish(said, greenhouse, member, atMs);
    return wish?.kind === 'change' && wish.change.kind.startsWith('stock-') ? wish : null;
  };
  if (text.length > longestWish) return null;
  for (const { before, behind } of cutsOf(text).slice(0, clausesTried)) {
    const words = wordsOf(before);
    const endings = wordsOf(behind);
    let first: StockWish | null = null;
    for (let shared = 0; !first && shared <= Math.min(mostEndingsShared, endings.length); shared++)
      first = read([before, ...endings.slice(endings.length - shared)].join(' '));
    if (!first) continue;
    for (let shared = 0; shared <= Math.min(mostWordsShared, words.length); shared++) {
      const second = read([...words.slice(0, shared), behind].join(' '));
      if (second && isOfAnother(first, second)) return [first, second];
    }
  }
  return null;
}

function wordsOf(text: string): readonly string[] {
  return text.split(/\s+/u).filter((word) => word !== '');
}

/** The same said of another product. */
function isOfAnother({ change: one }: StockWish, { change: other }: StockWish): boolean {
  return (
    one.kind === other.kind &&
    'product' in one &&
    'product' in other &&
    one.product !== other.product
  );
}
