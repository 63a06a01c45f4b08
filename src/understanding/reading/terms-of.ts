import { isLabel } from '../moods/clause-kinds.ts';
import { sameButForEnding } from '../names/inflection.ts';
import { matchName, nearness } from '../names/match-name.ts';
import { type Lead, measureAt } from '../numbers/compose-measure.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import type { Lexicon } from './lexicon.ts';
import { phraseAt, phraseWithin, type Reading, unitAt } from './look-up.ts';
import { clockTerm, digitsTerm, measureTerm, stopTerm, wordTerm } from './make-term.ts';
import { markAt } from './mark-term.ts';
import { Meanings } from './meanings.ts';
import { type Found, isEverydayWord, nameAt } from './name-term.ts';
import type { Match } from './phrase-trie.ts';
import { placeOf } from './place-of.ts';
import { means, type NameTerm, type Term } from './term.ts';
import { both, meaningless, type Word } from './word.ts';

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

function termAt(reading: Reading, at: number, before: readonly Term[]): Found {
  const { tokens, lexicon } = reading;
  const token = tokens[at]!;
  if (marksBuffer(reading, at, before.at(-1))) {
    const word = { ...meaningless, concepts: new Meanings(['buffer']) };
    return { term: wordTerm(placeOf(tokens, at, 1), word), length: 1 };
  }
  const phrase = productAfterDose(reading, at, before) ?? phraseUpToName(reading, at);
  const name = nameAt(reading, at, before, phrase?.length ?? 0, phrase?.value ?? meaningless);
  if (name) return name;
  const numbered = numberedNameAt(reading, at, before);
  if (numbered) return numbered;
  const previous = before.at(-1);
  const measure = measureAt(reading, at, leadOf(previous));
  if (measure && !(phrase && turnsClock(reading, at, phrase, measure.length))) {
    const term = measureTerm(placeOf(tokens, at, measure.length), measure.value);
    return { term, length: measure.length };
  }
  if (phrase) return phraseTerm(reading, at, phrase.value, phrase.length);
  switch (token.kind) {
    case 'line':
      return { term: stopTerm(placeOf(tokens, at, 1), 'line'), length: 1 };
    case 'clock':
      return { term: clockTerm(placeOf(tokens, at, 1), token.minutes), length: 1 };
    case 'date':
    case 'digits':
    case 'number':
      return { term: digitsTerm(placeOf(tokens, at, 1)), length: 1 };
    case 'mark':
      return { term: markAt(reading, at, before), length: 1 };
    case 'word':
      return { term: wordTerm(placeOf(tokens, at, 1), memberOr(token.text, lexicon)), length: 1 };
  }
}

/** pH buffers as they are sold, to the whole number: common practice. */
const wholeBuffers: readonly number[] = [4, 7, 9, 10];

/** `im 7er`: the buffer, called after its value. */
function marksBuffer({ tokens, lexicon }: Reading, at: number, before: Term | undefined): boolean {
  const { text, glued } = tokens[at]!;
  if (!glued || before?.kind !== 'measure' || before.measure.unit !== null) return false;
  return (
    lexicon.own.vocabulary.bufferMarks.includes(text) &&
    wholeBuffers.includes(before.measure.values[0]!)
  );
}

function leadOf(previous: Term | undefined): Lead | null {
  if (means(previous, 'between')) return 'between';
  if (means(previous, 'from')) return 'from';
  if (means(previous, 'by', 'moved')) return 'by';
  if (means(previous, 'ph')) return 'ph';
  return isLabel(previous) ? 'label' : null;
}

/** `totes 2 and 3`, `tote two and three`: the number goes on from a name that ends in one. */
function numberedNameAt(reading: Reading, at: number, before: readonly Term[]): Found | null {
  const { tokens, lexicon } = reading;
  const [name, stop] = [before.at(-2), before.at(-1)];
  const token = tokens[at]!;
  const joins =
    stop?.kind === 'stop' && (stop.cut === 'and' || stop.text === ',' || stop.text === '/');
  if (!joins || name?.kind !== 'name' || !endsInNumber(name, lexicon)) return null;
  const spoken = phraseWithin(reading, at, 1)?.value.number ?? null;
  const number = token.kind === 'number' ? token.text : spoken === null ? null : String(spoken);
  if (number === null) return null;
  const words = [...name.text.split(' ').slice(0, -1), number];
  const form = lexicon.names.find(
    (each) =>
      each.words.length === words.length &&
      each.words.at(-1) === number &&
      sameButForEnding(words[0]!, each.words[0]!, lexicon.own.vocabulary.endings),
  );
  if (!form || unitAt(reading, at + 1)) return null;
  const { from, to, text, glued } = token;
  const called = [...words.slice(0, -1), text].join(' ');
  return { term: { ...name, systems: [form.system], from, to, text: called, glued }, length: 1 };
}

/** As it is written, or as its system is called. */
function endsInNumber({ text, systems }: NameTerm, { names }: Lexicon): boolean {
  if (!text.includes(' ')) return false;
  if (/ \d+$/.test(text)) return true;
  return names.some(
    ({ system, words }) =>
      systems.length === 1 &&
      system === systems[0] &&
      words.length > 1 &&
      /^\d+$/.test(words.at(-1)!),
  );
}

/** `halb drei`, `ten to eight`: words before an hour, though they may be a number or a share as well. */
function turnsClock(reading: Reading, at: number, phrase: Match<Word>, measured: number): boolean {
  if (phrase.value.clockTurn === null) return false;
  const hour = measureAt(reading, at + phrase.length)?.value;
  const isHour = hour?.unit === null && hour.whole && hour.values[0]! <= 12;
  // `added 20 to the bench`: no hour follows that it would turn.
  if (measured < phrase.length) return isHour || !/^\d/u.test(reading.tokens[at]!.text);
  return measured === phrase.length && phrase.value.fraction !== null && isHour;
}

/** `added 5 ml down to the dwc`: after millilitres the short name of a product ends there, unless a number follows. */
function productAfterDose(
  reading: Reading,
  at: number,
  before: readonly Term[],
): Match<Word> | null {
  const last = means(before.at(-1), 'of') ? before.at(-2) : before.at(-1);
  if (last?.kind !== 'measure' || !unitIs(last.measure, 'ml', 'cl')) return null;
  const [phrase, product] = [phraseAt(reading, at), phraseWithin(reading, at, 1)];
  if (!phrase || phrase.length === 1 || phrase.value.product !== null) return null;
  if (!product?.value.shyProduct?.startsWith('ph-')) return null;
  return reading.tokens[at + phrase.length]?.kind === 'number' ? null : product;
}

/** The longest phrase that does not swallow the start of a system's name: `the top` in `the top shelf`. */
function phraseUpToName(reading: Reading, at: number): Match<Word> | null {
  const phrase = phraseAt(reading, at);
  if (!phrase || phrase.length === 1) return phrase;
  for (let inside = 1; inside < phrase.length; inside++) {
    const name = matchName(reading.tokens, at + inside, reading.lexicon);
    if (name === null || name.near > nearness.inflected) continue;
    const goesOn = inside + name.length > phrase.length;
    if (goesOn || !isEverydayWord(reading, at + inside)) return phraseWithin(reading, at, inside);
  }
  return phrase;
}

function memberOr(text: string, lexicon: Lexicon): Word {
  return lexicon.memberNames.has(text)
    ? { ...meaningless, concepts: new Meanings(['member']) }
    : meaningless;
}

function phraseTerm(reading: Reading, at: number, word: Word, length: number): Found {
  const place = placeOf(reading.tokens, at, length);
  for (const cut of ['and', 'then', 'but'] as const) {
    if (word.concepts.has(cut)) return { term: stopTerm(place, cut), length };
  }
  const isMember = length === 1 && reading.lexicon.memberNames.has(place.text);
  const meant = isMember ? both(word, memberOr(place.text, reading.lexicon)) : word;
  return { term: wordTerm(place, meant), length };
}
