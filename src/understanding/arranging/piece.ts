import type { Language } from '../../greenhouse/member.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { matchName, nearness } from '../names/match-name.ts';
import { isKnown, type Lexicon } from '../reading/lexicon.ts';
import { PhraseTrie } from '../reading/phrase-trie.ts';
import { isSlipOf } from '../reading/slip.ts';
import type { Token } from '../reading/token.ts';
import { tokenise } from '../reading/tokenise.ts';
import { type ArrangingConcept, arrangingWords } from '../vocabulary/arranging-words.ts';
import { vocabularies } from '../vocabulary/languages.ts';

/** What one word or phrase is to the reader of arrangements. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly concepts: ReadonlySet<ArrangingConcept>;
  /** Monday 1. */
  readonly weekday: number | null;
  readonly isEveryWeek: boolean;
  /** January 1. */
  readonly month: number | null;
  readonly number: number | null;
  readonly isOrdinal: boolean;
  /** `2027-07-16`, or day and month `16.7.`. */
  readonly date: string | null;
  readonly system: SystemId | null;
  readonly member: string | null;
  /** Ends a clause; `question` where it asks. */
  readonly stop: 'end' | 'question' | null;
  /** Means nothing here. */
  readonly isStrange: boolean;
}

type Meaning = Pick<Piece, 'concepts' | 'weekday' | 'isEveryWeek' | 'month'>;

/** Less than `nothing`: a phrase may be a number as well. */
const noMeaning: Meaning = { concepts: new Set(), weekday: null, isEveryWeek: false, month: null };

const nothing: Omit<Piece, 'from' | 'to' | 'text'> = {
  concepts: new Set(),
  weekday: null,
  isEveryWeek: false,
  month: null,
  number: null,
  isOrdinal: false,
  date: null,
  system: null,
  member: null,
  stop: null,
  isStrange: false,
};

// Filled when first needed, from the language alone.
const tries = new Map<Language, PhraseTrie<Meaning>>();

function trieFor(language: Language): PhraseTrie<Meaning> {
  let trie = tries.get(language);
  if (!trie) tries.set(language, (trie = trieOf(language)));
  return trie;
}

function trieOf(language: Language): PhraseTrie<Meaning> {
  const trie = new PhraseTrie<Meaning>();
  const mean = (phrase: string, more: Partial<Meaning>): void => {
    const words = tokenise(phrase).map(({ text }) => text);
    const known = trie.get(words) ?? noMeaning;
    const concepts = new Set([...known.concepts, ...(more.concepts ?? [])]);
    trie.set(words, { ...known, ...more, concepts });
  };
  const { words, everyWeekday } = arrangingWords[language];
  for (const [concept, phrases] of Object.entries(words) as [
    ArrangingConcept,
    readonly string[],
  ][]) {
    for (const phrase of phrases) mean(phrase, { concepts: new Set([concept]) });
  }
  const { weekdays, months } = vocabularies[language];
  for (const [i, names] of weekdays.entries()) {
    for (const name of names) mean(name, { weekday: i + 1 });
  }
  for (const [i, names] of everyWeekday.entries()) {
    for (const name of names) mean(name, { weekday: i + 1, isEveryWeek: true });
  }
  for (const [i, names] of months.entries()) {
    // The month of May is read beside a number only, so that it may be a verb as well.
    for (const name of names) mean(name, { month: i + 1 });
  }
  return trie;
}

/** The pieces of folded text, in order. */
export function piecesOf(text: string, lexicon: Lexicon): readonly Piece[] {
  const tokens = tokenise(text);
  const pieces: Piece[] = [];
  let i = 0;
  while (i < tokens.length) {
    const { piece, length } = pieceAt(tokens, i, lexicon);
    pieces.push(piece);
    i += length;
  }
  return pieces;
}

function pieceAt(
  tokens: readonly Token[],
  i: number,
  lexicon: Lexicon,
): { readonly piece: Piece; readonly length: number } {
  const token = tokens[i]!;
  const over = (length: number, found: Partial<Piece>) => {
    const { from } = token;
    const { to } = tokens[i + length - 1]!;
    const text = tokens
      .slice(i, i + length)
      .map((each) => each.text)
      .join(' ');
    return { piece: { ...nothing, from, to, text, ...found }, length };
  };
  if (token.kind === 'number' || token.kind === 'date') return numberAt(tokens, i, lexicon, over);
  if (token.kind === 'clock') return over(1, {});
  if (token.kind === 'line') return over(1, { stop: 'end' });
  const phrase = trieFor(lexicon.language).longest((offset) => tokens[i + offset]?.text ?? null);
  const name = token.kind === 'word' ? matchName(tokens, i, lexicon) : null;
  const isName =
    name !== null &&
    name.systems.length === 1 &&
    name.near <= nearness.slip &&
    name.length >= (phrase?.length ?? 0);
  if (isName) return over(name.length, { system: name.systems[0]! });
  const member = lexicon.memberNames.get(token.text);
  if (member !== undefined && (phrase?.length ?? 0) <= 1) return over(1, { member });
  const count = lexicon.own.vocabulary.numbers.get(token.text) ?? null;
  if (phrase) {
    return over(phrase.length, { number: phrase.length === 1 ? count : null, ...phrase.value });
  }
  if (token.kind === 'mark') {
    if (token.text === '?') return over(1, { stop: 'question' });
    return over(1, /^[.,;:!]+$|^\.+$/.test(token.text) ? { stop: 'end' } : {});
  }
  if (count !== null) return over(1, { number: count });
  return over(1, slipOf(token.text, lexicon) ?? { isStrange: true });
}

type Over = (length: number, found: Partial<Piece>) => { piece: Piece; length: number };

/** `16`, `16th`, `16.`, `16.7.`, `2027-07-16`. */
function numberAt(tokens: readonly Token[], i: number, lexicon: Lexicon, over: Over) {
  const token = tokens[i]!;
  const next = tokens[i + 1];
  if (token.kind === 'date') return over(1, { date: token.text });
  if (/^\d{1,2}\.\d{1,2}$/.test(token.text) && next?.text === '.' && next.glued) {
    return over(2, { date: token.text });
  }
  const number = token.values[0] ?? null;
  const { ordinalMarks } = arrangingWords[lexicon.language];
  if (next?.glued && ordinalMarks.includes(next.text)) return over(2, { number, isOrdinal: true });
  return over(1, { number });
}

/** A word mistyped, where it can be nothing else. */
function slipOf(text: string, lexicon: Lexicon): Meaning | null {
  if (text.length < 5 || isKnown(lexicon, text)) return null;
  const { words, everyWeekday } = arrangingWords[lexicon.language];
  const { weekdays, months } = vocabularies[lexicon.language];
  const all = [...Object.values(words), ...everyWeekday, ...weekdays, ...months].flat();
  const meant = all.find((word) => !word.includes(' ') && isSlipOf(text, word));
  return meant === undefined ? null : (trieFor(lexicon.language).get([meant]) ?? null);
}
