import type { Concept } from '../vocabulary/concept.ts';
import type { Lexicon } from './lexicon.ts';
import type { Token } from './token.ts';

const labels: readonly Concept[] = ['ph', 'ec', 'temperature'];

/**
 * `ph 5. 8`, `ph 5 .8`: a decimal that a thumb has put a blank into, joined, and `ec ,95`, whose nought was left
 * out. Only behind the word of a reading, and only where nothing after it could own the second number: `ph 5. 8 l added` stays two sentences.
 */
export function joinSplitDecimals(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  const joined: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const length = splitLength(tokens, at);
    const isEnd = () => endsThere(tokens[at + length]) || isNameAfter(tokens, at, length, lexicon);
    if (length > 0 && isLabelled(joined, lexicon) && isEnd()) {
      joined.push(decimalOf(tokens[at]!, tokens[at + length - 1]!));
      at += length;
    } else {
      joined.push(tokens[at]!);
      at += 1;
    }
  }
  return joined;
}

function splitLength(tokens: readonly Token[], at: number): number {
  const [whole, point, rest] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (isBareDecimal(tokens, at)) return 2;
  if (!isDigits(whole, 2)) return 0;
  if (point?.kind === 'number' && /^\.\d{1,2}$/.test(point.text)) return 2;
  const isPoint = point?.text === '.' && point.glued;
  return isPoint && isDigits(rest, 2) && !rest!.glued ? 3 : 0;
}

/** A comma that touches the number after it, and nothing before it. */
function isBareDecimal(tokens: readonly Token[], at: number): boolean {
  const [comma, number] = [tokens[at]!, tokens[at + 1]];
  return comma.text === ',' && !comma.glued && isDigits(number, 2) && number!.glued;
}

function isDigits(token: Token | undefined, most: number): boolean {
  return token?.kind === 'number' && token.text.length <= most && /^\d+$/.test(token.text);
}

/** The word of a reading straight before, but for a sign or one small word: `ph is 5. 8`. */
function isLabelled(before: readonly Token[], lexicon: Lexicon): boolean {
  return before
    .slice(-2)
    .some(({ text }) =>
      labels.some((label) => lexicon.own.phrases.get([text])?.concepts.has(label) === true),
    );
}

function endsThere(after: Token | undefined): boolean {
  return !after || after.kind === 'line' || (after.kind === 'mark' && ',;.!)'.includes(after.text));
}

/** `ec ,95 nft`: after a decimal without its nought may stand what measures nothing. */
function isNameAfter(
  tokens: readonly Token[],
  at: number,
  length: number,
  { proper }: Lexicon,
): boolean {
  const after = tokens[at + length];
  return tokens[at]!.text === ',' && after?.kind === 'word' && proper.has(after.text);
}

function decimalOf(whole: Token, rest: Token): Token {
  const decimals = rest.text.replace('.', '');
  const text = `${whole.text === ',' ? '0' : whole.text}.${decimals}`;
  return { ...whole, kind: 'number', text, to: rest.to, values: [Number(text)] };
}
