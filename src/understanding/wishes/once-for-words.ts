import type { WishWords } from '../vocabulary/wishes/wish-words.ts';

/** Makes something of a language's words when it is first wanted, and keeps it. */
export function onceForWords<T>(make: (words: WishWords) => T): (words: WishWords) => T {
  const made = new WeakMap<WishWords, { readonly value: T }>();
  return (words) => {
    const known = made.get(words) ?? { value: make(words) };
    made.set(words, known);
    return known.value;
  };
}
