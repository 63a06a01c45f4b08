import { isLocalTime, type LocalTime } from '../../greenhouse/local-time.ts';
import { readingOf, unitAt } from '../reading/look-up.ts';
import type { Token } from '../reading/token.ts';
import type { UnitId } from '../vocabulary/vocabulary.ts';
import type { WishWorld } from './wish-world.ts';

const LITRES_PER_US_GALLON = 3.785411784;
const litresIn: Partial<Record<UnitId, number>> = {
  ml: 0.001,
  cl: 0.01,
  dl: 0.1,
  l: 1,
  gal: LITRES_PER_US_GALLON,
};
const cmIn: Partial<Record<UnitId, number>> = { mm: 0.1, cm: 1, m: 100, in: 2.54 };
const CM_PER_FOOT = 30.48;

/** `1/2`. */
function writtenFraction([above, bar, below]: readonly Token[]) {
  if (above?.kind !== 'number' || below?.kind !== 'number' || !below.values[0]) return null;
  const isFraction = bar !== undefined && /^[/\u2044]$/u.test(bar.text);
  return isFraction ? { value: above.values[0]! / below.values[0], length: 3 } : null;
}

/** A number in digits or in words, and how many words it takes; null: none begins here. */
function numberFrom(
  words: readonly Token[],
  { lexicon, words: own }: WishWorld,
): { readonly value: number; readonly length: number } | null {
  const [first] = words;
  const fraction = writtenFraction(words);
  if (fraction) return fraction;
  if (first?.kind === 'number') {
    // `1 1/2`
    const more = writtenFraction(words.slice(1));
    return more
      ? { value: first.values[0]! + more.value, length: 1 + more.length }
      : { value: first.values[0]!, length: 1 };
  }
  const { numbers, fractions } = lexicon.own.vocabulary;
  for (let length = Math.min(3, words.length); length > 0; length--) {
    const said = words
      .slice(0, length)
      .map(({ text }) => text)
      .join(' ');
    const value = numbers.get(said) ?? fractions.get(said);
    if (value === undefined) continue;
    // `half a litre`
    const isArticled = own.articles.includes(words[length]?.text ?? '');
    return { value, length: isArticled ? length + 1 : length };
  }
  // `a litre`
  return words.length > 1 && own.articles.includes(first?.text ?? '')
    ? { value: 1, length: 1 }
    : null;
}

export function readNumber(words: readonly Token[], world: WishWorld): number | undefined {
  const found = numberFrom(words, world);
  return found?.length === words.length ? found.value : undefined;
}

const mostCounted = 100_000;

export function readCount(words: readonly Token[], world: WishWorld): number | undefined {
  const value = readNumber(words, world);
  const isCount = value !== undefined && Number.isInteger(value) && value <= mostCounted;
  return isCount ? value : undefined;
}

/** What a bare depth is in: whoever counts in gallons measures in inches. */
function bareDepthCm({ greenhouse }: WishWorld): number {
  return greenhouse.units.volume === 'gal' ? cmIn.in! : 1;
}

/** Litres; a bare number is in the household's unit, unless a unit must be said. */
export function readLitres(
  words: readonly Token[],
  world: WishWorld,
  mayBeBare = true,
): number | undefined {
  const found = numberFrom(words, world);
  if (!found) return undefined;
  if (found.length === words.length) {
    if (!mayBeBare) return undefined;
    return found.value * (world.greenhouse.units.volume === 'gal' ? LITRES_PER_US_GALLON : 1);
  }
  const unit = unitOf(words.slice(found.length), world);
  if (!unit) return undefined;
  const litres = 'litres' in unit ? unit.litres : litresIn[unit.id];
  return litres === undefined ? undefined : Number((found.value * litres).toPrecision(10));
}

/** cm; a bare number is in the household's unit. */
export function readCm(words: readonly Token[], world: WishWorld): number | undefined {
  const found = numberFrom(words, world);
  if (!found) return undefined;
  if (found.length === words.length) {
    return Number((found.value * bareDepthCm(world)).toPrecision(10));
  }
  const unit = unitOf(words.slice(found.length), world);
  const isFeet = world.words.feet.includes(
    words
      .slice(found.length)
      .map(({ text }) => text)
      .join(' '),
  );
  const cm = isFeet ? CM_PER_FOOT : unit && 'id' in unit ? cmIn[unit.id] : undefined;
  return cm === undefined ? undefined : Number((found.value * cm).toPrecision(10));
}

const BELIEVED_AIR_C = [-20, 50] as const;

/** A temperature of the air, °C; bare degrees are in the household's unit. */
export function readDegrees(words: readonly Token[], world: WishWorld): number | undefined {
  const found = numberFrom(words, world);
  if (!found) return undefined;
  const unit = found.length === words.length ? null : unitOf(words.slice(found.length), world);
  const id = unit && 'id' in unit ? unit.id : null;
  if (unit && id !== 'celsius' && id !== 'fahrenheit' && id !== 'degree') return undefined;
  if (!unit && found.length < words.length) return undefined;
  const isSaid = id === 'celsius' || id === 'fahrenheit';
  const isF = isSaid ? id === 'fahrenheit' : world.greenhouse.units.temperature === 'F';
  const celsius = isF ? ((found.value - 32) * 5) / 9 : found.value;
  const [least, most] = BELIEVED_AIR_C;
  return celsius >= least && celsius <= most ? celsius : undefined;
}

function unitOf(words: readonly Token[], { lexicon }: WishWorld) {
  const found = unitAt(readingOf(words, lexicon), 0);
  return found?.length === words.length ? found.value : null;
}

/** `6:30`, `7`, `7 am`, `half past six`, `halb sieben`; undefined: no time of day. */
export function readTime(words: readonly Token[], world: WishWorld): LocalTime | undefined {
  const turn = turnFrom(words, world);
  const found = minutesFrom(words.slice(turn.length), world);
  if (!found || (turn.length > 0 && found.minutes % 60 !== 0)) return undefined;
  const after = words
    .slice(turn.length + found.length)
    .map(({ text }) => text)
    .join('');
  const added = after === '' ? 0 : world.words.clockWords.get(after);
  if (added === undefined) return undefined;
  const minutes = found.minutes + turn.minutes;
  const whole = minutes + (minutes < 12 * 60 ? added * 60 : 0);
  const time = `${String(Math.floor(whole / 60)).padStart(2, '0')}:${String(whole % 60).padStart(2, '0')}`;
  return isLocalTime(time) ? time : undefined;
}

interface Minutes {
  readonly minutes: number;
  readonly length: number;
}

/** What stands before an hour and turns it: `half past`, `halb`. */
function turnFrom(words: readonly Token[], { lexicon }: WishWorld): Minutes {
  const { clockTurns } = lexicon.own.vocabulary;
  for (let length = Math.min(3, words.length); length > 0; length--) {
    const said = words.slice(0, length).map(({ text }) => text);
    const minutes = clockTurns.get(said.join(' '));
    if (minutes !== undefined) return { minutes, length };
  }
  return { minutes: 0, length: 0 };
}

/** A time by the clock, or a whole hour in digits or in words. */
function minutesFrom(words: readonly Token[], world: WishWorld): Minutes | null {
  const [first] = words;
  if (first?.kind === 'clock') return { minutes: first.minutes, length: 1 };
  if (first?.kind === 'number' && /^\d{1,2}[.]\d{2}$/.test(first.text)) {
    const [hours, minutes] = first.text.split('.').map(Number);
    return { minutes: hours! * 60 + minutes!, length: 1 };
  }
  const hour = numberFrom(words, world);
  return hour && Number.isInteger(hour.value)
    ? { minutes: hour.value * 60, length: hour.length }
    : null;
}
