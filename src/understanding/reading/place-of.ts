import type { Token } from './token.ts';

export function placeOf(tokens: readonly Token[], at: number, length: number) {
  const first = tokens[at]!;
  const last = tokens[at + length - 1]!;
  const text =
    length === 1
      ? first.text
      : tokens
          .slice(at, at + length)
          .map(({ text: piece }) => piece)
          .join(' ');
  return { from: first.from, to: last.to, text, glued: first.glued };
}
