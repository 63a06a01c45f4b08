import { matchName, type NameMatch, nearness } from '../names/match-name.ts';
import { measureAt } from '../numbers/compose-measure.ts';
import type { Concept } from '../vocabulary/concept.ts';
import type { Lexicon } from './lexicon.ts';
import { phraseAt, type Reading } from './look-up.ts';
import type { Match } from './phrase-trie.ts';
import { type Cut, means, type Term } from './term.ts';
import type { Token } from './token.ts';
import { both, meaningless, type Word } from './word.ts';

const cuts: ReadonlyMap<string, Cut> = new Map([
  [',', 'comma'],
  ['、', 'comma'],
  ['(', 'comma'],
  [')', 'comma'],
  ['|', 'comma'],
  ['•', 'comma'],
  [';', 'semicolon'],
  ['.', 'sentence'],
  ['。', 'sentence'],
  ['!', 'sentence'],
  ['?', 'question'],
]);
const arrows = ['->', '=>', '→', '➡', '⇒', '⟶', '➔', '➜'];
const dashes = ['-', '–', '—'];
const quotes = ['"', "'"];

/** Reads tokens as names, numbers with their units, words of the vocabulary, and cuts between clauses. */
export function termsOf(reading: Reading): Term[] {
  const terms: Term[] = [];
  const { tokens } = reading;
  let at = 0;
  while (at < tokens.length) {
    const { term, length } = termAt(reading, at, terms);
    if (term) terms.push(term);
    at += length;
  }
  return terms;
}

interface Found {
  readonly term: Term | null;
  readonly length: number;
}

function termAt(reading: Reading, at: number, before: readonly Term[]): Found {
  const { tokens, lexicon } = reading;
  const token = tokens[at]!;
  const phrase = phraseUpToName(reading, at);
  const name = nameAt(reading, at, before, phrase?.length ?? 0, phrase?.value ?? meaningless);
  if (name) return name;
  const previous = before.at(-1);
  const measure = measureAt(reading, at, means(previous, 'between'), means(previous, 'from'));
  if (measure && !(phrase && turnsClock(reading, at, phrase, measure.length))) {
    const term = {
      kind: 'measure' as const,
      measure: measure.value,
      ...placeOf(tokens, at, measure.length),
    };
    return { term, length: measure.length };
  }
  if (phrase) return phraseTerm(reading, at, phrase.value, phrase.length);
  switch (token.kind) {
    case 'line':
      return { term: { kind: 'stop', cut: 'line', ...placeOf(tokens, at, 1) }, length: 1 };
    case 'clock':
      return {
        term: { kind: 'clock', minutes: token.minutes, ...placeOf(tokens, at, 1) },
        length: 1,
      };
    case 'date':
    case 'digits':
    case 'number':
      return { term: { kind: 'digits', minutes: 0, ...placeOf(tokens, at, 1) }, length: 1 };
    case 'mark':
      return { term: markTerm(reading, at, before), length: 1 };
    case 'word':
      return {
        term: { kind: 'word', word: memberOr(token.text, lexicon), ...placeOf(tokens, at, 1) },
        length: 1,
      };
  }
}

/** `halb drei`, `ten to eight`: words before an hour, though they may be a number or a share as well. */
function turnsClock(reading: Reading, at: number, phrase: Match<Word>, measured: number): boolean {
  if (phrase.value.clockTurn === null) return false;
  if (measured < phrase.length) return true;
  if (measured > phrase.length || phrase.value.fraction === null) return false;
  const hour = measureAt(reading, at + phrase.length, false, false)?.value;
  return hour?.unit === null && hour.whole && hour.values[0]! <= 12;
}

/** The longest phrase that does not swallow the start of a system's name: `the top` in `the top shelf`. */
function phraseUpToName(reading: Reading, at: number): Match<Word> | null {
  const phrase = phraseAt(reading, at);
  if (!phrase || phrase.length === 1) return phrase;
  for (let inside = 1; inside < phrase.length; inside++) {
    const name = matchName(reading.tokens, at + inside, reading.lexicon);
    if (name === null || name.near > nearness.inflected) continue;
    const goesOn = inside + name.length > phrase.length;
    if (goesOn || !isEverydayWord(reading, at + inside)) return phraseAt(reading, at, inside);
  }
  return phrase;
}

function isEverydayWord(reading: Reading, at: number): boolean {
  const phrase = phraseAt(reading, at, 1);
  return isEveryday(
    reading.tokens[at]!.text,
    reading.lexicon,
    phrase?.value ?? meaningless,
    phrase?.length ?? 0,
  );
}

function memberOr(text: string, lexicon: Lexicon): Word {
  return lexicon.memberNames.has(text)
    ? { ...meaningless, concepts: new Set<Concept>(['member']) }
    : meaningless;
}

function placeOf(tokens: readonly Token[], at: number, length: number) {
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

function phraseTerm(reading: Reading, at: number, word: Word, length: number): Found {
  const place = placeOf(reading.tokens, at, length);
  for (const cut of ['and', 'then', 'but'] as const) {
    if (word.concepts.has(cut)) return { term: { kind: 'stop', cut, ...place }, length };
  }
  const isMember = length === 1 && reading.lexicon.memberNames.has(place.text);
  const meant = isMember ? both(word, memberOr(place.text, reading.lexicon)) : word;
  return { term: { kind: 'word', word: meant, ...place }, length };
}

function markTerm(reading: Reading, at: number, before: readonly Term[]): Term | null {
  const previous = before.at(-1);
  const { tokens, lexicon } = reading;
  const token = tokens[at]!;
  const place = placeOf(tokens, at, 1);
  if (quotes.includes(token.text)) return null;
  if (
    token.text === '.' &&
    previous?.kind === 'word' &&
    token.glued &&
    lexicon.own.abbreviations.has(previous.text)
  )
    return null;
  if (
    token.text === '.' &&
    previous?.kind === 'measure' &&
    token.glued &&
    tokens[at + 1]?.kind === 'word' &&
    tokens[at + 1]!.glued
  )
    return null;
  if (token.text === '.' && token.glued && isPointOfDate(reading, at, before)) return null;
  const cut =
    cuts.get(token.text) ?? (token.text.startsWith('..') || token.text === '…' ? 'sentence' : null);
  if (cut) return { kind: 'stop', cut, ...place };
  if (token.text === '/' && previous?.kind === 'measure' && startsName(reading, at + 1))
    return { kind: 'stop', cut: 'comma', ...place };
  if (arrows.includes(token.text)) return { kind: 'mark', ...place, text: '→' };
  if (dashes.includes(token.text)) {
    const separates =
      tokens[at + 1]?.kind === 'number' ||
      (tokens[at + 1]?.kind === 'word' && token.glued && tokens[at + 1]!.glued);
    return separates
      ? { kind: 'mark', ...place, text: '-' }
      : { kind: 'stop', cut: 'comma', ...place };
  }
  return { kind: 'mark', ...place };
}

/** `3. Mai`, `am 6.4.`: a point that belongs to the day before it. */
function isPointOfDate(reading: Reading, at: number, before: readonly Term[]): boolean {
  const day = before.at(-1);
  if (day?.kind !== 'measure' || day.measure.unit !== null) return false;
  if (/^\d{1,2}$/.test(day.text)) return phraseAt(reading, at + 1)?.value.month != null;
  return /^\d{1,2}\.\d{1,2}$/.test(day.text) && means(before.at(-2), 'on-day');
}

function startsName(reading: Reading, at: number): boolean {
  const name =
    reading.tokens[at]?.kind === 'word' ? matchName(reading.tokens, at, reading.lexicon) : null;
  return name !== null && name.near <= nearness.inflected;
}

/** Concepts of words that people name systems by without their being words of every sentence. */
const soft: ReadonlySet<Concept> = new Set<Concept>([
  'numbered',
  'counted',
  'vessel',
  'size',
  'reservoir',
  'instrument',
  'picture',
  'other-water',
]);

function nameAt(
  reading: Reading,
  at: number,
  before: readonly Term[],
  phraseLength: number,
  phrase: Word,
): Found | null {
  const { tokens, lexicon } = reading;
  const match = matchName(tokens, at, lexicon);
  if (!match || match.length < phraseLength) return null;
  const corrected = reading.spelt[at] !== tokens[at]!.text;
  const everyday =
    match.length === 1 && !corrected && isEveryday(tokens[at]!.text, lexicon, phrase, phraseLength);
  if (everyday && !(match.wholeWords && canStand(before))) return null;
  if (match.length === 1 && match.near === nearness.slip && spelledAsWell(reading, at, match))
    return null;
  if (match.near === nearness.shortSlip && !canStand(before)) return null;
  return {
    term: {
      kind: 'name',
      systems: match.systems,
      sure:
        match.near !== nearness.shortSlip &&
        (match.systems.length === 1 || isSaidOfAll(before, match.systems.length)),
      slip: match.near >= nearness.slip,
      singular: match.singular,
      everyday,
      ...placeOf(tokens, at, match.length),
    },
    length: match.length,
  };
}

/** `both tubs`, `all tubs`: a word that fits several is said of each of them. */
function isSaidOfAll(before: readonly Term[], systems: number): boolean {
  const last = before.findLast((term) => !means(term, 'article') || means(term, 'both', 'all'));
  return means(last, 'all') || (means(last, 'both') && systems === 2);
}

/** A slip of a name that is as well a slip of a word is taken for the word. */
function spelledAsWell(reading: Reading, at: number, match: NameMatch): boolean {
  return (
    match.near === nearness.slip &&
    reading.spelt[at] !== reading.tokens[at]!.text &&
    !reading.lexicon.names.some(({ words }) => words.includes(reading.spelt[at]!))
  );
}

function isEveryday(text: string, lexicon: Lexicon, phrase: Word, phraseLength: number): boolean {
  if (lexicon.own.everyday.has(text) || lexicon.others.some(({ everyday }) => everyday.has(text)))
    return true;
  if (phraseLength === 0) return false;
  const meansMore = [...phrase.concepts].some((concept) => !soft.has(concept));
  return (
    meansMore ||
    phrase.number !== null ||
    phrase.fraction !== null ||
    phrase.ordinal !== null ||
    phrase.shyProduct !== null ||
    phrase.weekday !== null ||
    phrase.month !== null
  );
}

/** Where a name can stand: at a clause's start, or after an article or one of the prepositions. */
function canStand(before: readonly Term[]): boolean {
  const last = before.at(-1);
  if (!last || last.kind === 'stop') return true;
  if (means(last, 'article', 'place', 'both', 'each', 'except')) return true;
  if (last.kind === 'mark' && last.text === ':') return true;
  for (let i = before.length - 1; i >= 0; i--) {
    const term = before[i]!;
    if (term.kind === 'stop') return true;
    if (!means(term, 'greeting', 'thanks') && !(means(term, 'filler') && term.text.length > 1))
      return false;
  }
  return true;
}
