import { phraseAt, type Reading, unitAt } from '../reading/look-up.ts';
import type { Match } from '../reading/phrase-trie.ts';
import type { Token } from '../reading/token.ts';
import type { Unit } from '../reading/word-list.ts';
import type { Concept } from '../vocabulary/concept.ts';
import type { Measure } from './measure.ts';

/** A number without its unit, and how many tokens it takes. */
interface Core {
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

/** The number that starts at a token, with its unit, range and parts: `10-12 l`, `half a can`, `1 lb 4 oz`. */
export function measureAt(
  reading: Reading,
  at: number,
  afterBetween: boolean,
  afterFrom: boolean,
): Match<Measure> | null {
  const first = coreAt(reading, at);
  if (!first) return null;
  const range = rangeFrom(reading, at, first, afterBetween, afterFrom);
  const core = range ?? first;
  let end = at + core.length;
  const unit = unitFrom(reading, end);
  if (unit) end += unit.length;
  else if (core.needsUnit) return null;
  let values = core.values;
  const more = unit ? concept(reading, end, 'half-more') : 0;
  if (more > 0) {
    values = values.map((value) => value + 1 / 2);
    end += more;
  }
  const rest = unit && values.length === 1 ? smallerPart(reading, end, unit.value) : null;
  if (rest) {
    values = [values[0]! + rest.share];
    end += rest.length;
  }
  const tokens = reading.tokens;
  const measure: Measure = {
    values,
    unit: unit?.value ?? null,
    approximate: core.approximate,
    bound: false,
    share: core.share,
    written: writtenFrom(tokens, at, end),
    whole: core.whole && more === 0,
    decimals: core.decimals,
  };
  if (core.inWords && !unit && !core.share && core.whole && values[0]! <= 1) return null;
  return { value: measure, length: end - at };
}

function writtenFrom(tokens: readonly Token[], from: number, to: number): string {
  let text = '';
  for (let i = from; i < to; i++)
    text += (i > from && !tokens[i]!.glued ? ' ' : '') + tokens[i]!.text;
  return text;
}

function coreAt(reading: Reading, at: number): Core | null {
  const { tokens } = reading;
  const token = tokens[at];
  if (!token) return null;
  if (token.text === '-' || token.text === '+') return signedAt(reading, at);
  if (token.kind === 'number') return afterNumeral(reading, at, token);
  const phrase = phraseAt(reading, at);
  if (!phrase) return null;
  const { value: word, length } = phrase;
  const plain = {
    length,
    approximate: false,
    share: false,
    inWords: true,
    whole: true,
    decimals: 0,
    needsUnit: false,
  };
  if (word.number !== null) return withDecimals(reading, at, { ...plain, values: [word.number] });
  if (word.fraction !== null)
    return { ...plain, values: [word.fraction], share: true, whole: false };
  if (word.concepts.has('couple'))
    return { ...plain, values: [2], approximate: true, needsUnit: true };
  if (word.concepts.has('indefinite') && length === 1) {
    const unit = unitAt(reading, at + 1);
    const isLong = unit !== null && (unit.length > 1 || tokens[at + 1]!.text.length > 1);
    return isLong ? { ...plain, values: [1], needsUnit: true } : null;
  }
  return null;
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
  const plain = {
    length: 1,
    approximate: false,
    share: false,
    inWords: false,
    whole: decimals === 0,
    decimals,
    needsUnit: false,
  };
  const isWhole = token.values.length === 1 && decimals === 0;
  if (isWhole) {
    const alone = fractionFrom(tokens, at);
    if (alone !== null && isShareOfSomething(reading, at + 3)) {
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

function decimalsOf(text: string): number {
  const mark = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
  return mark < 0 ? 0 : text.length - mark - 1;
}

const largestDenominator = 10;

/** `3/4`: a small proper fraction, written without blanks. */
function fractionFrom(tokens: readonly Token[], at: number): number | null {
  const [top, stroke, bottom] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (top?.kind !== 'number' || stroke?.text !== '/' || bottom?.kind !== 'number') return null;
  if (!stroke.glued || !bottom.glued || top.text.length > 1 || bottom.text.length > 2) return null;
  const [a, b] = [top.values[0]!, bottom.values[0]!];
  return Number.isInteger(b) && a > 0 && a < b && b <= largestDenominator ? a / b : null;
}

/** After a fraction: something to have a share of, so that `6/2` in shorthand stays two numbers. */
function isShareOfSomething(reading: Reading, at: number): boolean {
  if (unitAt(reading, at)) return true;
  const word = phraseAt(reading, at)?.value;
  if (!word) return false;
  return ['full', 'empty', 'left-over', 'of', 'indefinite', 'down', 'deep'].some((concept) =>
    word.concepts.has(concept as Concept),
  );
}

/** `a` in `1/2 a jug`, `of a` in `1/3 of a can`. */
function shareOf(reading: Reading, at: number): number {
  const of = concept(reading, at, 'of');
  const indefinite = concept(reading, at + of, 'indefinite');
  return indefinite > 0 && unitAt(reading, at + of + indefinite) ? of + indefinite : 0;
}

/** `2 x 10 l`: so many times an amount. */
function timesFrom(
  reading: Reading,
  at: number,
  count: number,
): Pick<Core, 'values' | 'length'> | null {
  const by = concept(reading, at + 1, 'times');
  const token = reading.tokens[at + 1 + by];
  if (by === 0 || token?.kind !== 'number' || !unitAt(reading, at + 2 + by)) return null;
  return { values: token.values.map((value) => value * count), length: 2 + by };
}

/** `five point eight`, `two and a half`. */
function withDecimals(reading: Reading, at: number, core: Core): Core {
  const end = at + core.length;
  const point = concept(reading, end, 'point');
  if (point > 0) {
    let digits = '';
    let length = 0;
    for (;;) {
      const digit = singleDigit(reading, end + point + length);
      if (digit === null) break;
      digits += String(digit);
      length++;
    }
    if (digits !== '') {
      return {
        ...core,
        values: [Number(`${core.values[0]!}.${digits}`)],
        length: core.length + point + length,
        whole: false,
        decimals: digits.length,
      };
    }
  }
  const half = concept(reading, end, 'half-more');
  if (half === 0) return core;
  return {
    ...core,
    values: core.values.map((value) => value + 1 / 2),
    length: core.length + half,
    whole: false,
  };
}

function singleDigit(reading: Reading, at: number): number | null {
  const token = reading.tokens[at];
  if (token?.kind === 'number')
    return token.text.length <= 2 && Number.isInteger(token.values[0]) ? token.values[0]! : null;
  const phrase = phraseAt(reading, at);
  if (phrase?.length !== 1 || phrase.value.number === null || phrase.value.number > 9) return null;
  return phrase.value.number;
}

/** How many tokens a phrase of that concept takes here; 0 if there is none. */
function concept(reading: Reading, at: number, wanted: Concept): number {
  const phrase = phraseAt(reading, at);
  return phrase?.value.concepts.has(wanted) ? phrase.length : 0;
}

/** `10-12`, `10 to 12`, `between 10 and 12`: the middle, approximate. */
function rangeFrom(
  reading: Reading,
  at: number,
  low: Core,
  afterBetween: boolean,
  afterFrom: boolean,
): Core | null {
  const joint = at + low.length;
  const unit = unitFrom(reading, joint);
  const from = joint + (unit?.length ?? 0);
  const link = linkLength(reading, from, afterBetween);
  if (link === 0 || (afterFrom && !joinsAfterFrom(reading, from))) return null;
  const high = coreAt(reading, from + link);
  // `von 2 bis 4` may be hours.
  const mayBeHours = afterFrom && low.whole && high?.whole;
  if (mayBeHours && !unitFrom(reading, from + link + high.length)) return null;
  if (
    !high ||
    (high.values.length > 1 && low.values.length === 1 && high.values[0]! < low.values[0]!)
  )
    return null;
  const [a, b] = [low.values[0]!, high.values[0]!];
  if (a >= b || low.needsUnit) return null;
  if (unit && !sameUnit(unit.value, unitFrom(reading, from + link + high.length)?.value))
    return null;
  const length = from + link + high.length - at;
  return { ...high, values: [(a + b) / 2], length, approximate: true, whole: false };
}

function sameUnit(a: Unit, b: Unit | undefined): boolean {
  if (!b) return false;
  return 'id' in a ? 'id' in b && a.id === b.id : 'litres' in b && a.litres === b.litres;
}

/** `from 5.4 to 6.1` is a before and an after; `von 10 bis 12` is a range. */
function joinsAfterFrom(reading: Reading, at: number): boolean {
  return concept(reading, at, 'until') > 0 && concept(reading, at, 'place') === 0;
}

function linkLength(reading: Reading, at: number, afterBetween: boolean): number {
  const token = reading.tokens[at];
  const next = reading.tokens[at + 1];
  if (!token || !next) return 0;
  if (token.text === '-' || token.text === '–' || token.text === '—') return 1;
  if (afterBetween) return concept(reading, at, 'and');
  return concept(reading, at, 'until') || concept(reading, at, 'or');
}

function unitFrom(reading: Reading, at: number): Match<Unit> | null {
  const unit = unitAt(reading, at);
  if (!unit || !('shy' in unit.value) || !unit.value.shy) return unit;
  // An inch only where the word can be no preposition.
  if (reading.tokens[at]!.glued) return unit;
  const after = reading.tokens[at + unit.length];
  if (!after || after.kind === 'line' || ',.;!?'.includes(after.text)) return unit;
  const word = phraseAt(reading, at + unit.length)?.value;
  return word &&
    ['below', 'deep', 'left-over', 'down'].some((wanted) => word.concepts.has(wanted as Concept))
    ? unit
    : null;
}

const ouncesInPound = 16;
const minutesInHour = 60;

/** `4 oz` after pounds, `30 min` after hours, as a share of the larger unit. */
function smallerPart(
  reading: Reading,
  at: number,
  larger: Unit,
): { share: number; length: number } | null {
  if (!('id' in larger) || (larger.id !== 'lb' && larger.id !== 'hour')) return null;
  const token = reading.tokens[at];
  if (token?.kind !== 'number' || token.values.length !== 1) return null;
  const unit = unitAt(reading, at + 1);
  if (!unit || !('id' in unit.value)) return null;
  const parts =
    larger.id === 'lb' && unit.value.id === 'oz'
      ? ouncesInPound
      : larger.id === 'hour' && unit.value.id === 'minute'
        ? minutesInHour
        : 0;
  return parts > 0 && token.values[0]! < parts
    ? { share: token.values[0]! / parts, length: 1 + unit.length }
    : null;
}
