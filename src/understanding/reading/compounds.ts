import { sameButForEnding } from '../names/inflection.ts';
import { isKnown, type Lexicon } from './lexicon.ts';
import type { Token } from './token.ts';

const lettersOfPart = 3;

/**
 * `Wannenwasser` → `Wannen`, `wasser`; `halbvoll` → `halb`, `voll`; `Montagabend`: a word that no list has, made
 * of a system, a crop, a share or a weekday and one of the words that the language lets end a compound.
 */
export function withoutCompounds(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  if (lexicon.own.vocabulary.compoundEnds.length === 0) return tokens;
  const parted: Token[] = [];
  for (const token of tokens) {
    const parts = partsOf(token, lexicon);
    if (parts) parted.push(...parts);
    else parted.push(token);
  }
  return parted;
}

function partsOf(token: Token, lexicon: Lexicon): Token[] | null {
  const { text, kind, from } = token;
  if (kind !== 'word' || text.length < 2 * lettersOfPart - 1 || isKnown(lexicon, text)) return null;
  const decimal = decimalIn(token, lexicon);
  if (decimal) return decimal;
  for (const end of lexicon.own.vocabulary.compoundEnds) {
    const start = text.slice(0, -end.length);
    if (start.length < lettersOfPart || !text.endsWith(end) || !mayStart(start, lexicon)) continue;
    const middle = from + start.length;
    return [
      { ...token, text: start, to: middle },
      { ...token, text: end, from: middle, glued: true },
    ];
  }
  return null;
}

/** `fünfkommaneun`: two numbers in words, and the word for the point between them. */
function decimalIn(token: Token, { own }: Lexicon): Token[] | null {
  const { text, from } = token;
  const isNumber = (word: string): boolean => (own.phrases.get([word])?.number ?? null) !== null;
  for (const point of own.vocabulary.words.point) {
    const at = text.indexOf(point);
    const end = at + point.length;
    if (at <= 0 || !isNumber(text.slice(0, at)) || !isNumber(text.slice(end))) continue;
    return [
      { ...token, text: text.slice(0, at), to: from + at },
      { ...token, text: point, from: from + at, to: from + end },
      { ...token, text: text.slice(end), from: from + end },
    ];
  }
  return null;
}

function mayStart(start: string, lexicon: Lexicon): boolean {
  const { endings } = lexicon.own.vocabulary;
  const isName = lexicon.names.some(
    ({ words: [word, more] }) => more === undefined && sameButForEnding(start, word!, endings),
  );
  if (isName) return true;
  const word = lexicon.own.phrases.get([start]);
  return (
    word !== undefined && (word.crop !== null || word.fraction !== null || word.weekday !== null)
  );
}
