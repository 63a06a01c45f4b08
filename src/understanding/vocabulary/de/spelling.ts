import { withOneLetter, withTwoLetters } from '../../reading/letters.ts';
import { asSpoken } from './dialect.ts';

/**
 * Adds to every phrase how the regions say it, and its spelling without umlauts: `für` → `fuer`, and `fur` where that is no other
 * word of the language (`schön` is not also read as `schon`).
 */
export function spelled(phrases: readonly string[], words: ReadonlySet<string>): readonly string[] {
  return [
    ...new Set(
      asSpoken(phrases).flatMap((phrase) => [
        phrase,
        withTwoLetters(phrase),
        ...bare(phrase, words),
      ]),
    ),
  ];
}

/** Every single word of the phrases. */
export function singleWords(phrases: Iterable<string>): Set<string> {
  const words = new Set<string>();
  for (const phrase of phrases) for (const word of phrase.split(' ')) words.add(word);
  return words;
}

function bare(phrase: string, words: ReadonlySet<string>): string[] {
  const spelling = phrase.split(' ').map((word) => {
    const plain = withOneLetter(word);
    return plain !== word && words.has(plain) ? word : plain;
  });
  return [spelling.join(' ')];
}
