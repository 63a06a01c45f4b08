import { phraseAt, phraseWithin, type Reading, unitAt } from '../reading/look-up.ts';
import type { Word } from '../reading/word.ts';
import { concept } from './concept-at.ts';

interface Spoken {
  readonly value: number;
  readonly length: number;
}

/** `eleven hundred and fifty`, `one thousand two hundred`, `nine eighty ppm`: more words than one phrase makes a number of. */
export function spokenFrom(reading: Reading, at: number, word: Word, length: number): Spoken {
  const first = { value: word.number!, length };
  if (!Number.isInteger(first.value)) return first;
  return hundredsFrom(reading, at, first) ?? asRead(reading, at, first) ?? first;
}

function numberAt(reading: Reading, at: number): Spoken | null {
  const phrase = phraseAt(reading, at);
  const value = phrase?.value.number ?? null;
  return phrase && value !== null && Number.isInteger(value)
    ? { value, length: phrase.length }
    : null;
}

function hundredsFrom(reading: Reading, at: number, first: Spoken): Spoken | null {
  const end = at + first.length;
  const times = phraseWithin(reading, end, 1)?.value;
  const isTimes = times?.number != null && times.concepts.has('multiplier');
  if (!isTimes) return first.value >= 1000 ? withRest(reading, at, first, 1000) : null;
  const value = first.value * times.number;
  return withRest(reading, at, { value, length: first.length + 1 }, times.number);
}

function withRest(reading: Reading, at: number, round: Spoken, below: number): Spoken {
  const end = at + round.length;
  const and = concept(reading, end, 'and');
  const rest = numberAt(reading, end + and);
  if (!rest || rest.value >= below || rest.value === 0) return round;
  const after = end + and + rest.length;
  // `eleven hundred and six point one`: what follows the and is a number of its own.
  if (concept(reading, after, 'point') > 0) return round;
  return { value: round.value + rest.value, length: after - at };
}

/** `nine eighty ppm`: said as one reads it out, of what is counted in hundreds. */
function asRead(reading: Reading, at: number, first: Spoken): Spoken | null {
  if (first.value < 1 || first.value > 99) return null;
  const second = numberAt(reading, at + first.length);
  if (!second || second.value < 10 || second.value > 99) return null;
  const length = first.length + second.length;
  const unit = unitAt(reading, at + length)?.value;
  const isOfHundreds = unit && 'id' in unit && (unit.id === 'ppm' || unit.id === 'us-cm');
  return isOfHundreds ? { value: first.value * 100 + second.value, length } : null;
}

/** `point nine`: how many tokens lead to the decimals of a number that is less than one; 0: none does. */
export function pointAlone(reading: Reading, at: number): number {
  const before = phraseAt(reading, at - 1)?.value;
  const isOther = (['article', 'this', 'pronoun', 'what', 'each', 'no', 'which'] as const).some(
    (one) => before?.concepts.has(one),
  );
  return isOther ? 0 : concept(reading, at, 'point');
}
