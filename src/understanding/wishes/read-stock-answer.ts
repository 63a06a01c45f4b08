import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import type { WishWords } from '../vocabulary/wishes/wish-words.ts';
import { type Pattern, patternOf } from './pattern.ts';
import { PatternIndex } from './pattern-index.ts';
import { readNumber } from './read-amounts.ts';
import { readSlot } from './read-slot.ts';
import { wishWorlds } from './wish-world.ts';

/** mL; or a number that nobody can tell the unit of. */
export type StockAnswer = { readonly mL: number } | 'no-unit';

/** What a member's words say how much of a product there is; null: nothing of it. */
export function readStockAnswer(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): StockAnswer | null {
  for (const world of wishWorlds(text, greenhouse, member, atMs)) {
    if (world.tokens.length === 0) continue;
    const fit = patternsOf(world.words).firstFit(world.tokens, (slot, words) =>
      readSlot(slot, words, world),
    );
    if (fit) {
      const times = (fit.slots.get('count') ?? 1) as number;
      return { mL: times * (fit.slots.get('amount') as number) };
    }
    if (readNumber(world.tokens, world) !== undefined) return 'no-unit';
  }
  return null;
}

// Filled when a language's first answer is read.
const known = new WeakMap<WishWords, PatternIndex<{ readonly pattern: Pattern }>>();

function patternsOf(words: WishWords): PatternIndex<{ readonly pattern: Pattern }> {
  let patterns = known.get(words);
  if (!patterns) {
    patterns = new PatternIndex(words.stockAnswers.map((text) => ({ pattern: patternOf(text) })));
    known.set(words, patterns);
  }
  return patterns;
}
