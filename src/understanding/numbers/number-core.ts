import { phraseAt, phraseWithin, type Reading, unitAt } from '../reading/look-up.ts';
import type { Match } from '../reading/phrase-trie.ts';
import type { Token } from '../reading/token.ts';
import type { Word } from '../reading/word.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { concept } from './concept-at.ts';
import { fractionFrom, isShareOfSomething, partMore, shareOf } from './fraction.ts';
import { litresOfUnit } from './quantity-of-measure.ts';
import { pointAlone, spokenFrom } from './spoken-numbers.ts';

/** A number without its unit, and how many tokens it takes. */
export interface Core {
  readonly values: readonly number[];
  readonly length: number;
  readonly approximate: boolean;
  readonly share: boolean;
  readonly inWords: boolean;
  readonly whole: boolean;
  readonly decimals: number;
  /** It makes no sense without a unit: `a couple`, `a` in `a can`. */
  readonly needsUnit: boolean;
}

const oneInWords: Core = {
  values: [1],
  length: 1,
  approximate: false,
  share: false,
  inWords: true,
  whole: true,
  decimals: 0,
  needsUnit: false,
};

export function coreAt(reading: Reading, at: number): Core | null {
  const { tokens } = reading;
  const token = tokens[at];
  if (!token) return null;
  if (token.text === '-' || token.text === '+') return signedAt(reading, at);
  if (token.kind === 'number') return afterNumeral(reading, at, token);
  const phrase = phraseUpToRange(reading, at);
  if (!phrase) return null;
  const last = lastOneAt(reading, at);
  if (last) return last;
  const { value: word, length } = phrase;
  const plain = { ...oneInWords, length };
  if (word.number !== null) {
    const spoken = spokenFrom(reading, at, word, length);
    return withDecimals(reading, at, { ...plain, values: [spoken.value], length: spoken.length });
  }
  const point = word.concepts.has('point') ? pointAlone(reading, at) : 0;
  if (point > 0) {
    const part = decimalsFrom(reading, at + point, 'in-words');
    if (!part) return null;
    const { length: digits, part: value } = part;
    return { ...plain, values: [value], length: point + digits, whole: false, decimals: digits };
  }
  if (word.fraction !== null)
    return { ...plain, values: [word.fraction], share: true, whole: false };
  if (word.concepts.has('couple'))
    return { ...plain, values: [2], approximate: true, needsUnit: true };
  return word.concepts.has('indefinite') ? oneOfVessel(reading, at, plain) : null;
}

/** `a can`, `one more can`, `einen und einen halben Krug`. */
function oneOfVessel(reading: Reading, at: number, plain: Core): Core | null {
  const end = at + plain.length;
  const half = plain.length === 1 ? concept(reading, end, 'half-more') : 0;
  if (half > 0) return { ...plain, values: [1.5], length: 1 + half, whole: false, needsUnit: true };
  const about = concept(reading, end, 'measure-about');
  const unit = unitAt(reading, end + about + fullAt(reading, end + about));
  const isLong = unit !== null && (unit.length > 1 || reading.tokens[end + about]!.text.length > 1);
  if (!isLong) return null;
  return { ...plain, length: plain.length + about, approximate: about > 0, needsUnit: true };
}

/** `ten to twelve litres`: the words would turn an hour, were it not so much of something. */
function phraseUpToRange(reading: Reading, at: number): Match<Word> | null {
  const phrase = phraseAt(reading, at);
  if (phrase === null || phrase.length < 2 || phrase.value.clockTurn === null) return phrase;
  const low = phraseWithin(reading, at, 1);
  const number = low?.value.number ?? null;
  const high = number === null ? null : coreAt(reading, at + phrase.length);
  if (!high || number === null || high.values[0]! <= number) return phrase;
  const unit = unitAt(reading, at + phrase.length + high.length)?.value;
  return unit && litresOfUnit(unit) !== null ? low : phrase;
}

/** How many tokens say that a vessel is a full one: `a full can`; 0: none, or no unit of volume follows. */
export function fullAt(reading: Reading, at: number): number {
  const length = concept(reading, at, 'measure-full');
  const unit = length > 0 ? unitAt(reading, at + length) : null;
  return unit && litresOfUnit(unit.value) !== null ? length : 0;
}

/** A sign touches its number and no number before it. */
function signedAt(reading: Reading, at: number): Core | null {
  const [before, sign, number] = [
    reading.tokens[at - 1],
    reading.tokens[at]!,
    reading.tokens[at + 1],
  ];
  if (number?.kind !== 'number' || !number.glued) return null;
  if (before && sign.glued && (before.kind === 'number' || before.kind === 'digits')) return null;
  if (sign.text === '+') return null;
  const core = afterNumeral(reading, at + 1, number);
  return {
    ...core,
    values: core.values.map((value) => -value),
    length: core.length + 1,
    whole: false,
  };
}

function afterNumeral(reading: Reading, at: number, token: Token): Core {
  const { tokens } = reading;
  const decimals = decimalsOf(token.text);
  const plain = { ...oneInWords, inWords: false, whole: decimals === 0, decimals };
  const isWhole = token.values.length === 1 && decimals === 0;
  if (isWhole) {
    // `2 hundred litres`.
    const times = phraseWithin(reading, at + 1, 1)?.value;
    if (times?.number != null && times.concepts.has('multiplier'))
      return { ...plain, values: [token.values[0]! * times.number], length: 2 };
    const alone = fractionFrom(tokens, at);
    if (alone !== null && (isShareOfSomething(reading, at + 3) || isLevelSaid(reading, at))) {
      const of = shareOf(reading, at + 3);
      return { ...plain, values: [alone], length: 3 + of, share: true, whole: false };
    }
    const mixed = tokens[at + 1]?.kind === 'number' ? fractionFrom(tokens, at + 1) : null;
    if (mixed !== null)
      return { ...plain, values: [token.values[0]! + mixed], length: 4, whole: false };
    const product = timesFrom(reading, at, token.values[0]!);
    if (product) return { ...plain, ...product };
  }
  return withDecimals(reading, at, { ...plain, values: token.values });
}

/** `level of the gutters is 3/4`: the word stands a few words before. */
function isLevelSaid(reading: Reading, at: number): boolean {
  const before = Array.from({ length: levelWordsBefore }, (_, n) => at - 1 - n);
  return before.some((i) => i >= 0 && concept(reading, i, 'level') > 0);
}

const levelWordsBefore = 5;

function decimalsOf(text: string): number {
  const mark = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
  return mark < 0 ? 0 : text.length - mark - 1;
}

/** `2 x 10 l`, `3x a can`, `3x can`: so many times an amount. */
function timesFrom(
  reading: Reading,
  at: number,
  count: number,
): Pick<Core, 'values' | 'length'> | null {
  const by = concept(reading, at + 1, 'times');
  const token = reading.tokens[at + 1 + by];
  if (by === 0) return null;
  const vessel = unitAt(reading, at + 1 + by)?.value;
  if (vessel && 'litres' in vessel) return { values: [count], length: 1 + by };
  if (!unitAt(reading, at + 2 + by)) return null;
  if (concept(reading, at + 1 + by, 'indefinite') === 1) return { values: [count], length: 2 + by };
  if (token?.kind !== 'number') return null;
  return { values: token.values.map((value) => value * count), length: 2 + by };
}

/** `five point eight`, `two and a half`. */
function withDecimals(reading: Reading, at: number, core: Core): Core {
  const end = at + core.length;
  const point = concept(reading, end, 'point');
  const decimals = point > 0 ? decimalsFrom(reading, end + point) : null;
  if (decimals) {
    const { length, part } = decimals;
    return {
      ...core,
      values: [Number((core.values[0]! + part).toFixed(length))],
      length: core.length + point + length,
      whole: false,
      decimals: length,
    };
  }
  const part = core.whole ? partMore(reading, end) : null;
  if (!part) return core;
  return {
    ...core,
    values: core.values.map((value) => value + part.share),
    length: core.length + part.length,
    whole: false,
  };
}

/** The digits after the point, one by one: `eight five`. */
function decimalsFrom(
  reading: Reading,
  at: number,
  how: 'in-words' | null = null,
): { readonly part: number; readonly length: number } | null {
  if (how === 'in-words' && reading.tokens[at]?.kind !== 'word') return null;
  let digits = '';
  for (;;) {
    const digit = singleDigit(reading, at + digits.length);
    if (digit === null) break;
    digits += String(digit);
  }
  if (digits === '') return null;
  return { part: Number(`0.${digits}`), length: digits.length };
}

function singleDigit(reading: Reading, at: number): number | null {
  const token = reading.tokens[at];
  if (token?.kind === 'number')
    return token.text.length <= 2 && Number.isInteger(token.values[0]) ? token.values[0]! : null;
  const phrase = phraseAt(reading, at);
  if (phrase?.value.concepts.has('spoken-zero') === true) return 0;
  if (phrase?.length !== 1 || phrase.value.number === null || phrase.value.number > 9) return null;
  return phrase.value.number;
}

/** `the last can`: one of the greenhouse's own containers. */
function lastOneAt(reading: Reading, at: number): Core | null {
  const has = (offset: number, concept: Concept) =>
    phraseWithin(reading, at + offset, 1)?.value.concepts.has(concept) === true;
  if (!has(0, 'article') || !has(1, 'last')) return null;
  const unit = unitAt(reading, at + 2)?.value;
  if (!unit || !('litres' in unit)) return null;
  return { ...oneInWords, length: 2, needsUnit: true };
}
