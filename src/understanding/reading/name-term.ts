import { matchName, type NameMatch, nearness } from '../names/match-name.ts';
import type { Measure } from '../numbers/measure.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { isKnown, type Lexicon } from './lexicon.ts';
import { phraseAt, phraseWithin, type Reading, unitAt } from './look-up.ts';
import { nameTerm } from './make-term.ts';
import { placeOf } from './place-of.ts';
import { isSideOfSaid } from './side-of-said.ts';
import { isMark, means, type Term } from './term.ts';
import { meaningless, type Word } from './word.ts';

export interface Found {
  readonly term: Term | null;
  readonly length: number;
}

export function isEverydayWord(reading: Reading, at: number): boolean {
  const phrase = phraseWithin(reading, at, 1);
  return isEveryday(
    reading.tokens[at]!.text,
    reading.lexicon,
    phrase?.value ?? meaningless,
    phrase?.length ?? 0,
  );
}

/** Concepts of words that people name systems by without their being words of every sentence. */
const soft: ReadonlySet<Concept> = new Set<Concept>([
  'numbered',
  'planter',
  'counted',
  'vessel',
  'size',
  'reservoir',
  'instrument',
  'picture',
  'other-water',
]);

export function nameAt(
  reading: Reading,
  at: number,
  before: readonly Term[],
  phraseLength: number,
  phrase: Word,
): Found | null {
  const { tokens, lexicon } = reading;
  const match = matchName(tokens, at, lexicon);
  if (!match || match.length < phraseLength || isTimeBeforeName(reading, at, match, before))
    return null;
  // `wann` is no singular of a system called Wanne.
  if (match.near !== nearness.exact && match.length === 1 && asks(phrase)) return null;
  // `half barrel: half bucket`: a share of what follows, unless a reading is told of it.
  const isShare =
    match.near === nearness.beginning && match.length === 1 && phrase.fraction !== null;
  if (isShare && !leadsLabel(reading, at)) return null;
  const corrected = reading.spelt[at] !== tokens[at]!.text;
  const everyday =
    match.length === 1 && !corrected && isEveryday(tokens[at]!.text, lexicon, phrase, phraseLength);
  // `power`, `air`, `down` begin a name only in full; direction and order words may by themselves.
  const isMeaningful =
    everyday && match.near === nearness.beginning && !isDirection(tokens[at]!.text, lexicon);
  if (isMeaningful) return null;
  if (everyday && phrase.concepts.has('brim') && leadsToBrim(before)) return null;
  const mayFollow =
    (leadsLabel(reading, at) && followsTime(before)) ||
    goesOnAsBefore(reading, at, match, before) ||
    isSideOfSaid(reading, at, match, before) ||
    isAmongNames(reading, at, match, before, phrase);
  if (everyday && !(match.wholeWords && (mayFollow || canStand(before, lexicon)))) return null;
  if (match.length === 1 && match.near === nearness.slip && spelledAsWell(reading, at, match))
    return null;
  if (match.near === nearness.shortSlip && !canStand(before, lexicon)) return null;
  const isOrdinaryWord =
    match.near === nearness.beginning && !match.wholeWords && isKnown(lexicon, tokens[at]!.text);
  if (isOrdinaryWord && !isFollowedByReading(reading, at, before)) return null;
  return {
    term: nameTerm(placeOf(tokens, at, match.length), {
      systems: match.systems,
      sure:
        match.near !== nearness.shortSlip &&
        (match.systems.length === 1 ||
          isSaidOfAll(before, match.systems.length) ||
          isBothAfter(reading, at + match.length, match.systems.length)),
      slip: match.near >= nearness.slip,
      singular: match.singular,
      everyday,
    }),
    length: match.length,
  };
}

/** `this morning jars ph 6.1`, of the Morning jars: the first word tells when, and the next ones name the system too. */
function isTimeBeforeName(
  { tokens, lexicon }: Reading,
  at: number,
  { length, systems }: NameMatch,
  before: readonly Term[],
): boolean {
  if (length < 2 || !means(before.at(-1), 'this', 'yesterday', 'today', 'last')) return false;
  const concepts = lexicon.own.phrases.get([tokens[at]!.text])?.concepts;
  const isPartOfDay = partsOfDay.some((part) => concepts?.has(part) === true);
  return isPartOfDay && matchName(tokens, at + 1, lexicon)?.systems.join() === systems.join();
}

const partsOfDay = ['morning', 'noon', 'afternoon', 'evening', 'night'] as const;

/** `nor ph 6`: an ordinary word is the beginning of a name only where a reading follows it straight. */
function isFollowedByReading(reading: Reading, at: number, before: readonly Term[]): boolean {
  const last = before.at(-1);
  if (last && last.kind !== 'stop') return false;
  return reading.tokens[at + 1]?.kind === 'number' || leadsLabel(reading, at);
}

/** The word of a reading stands straight after. */
function leadsLabel(reading: Reading, at: number): boolean {
  const concepts = phraseAt(reading, at + 1)?.value.concepts;
  return (
    concepts !== undefined &&
    (['ph', 'ec', 'temperature', 'level', 'oxygen', 'ppm-word'] as const).some((concept) =>
      concepts.has(concept),
    )
  );
}

/** `both tubs`, `all tubs`: a word that fits several is said of each of them. */
function isSaidOfAll(before: readonly Term[], systems: number): boolean {
  const last = before.findLast((term) => !means(term, 'article') || means(term, 'both', 'all'));
  return means(last, 'all') || (means(last, 'both') && systems === 2);
}

/** `tubs both full`, `die Tonnen alle beide leer`: how full each is; of other things it is asked which. */
function isBothAfter(reading: Reading, at: number, systems: number): boolean {
  const said = systems === 2 ? phraseAt(reading, at) : null;
  if (!said?.value.concepts.has('both')) return false;
  const after = phraseAt(reading, at + said.length)?.value.concepts;
  return after?.has('full') === true || after?.has('empty') === true;
}

/** A slip of a name that is as well a slip of a word is taken for the word. */
function spelledAsWell(reading: Reading, at: number, match: NameMatch): boolean {
  return (
    match.near === nearness.slip &&
    reading.spelt[at] !== reading.tokens[at]!.text &&
    !reading.lexicon.names.some(({ words }) => words.includes(reading.spelt[at]!))
  );
}

/** `5 cm from the top`, `up to the top`: the brim, even where a shelf is called so. */
function leadsToBrim(before: readonly Term[]): boolean {
  const last = before.findLast((term) => !means(term, 'article'));
  return means(last, 'below', 'to');
}

function isDirection(text: string, lexicon: Lexicon): boolean {
  return (
    lexicon.own.everyday.has(text) || lexicon.others.some(({ everyday }) => everyday.has(text))
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
function canStand(before: readonly Term[], lexicon: Lexicon): boolean {
  const whole = withoutWhichOne(before, lexicon);
  if (whole !== before) return canStand(whole, lexicon);
  const last = before.at(-1);
  if (!last || last.kind === 'stop') return true;
  if (means(last, 'article', 'place', 'both', 'each', 'except', 'meant')) return true;
  if (last.kind === 'mark' && last.text === ':') return true;
  if (endsWithArticle(last, lexicon)) return true;
  for (let i = before.length - 1; i >= 0; i--) {
    const term = before[i]!;
    if (term.kind === 'stop') return true;
    if (!means(term, 'greeting', 'thanks') && !(means(term, 'filler') && term.text.length > 1))
      return false;
  }
  return true;
}

/** `2nd barrel`, `the second barrel`, `left barrel`: without which of them it is. */
function withoutWhichOne(before: readonly Term[], lexicon: Lexicon): readonly Term[] {
  const last = before.at(-1);
  if (last?.kind !== 'word') return before;
  if (last.glued && lexicon.own.vocabulary.ordinalMarks.includes(last.text))
    return before.at(-2)?.kind === 'measure' ? before.slice(0, -2) : before;
  const isOne = last.word.ordinal !== null || isDirection(last.text, lexicon);
  return isOne ? before.slice(0, -1) : before;
}

/** `last night barrels ph 6.0`, `at 7 barrels ph 6.0`: nothing but a time goes before it in its clause. */
function followsTime(before: readonly Term[]): boolean {
  for (let i = before.length - 1; i >= 0; i--) {
    const term = before[i]!;
    if (term.kind === 'stop') return i < before.length - 1;
    const isHour =
      term.kind === 'measure' && (means(before[i - 1], 'at-hour') || turnsHour(before[i - 1]));
    if (!isHour && term.kind !== 'clock' && !isOfTime(term) && !turnsHour(term)) return false;
  }
  return before.length > 0;
}

/** `left 5.8 right 5.9`, `left 8 l right 6 l`: a name and its values, then another and values of its own. */
function goesOnAsBefore(
  reading: Reading,
  at: number,
  { systems, length }: NameMatch,
  before: readonly Term[],
): boolean {
  const last = before.at(-1);
  if (last?.kind !== 'measure') return false;
  let i = before.length - 1;
  while (before[i]?.kind === 'measure' || isMark(before[i], '/') || isOfReading(before[i])) i--;
  const first = before[i];
  if (first?.kind !== 'name' || first.systems.join() === systems.join()) return false;
  const next = reading.tokens[at + length];
  if (next?.kind === 'number' && last.measure.unit === null) return true;
  // `right tub has 8 l left, 6 l added`: only where the first is called by such a word as well.
  const isLeftOver = phraseWithin(reading, at, 1)?.value.concepts.has('left-over') === true;
  if (!first.everyday || (isLeftOver && last.measure.unit !== null)) return false;
  return leadsLabel(reading, at) || isOfUnit(reading, at + length, last.measure.unit);
}

/** `tower wall and pontoon`: between a name and an `and` that leads to another, a word that means nothing else. */
function isAmongNames(
  reading: Reading,
  at: number,
  { length }: NameMatch,
  before: readonly Term[],
  { concepts }: Word,
): boolean {
  const { tokens, lexicon } = reading;
  const meansMore = [...concepts].some((concept) => !soft.has(concept));
  if (before.at(-1)?.kind !== 'name' || meansMore) return false;
  const joint = phraseWithin(reading, at + length, 1);
  if (joint?.value.concepts.has('and') !== true) return false;
  const next = at + length + joint.length;
  const article = phraseWithin(reading, next, 1)?.value.concepts.has('article') === true ? 1 : 0;
  const name = next + article;
  return name < tokens.length && matchName(tokens, name, lexicon) !== null;
}

function isOfReading(term: Term | undefined): boolean {
  return means(term, 'ph', 'ec', 'temperature', 'level', 'oxygen', 'ppm-word');
}

/** A number of the same unit, straight after. */
function isOfUnit(reading: Reading, at: number, unit: Measure['unit']): boolean {
  if (unit === null || reading.tokens[at]?.kind !== 'number') return false;
  const own = unitAt(reading, at + 1)?.value;
  if (!own) return false;
  return 'id' in unit
    ? 'id' in own && own.id === unit.id
    : 'litres' in own && own.litres === unit.litres;
}

/** `twenty to`, `halb`: before an hour. */
function turnsHour(term: Term | undefined): boolean {
  return term?.kind === 'word' && term.word.clockTurn !== null;
}

function isOfTime(term: Term): boolean {
  return means(
    term,
    'at-hour',
    'yesterday',
    'today',
    'this',
    'last',
    'morning',
    'noon',
    'afternoon',
    'evening',
    'night',
    'o-clock',
    'am',
    'pm',
  );
}

/** A phrase that runs up to a name: `when the`, `das war die`. */
function endsWithArticle(term: Term, lexicon: Lexicon): boolean {
  const end = term.text.lastIndexOf(' ');
  return end > 0 && lexicon.own.vocabulary.words.article.includes(term.text.slice(end + 1));
}

const questionWords: readonly Concept[] = ['what', 'when', 'why', 'how', 'who', 'which'];

function asks({ concepts }: Word): boolean {
  return questionWords.some((concept) => concepts.has(concept));
}
