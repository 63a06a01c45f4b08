import type { WishWords } from '../vocabulary/wishes/wish-words.ts';
import { type Pattern, patternOf } from './pattern.ts';
import { PatternIndex } from './pattern-index.ts';
import type { WishKind } from './wish.ts';

interface WishPattern {
  readonly kind: WishKind;
  readonly pattern: Pattern;
}

// Filled when a language's first message is read.
const known = new WeakMap<WishWords, PatternIndex<WishPattern>>();

/** Every pattern of a language, in the order in which they are tried. */
export function wishPatterns(words: WishWords): PatternIndex<WishPattern> {
  let patterns = known.get(words);
  if (!patterns) {
    const kinds = Object.keys(words.patterns) as WishKind[];
    patterns = new PatternIndex(
      kinds.flatMap((kind) =>
        words.patterns[kind].map((text) => ({ kind, pattern: patternOf(text) })),
      ),
    );
    known.set(words, patterns);
  }
  return patterns;
}
