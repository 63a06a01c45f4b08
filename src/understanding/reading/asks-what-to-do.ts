import type { Vocabulary } from '../vocabulary/vocabulary.ts';

/** As many words say it. */
export const wordsOfAsking = 3;

/** `what do I`, `was muss ich`: what is asked, and that it is of oneself, so that it opens a question wherever it stands. */
export function asksWhatToDo(
  words: readonly string[],
  at: number,
  { asksOneself }: Vocabulary,
): boolean {
  const said = words.slice(at, at + wordsOfAsking);
  return said.length === wordsOfAsking && asksOneself.includes(said.join(' '));
}
