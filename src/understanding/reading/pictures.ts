import type { Term } from './term.ts';

const picture = /^\p{Extended_Pictographic}+$/u;

/** `jars 💧 full`: a picture that means nothing to the reader parts nothing, where anything else is written. */
export function withoutPictures(terms: readonly Term[]): readonly Term[] {
  if (!terms.some(isPicture)) return terms;
  const plain = terms.filter((term) => !isPicture(term));
  return plain.length > 0 ? plain : terms;
}

function isPicture({ kind, text }: Term): boolean {
  return kind === 'mark' && picture.test(text);
}
