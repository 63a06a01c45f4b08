/** How German is written where a keyboard has no umlauts, and how some write it in a hurry. */
const twoLetters: readonly (readonly [string, string])[] = [
  ['ä', 'ae'],
  ['ö', 'oe'],
  ['ü', 'ue'],
  ['ß', 'ss'],
];
const oneLetter: readonly (readonly [string, string])[] = [
  ['ä', 'a'],
  ['ö', 'o'],
  ['ü', 'u'],
  ['ß', 'ss'],
];

/**
 * Adds to every phrase its spelling without umlauts: `für` → `fuer`, and `fur` where that is no other
 * word of the language (`schön` is not also read as `schon`).
 */
export function spelled(phrases: readonly string[], words: ReadonlySet<string>): readonly string[] {
  return [
    ...new Set(
      phrases.flatMap((phrase) => [phrase, written(phrase, twoLetters), ...bare(phrase, words)]),
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
    const plain = written(word, oneLetter);
    return plain !== word && words.has(plain) ? word : plain;
  });
  return [spelling.join(' ')];
}

function written(text: string, letters: readonly (readonly [string, string])[]): string {
  return letters.reduce((so, [letter, instead]) => so.replaceAll(letter, instead), text);
}
