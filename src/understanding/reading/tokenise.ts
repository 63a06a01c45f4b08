import { readNumeral } from './numeral.ts';
import type { Token } from './token.ts';

const digit = /\d/;
const letter = /[\p{L}\p{M}]/u;
const FIRST_BEYOND_ASCII = 128;
/** What the last messages were split into: each is asked for by several readers, one after the other. */
const lastSplit = new Map<string, readonly Token[]>();
const splitsKept = 8;

/** Splits folded text into words, numbers and marks. */
export function tokenise(text: string): readonly Token[] {
  const known = lastSplit.get(text);
  if (known) return known;
  const tokens = split(text);
  const [oldest] = lastSplit.size < splitsKept ? [] : lastSplit.keys();
  if (oldest !== undefined) lastSplit.delete(oldest);
  lastSplit.set(text, tokens);
  return tokens;
}

/** In one pass. */
function split(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const character = String.fromCodePoint(text.codePointAt(at)!);
    if (character === ' ' || character === '\t') {
      at++;
      continue;
    }
    const to = endOfToken(text, at, character);
    tokens.push(tokenOf(text, at, to, character, tokens.at(-1)));
    at = to;
  }
  return tokens;
}

function isLetter(character: string): boolean {
  const code = character.charCodeAt(0);
  // Most are of these, and told sooner without a table of all the world's.
  if (code < FIRST_BEYOND_ASCII) return (code | 32) >= 97 && (code | 32) <= 122;
  return letter.test(character);
}

function endOfToken(text: string, from: number, character: string): number {
  if (startsAddress(text, from)) return endOfAddress(text, from);
  if (startsNumber(text, from)) return endOfNumber(text, from);
  if (isLetter(character)) return endOfWord(text, from);
  if (isPossessive(text, from) && (from === 0 || isLetter(text[from - 1]!))) return from + 2;
  if (text.startsWith('->', from) || text.startsWith('=>', from)) return from + 2;
  if (character === '.' && text[from + 1] === '.') {
    let to = from;
    while (text[to] === '.') to++;
    return to;
  }
  return from + character.length;
}

const addresses = ['http://', 'https://', 'www.', 'mailto:'];

/** A web address is nothing that is said, whatever stands in it. */
function startsAddress(text: string, at: number): boolean {
  return addresses.some((start) => text.startsWith(start, at));
}

function endOfAddress(text: string, from: number): number {
  let to = from;
  while (to < text.length && text[to] !== ' ' && text[to] !== '\n') to++;
  return to;
}

/** A digit, or a point before a digit that follows nothing it could belong to: `.5`. */
function startsNumber(text: string, at: number): boolean {
  if (digit.test(text[at]!)) return true;
  const before = text[at - 1];
  return (
    text[at] === '.' && digit.test(text[at + 1] ?? '') && (before === undefined || before === ' ')
  );
}

/** Digits, with single points, commas and colons between them, or a date written `2027-05-03`. */
function endOfNumber(text: string, from: number): number {
  const isoDate = /^\d{4}-\d{2}-\d{2}(?!\d)/.exec(text.slice(from, from + 11));
  if (isoDate) return from + isoDate[0].length;
  let to = from;
  let colons = 0;
  let commasAfterPoint = 0;
  for (;;) {
    while (digit.test(text[to] ?? '') || (to === from && text[to] === '.')) to++;
    const mark = text[to];
    // `5..8`: a slip that reads as no number.
    if (mark === '.' && text[to + 1] === '.' && digit.test(text[to + 2] ?? '')) {
      to += 2;
      continue;
    }
    if (mark === undefined || !'.,:'.includes(mark) || !digit.test(text[to + 1] ?? '')) return to;
    const soFar = text.slice(from, to);
    if (mark === ':') {
      // `ph:5` never comes here; `7:30` and `7:30:15` do.
      if (/[.,]/.test(soFar) || ++colons > 2) return to;
    } else if (colons > 0) return to;
    // `5.9,1.7,21` is a list: after a decimal point that closed no group of three, a comma separates.
    else if (mark === ',' && /\.\d+$/.test(soFar) && !/^\d{1,3}(\.\d{3})+$/.test(soFar)) return to;
    else if (mark === ',' && ++commasAfterPoint > 1 && !/^\d{1,3}(,\d{3})+$/.test(soFar)) return to;
    to++;
  }
}

/** Letters, with apostrophes inside or at the end. */
function endOfWord(text: string, from: number): number {
  let to = from;
  while (to < text.length) {
    const character = String.fromCodePoint(text.codePointAt(to)!);
    if (isLetter(character)) to += character.length;
    else if (isPossessive(text, to)) break;
    else if (character === "'" && isLetter(text[to + 1] ?? '')) to++;
    else break;
  }
  return to;
}

/** `'s` at a word's end: a possessive or a short `is`, either way a word of its own. */
function isPossessive(text: string, at: number): boolean {
  return text.startsWith("'s", at) && !isLetter(text[at + 2] ?? '');
}

function tokenOf(
  text: string,
  from: number,
  to: number,
  first: string,
  before: Token | undefined,
): Token {
  const piece = text.slice(from, to);
  const glued = before?.to === from;
  const kind = kindOf(piece, first);
  if (kind !== 'number') return { kind, text: piece, from, to, glued, values: none, minutes: 0 };
  const numeral = readNumeral(piece);
  const values = numeral.kind === 'number' ? numeral.values : none;
  const minutes = numeral.kind === 'clock' ? numeral.minutes : 0;
  return { kind: numeral.kind, text: piece, from, to, glued, values, minutes };
}

const none: readonly number[] = [];

/** What a piece looks like; what has digits is yet to be read as a numeral. */
function kindOf(piece: string, first: string): 'line' | 'digits' | 'number' | 'word' | 'mark' {
  if (first === '\n') return 'line';
  if (startsAddress(piece, 0)) return 'digits';
  if (digit.test(piece)) return 'number';
  return isLetter(first) || piece === "'s" ? 'word' : 'mark';
}
