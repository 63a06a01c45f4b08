import { onceFor } from '../reading/once-for.ts';
import type { WishWords } from '../vocabulary/wishes/wish-words.ts';
import { type Pattern, patternOf } from './pattern.ts';
import { PatternIndex } from './pattern-index.ts';
import type { WishKind } from './wish.ts';

interface WishPattern {
  readonly kind: WishKind;
  readonly pattern: Pattern;
}

/** Every pattern of a language, in the order in which they are tried. */
export const wishPatterns = onceFor((words: WishWords) => {
  const kinds = Object.keys(words.patterns) as WishKind[];
  return new PatternIndex(
    kinds.flatMap((kind) =>
      words.patterns[kind].map((text): WishPattern => ({ kind, pattern: patternOf(text) })),
    ),
  );
});
