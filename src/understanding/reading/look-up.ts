import type { Lexicon } from './lexicon.ts';
import { isKnown } from './lexicon.ts';
import { Match } from './phrase-trie.ts';
import { edits, isSlipOf, slipsAllowed } from './slip.ts';
import { spelledAlike } from './spellings.ts';
import type { Token } from './token.ts';
import { both, type Word } from './word.ts';
import type { Unit } from './word-list.ts';

/** The tokens of a message with their typing slips put right. */
export interface Reading {
  readonly tokens: readonly Token[];
  readonly spelt: readonly string[];
  readonly lexicon: Lexicon;
  /** The longest phrase at each place, kept as it is found: many readers ask. */
  readonly phrases: (Match<Word> | null | undefined)[];
  /** Likewise the longest unit. */
  readonly units: (Match<Unit> | null | undefined)[];
}

export function readingOf(tokens: readonly Token[], lexicon: Lexicon): Reading {
  const spelt = tokens.map((token, at) =>
    token.kind === 'word'
      ? (correctionOf(token.text, lexicon) ?? slipBefore(tokens, at, lexicon) ?? token.text)
      : token.text,
  );
  return { tokens, spelt, lexicon, phrases: [], units: [] };
}

/** `tpped up`: of several words that it may be a slip of, the one that makes a phrase with the word after it. */
function slipBefore(tokens: readonly Token[], at: number, lexicon: Lexicon): string | null {
  const [{ text: word }, after] = [tokens[at]!, tokens[at + 1]];
  if (after?.kind !== 'word' || word.length < 4 || word.length > 24) return null;
  if (isKnown(lexicon, word)) return null;
  const meant = lexicon.own.phrases
    .startsBefore(after.text)
    .filter((start) => isSlipOf(word, start));
  return meant.length === 1 ? meant[0]! : null;
}

function wordsFrom(
  reading: Reading,
  at: number,
  most = Number.POSITIVE_INFINITY,
): (offset: number) => string | null {
  return (offset) => (offset < most ? (reading.spelt[at + offset] ?? null) : null);
}

/** The longest phrase that starts here; the household's other languages speak where the first has nothing. */
export function phraseAt(reading: Reading, at: number): Match<Word> | null {
  if (at < 0) return null;
  const known = reading.phrases[at];
  if (known !== undefined) return known;
  const found = phraseWithin(reading, at, Number.POSITIVE_INFINITY);
  reading.phrases[at] = found;
  return found;
}

/** The longest phrase of at most so many words that starts here. */
export function phraseWithin(reading: Reading, at: number, most: number): Match<Word> | null {
  const { lexicon } = reading;
  const words = wordsFrom(reading, at, most);
  const ours = longer(lexicon.phrases.longest(words), lexicon.own.phrases.longest(words));
  if (lexicon.others.length === 0) return ours;
  let best = ours;
  for (const other of lexicon.others) {
    const theirs = other.phrases.longest(words);
    if (theirs && theirs.length > (best?.length ?? 0) && !isOwnWord(reading, at)) best = theirs;
  }
  return best;
}

function longer(a: Match<Word> | null, b: Match<Word> | null): Match<Word> | null {
  if (!a || !b) return a ?? b;
  if (a.length !== b.length) return a.length > b.length ? a : b;
  // What this greenhouse calls a probe or a product is that and nothing else.
  if (a.value.probe !== null || a.value.product !== null) return a;
  return new Match(both(a.value, b.value), a.length);
}

/** A word of the language read first does not start a phrase of another. */
function isOwnWord(reading: Reading, at: number): boolean {
  const word = reading.spelt[at]!;
  return reading.lexicon.own.meant.has(word) || reading.lexicon.own.common.has(word);
}

export function unitAt(reading: Reading, at: number): Match<Unit> | null {
  const known = reading.units[at];
  if (known !== undefined) return known;
  const found = unitFoundAt(reading, at);
  reading.units[at] = found;
  return found;
}

function unitFoundAt(reading: Reading, at: number): Match<Unit> | null {
  const { lexicon } = reading;
  const words = wordsFrom(reading, at);
  let best = lexicon.units.longest(words);
  for (const list of [lexicon.own, ...lexicon.others]) {
    const match = list.units.longest(words);
    if (match && match.length > (best?.length ?? 0)) best = match;
  }
  return best;
}

/** The one word of the vocabulary that this one is a slip of, if it is no word itself. */
function correctionOf(word: string, lexicon: Lexicon): string | null {
  const known = lexicon.corrections.get(word);
  if (known !== undefined) return known;
  const found = isKnown(lexicon, word) ? null : nearestWord(word, lexicon);
  // What people mistype is without end; what is worth keeping is not.
  if (lexicon.corrections.size < 5000) lexicon.corrections.set(word, found);
  return found;
}

function nearestWord(word: string, lexicon: Lexicon): string | null {
  if (word.length < 3 || word.length > 24) return null;
  const doubled = letterDoubled(word, lexicon);
  if (doubled !== null || word.length < 4) return doubled;
  let best: string | null = null;
  let least = 3;
  let tied = false;
  for (const candidate of candidates(word, lexicon)) {
    const most = slipsAllowed(candidate);
    if (most === 0) continue;
    const distance = edits(word, candidate, Math.min(most, least));
    if (distance > most || distance > least) continue;
    tied = distance === least && best !== null && !meanAlike(best, candidate, lexicon);
    if (distance < least || best === null) {
      best = candidate;
      least = distance;
    }
  }
  return tied ? null : best;
}

/** `halff`, `ful`: one letter twice that stands once in the word, or once that stands twice; the one word it makes. */
function letterDoubled(word: string, lexicon: Lexicon): string | null {
  const found = new Set<string>();
  for (let i = 1; i < word.length; i++) {
    const once = word.slice(0, i) + word.slice(i + 1);
    if (word[i] === word[i - 1] && once.length > 3 && lexicon.own.meant.has(once)) found.add(once);
    const twice = word.slice(0, i + 1) + word.slice(i);
    if (twice.length > 3 && lexicon.own.meant.has(twice)) found.add(twice);
  }
  return found.size === 1 ? [...found][0]! : null;
}

/** Words of the first language and of the greenhouse that begin alike and are about as long. */
function* candidates(word: string, lexicon: Lexicon): Generator<string> {
  for (let length = word.length - 2; length <= word.length + 2; length++) {
    yield* spelledAlike(lexicon.own.spellings, word[0]!, length);
    yield* spelledAlike(lexicon.spellings, word[0]!, length);
  }
}

function isSameUnit(a: Unit, b: Unit): boolean {
  return 'id' in a && 'id' in b && a.id === b.id && a.id !== 'unknown';
}

function meanAlike(a: string, b: string, lexicon: Lexicon): boolean {
  const [unit, otherUnit] = [lexicon.own.units.get([a]), lexicon.own.units.get([b])];
  if (unit && otherUnit) return isSameUnit(unit, otherUnit);
  const one = lexicon.own.phrases.get([a]);
  const other = lexicon.own.phrases.get([b]);
  if (!one || !other) return false;
  return (
    one.concepts.size === other.concepts.size &&
    [...one.concepts].every((concept) => other.concepts.has(concept))
  );
}
