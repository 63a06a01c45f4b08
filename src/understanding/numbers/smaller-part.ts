import { phraseAt, phraseWithin, type Reading, unitAt } from '../reading/look-up.ts';
import type { Token } from '../reading/token.ts';
import type { Unit } from '../reading/word-list.ts';
import { concept } from './concept-at.ts';
import { litresOfUnit } from './quantity-of-measure.ts';
import { unitFrom } from './unit-from.ts';

/** Units that are told together with a smaller one, and how many of that they hold. */
const smallerUnits = new Map<string, { readonly smaller: string; readonly count: number }>([
  ['lb', { smaller: 'oz', count: 16 }],
  ['kg', { smaller: 'g', count: 1000 }],
  ['hour', { smaller: 'minute', count: 60 }],
  ['minute', { smaller: 'second', count: 60 }],
]);

/** `4 oz` after pounds, `200 g` after kilos, `30 min` after hours, as a share of the larger unit. */
export function smallerPart(
  reading: Reading,
  at: number,
  larger: Unit,
): { share: number; length: number } | null {
  const parts = 'id' in larger ? smallerUnits.get(larger.id) : undefined;
  if (!parts) return null;
  // `1 kilo and 200 g`: only where the smaller unit is said.
  const and = phraseWithin(reading, at, 1)?.value.concepts.has('and') ? 1 : 0;
  const token = reading.tokens[at + and];
  if (token?.kind !== 'number' || token.values.length !== 1) return null;
  const unit = unitAt(reading, at + and + 1);
  // `9 minutes 30`: at the end the seconds need no unit.
  const areBare = !unit && and === 0 && parts.smaller === 'second';
  if (areBare && (isLastOfClause(reading, at) || isAfterTook(reading, at)))
    return { share: token.values[0]! / parts.count, length: 1 };
  if (!unit || !('id' in unit.value) || unit.value.id !== parts.smaller) return null;
  return token.values[0]! < parts.count
    ? { share: token.values[0]! / parts.count, length: and + 1 + unit.length }
    : null;
}

function isLastOfClause({ tokens }: Reading, at: number): boolean {
  const [token, after] = [tokens[at]!, tokens[at + 1]];
  // `max 31 min 12`: the short word may be another.
  if (tokens[at - 1]!.text.length <= 3) return false;
  const ends = !after || after.kind === 'line' || ',.;!'.includes(after.text);
  return ends && areSeconds(token);
}

function areSeconds(token: Token): boolean {
  return Number.isInteger(token.values[0]) && token.values[0]! < 60;
}

/** How many words before an amount may tell that it is the time that something took. */
const tookWordsBefore = 6;

/** `flood took 6 min 40 on the bench`: seconds, wherever the clause goes on. */
function isAfterTook(reading: Reading, at: number): boolean {
  if (!/^\d\d$/.test(reading.tokens[at]!.text) || !areSeconds(reading.tokens[at]!)) return false;
  for (let i = at - 1; i >= Math.max(0, at - tookWordsBefore); i--)
    if (concept(reading, i, 'took') > 0 || concept(reading, i, 'flood') > 0) return true;
  return false;
}

/** `3 l and a half can`: a share of another vessel. */
export function partOfOther(
  reading: Reading,
  at: number,
  unit: Unit,
  part: { readonly share: number; readonly length: number },
): { share: number; length: number } | null {
  const next = unitFrom(reading, at + part.length);
  const [litres, others] = [litresOfUnit(unit), next && litresOfUnit(next.value)];
  if (!next || litres === null || others === null) return null;
  return { share: (part.share * others) / litres, length: part.length + next.length };
}

/** `ein Kilo zweihundert`, `zwei Liter fünfhundert`: the thousandths are said without their unit. */
export function restInWords(
  reading: Reading,
  at: number,
  larger: Unit,
): { share: number; length: number } | null {
  if (!('id' in larger) || (larger.id !== 'kg' && larger.id !== 'l')) return null;
  const token = reading.tokens[at];
  // `2 Kilo 300`, in figures too; of litres those may be parts per million.
  const isInFigures = token?.kind === 'number' && larger.id === 'kg' && token.values.length === 1;
  if (token?.kind !== 'word' && !isInFigures) return null;
  const phrase = isInFigures
    ? { value: { number: token.values[0]! }, length: 1 }
    : phraseAt(reading, at);
  const rest = phrase?.value.number ?? null;
  if (!phrase || rest === null || rest < 100 || rest >= 1000 || !Number.isInteger(rest))
    return null;
  return unitFrom(reading, at + phrase.length)
    ? null
    : { share: rest / 1000, length: phrase.length };
}
