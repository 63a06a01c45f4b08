import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import { onceFor } from '../reading/once-for.ts';
import type { WishWords } from '../vocabulary/wishes/wish-words.ts';
import { patternOf } from './pattern.ts';
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

const patternsOf = onceFor(
  (words: WishWords) =>
    new PatternIndex(words.stockAnswers.map((text) => ({ pattern: patternOf(text) }))),
);
