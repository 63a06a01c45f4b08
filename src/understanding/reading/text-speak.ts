import type { Lexicon } from './lexicon.ts';
import type { Token } from './token.ts';

/** `l8r`, `b4`, `2nite`: digits that sound like a part of the word, and no figures. A system may be called so. */
export function withTextSpeak(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  const { textSpeak } = lexicon.own.vocabulary;
  const read: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const length = gluedFrom(tokens, at);
    const meant = textSpeak.get(textOf(tokens, at, length));
    if (meant !== undefined && !isName(tokens, at, length, lexicon)) {
      const last = tokens[at + length - 1]!;
      read.push({ ...tokens[at]!, kind: 'word', text: meant, to: last.to, values: [] });
    } else read.push(...tokens.slice(at, at + length));
    at += length;
  }
  return read;
}

/** How many tokens stand together without a blank. */
function gluedFrom(tokens: readonly Token[], at: number): number {
  let end = at + 1;
  while (tokens[end]?.glued && isPart(tokens[end]!) && isPart(tokens[end - 1]!)) end++;
  return end - at;
}

function isPart({ kind }: Token): boolean {
  return kind === 'word' || kind === 'number';
}

function textOf(tokens: readonly Token[], at: number, length: number): string {
  if (length === 1) return tokens[at]!.text;
  return tokens
    .slice(at, at + length)
    .map(({ text }) => text)
    .join('');
}

function isName(tokens: readonly Token[], at: number, length: number, { names }: Lexicon): boolean {
  const text = textOf(tokens, at, length);
  return names.some(({ words }) => words.join('') === text);
}
