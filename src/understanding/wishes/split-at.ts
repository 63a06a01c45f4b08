import type { Token } from '../reading/token.ts';

/** What stands between words that join: `litres and °F`; a part is empty where two of them meet. */
export function splitAt(words: readonly Token[], joiners: readonly string[]): readonly Token[][] {
  const parts: Token[][] = [[]];
  for (const word of words) {
    if (joiners.includes(word.text)) parts.push([]);
    else parts.at(-1)!.push(word);
  }
  return parts;
}
