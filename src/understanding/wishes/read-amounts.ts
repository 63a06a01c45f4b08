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

/** A number in digits or in words, and how many words it takes; null: none begins here. */
function numberFrom(
  words: readonly Token[],
  { lexicon, words: own }: WishWorld,
): { readonly value: number; readonly length: number } | null {
  const [first] = words;
  if (first?.kind === 'number') return { value: first.values[0]!, length: 1 };
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

export function readCm(words: readonly Token[], world: WishWorld): number | undefined {
  const found = numberFrom(words, world);
  if (!found) return undefined;
  if (found.length === words.length) return found.value;
  const unit = unitOf(words.slice(found.length), world);
  const cm = unit && 'id' in unit ? cmIn[unit.id] : undefined;
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

/** `6:30`, `7`, `7 am`, `half`-less; null: no time of day. */
export function readTime(
  words: readonly Token[],
  { words: own }: WishWorld,
): LocalTime | undefined {
  const [first, ...rest] = words;
  if (!first) return undefined;
  const minutes =
    first.kind === 'clock'
      ? first.minutes
      : first.kind === 'number' && Number.isInteger(first.values[0])
        ? first.values[0]! * 60
        : first.kind === 'number' && /^\d{1,2}[.]\d{2}$/.test(first.text)
          ? Number(first.text.split('.')[0]) * 60 + Number(first.text.split('.')[1])
          : null;
  if (minutes === null) return undefined;
  const after = rest.map(({ text }) => text).join('');
  const added = after === '' ? 0 : own.clockWords.get(after);
  if (added === undefined) return undefined;
  const whole = minutes + (minutes < 12 * 60 ? added * 60 : 0);
  const time = `${String(Math.floor(whole / 60)).padStart(2, '0')}:${String(whole % 60).padStart(2, '0')}`;
  return isLocalTime(time) ? time : undefined;
}
