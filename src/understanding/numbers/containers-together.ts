import { matchName } from '../names/match-name.ts';
import { phraseWithin, type Reading, unitAt } from '../reading/look-up.ts';
import type { Unit } from '../reading/word-list.ts';
import { coreAt } from './number-core.ts';

/** `two cans and a jug`: the litres of a smaller container that belong to the same amount. */
export function smallerContainer(
  reading: Reading,
  from: number,
  end: number,
  larger: Unit,
): { litres: number; length: number } | null {
  // The bare word: `and a half` is a phrase of its own.
  const and = phraseWithin(reading, end, 1)?.value.concepts.has('and') ? 1 : 0;
  if (!('litres' in larger) || and === 0) return null;
  const core = coreAt(reading, end + and);
  if (core?.values.length !== 1) return null;
  const unit = unitAt(reading, end + and + core.length);
  if (!unit || !('litres' in unit.value) || unit.value.litres >= larger.litres) return null;
  const length = and + core.length + unit.length;
  return isOfTwoSystems(reading, from, end + length)
    ? null
    : { litres: core.values[0]! * unit.value.litres, length };
}

/** How far off a name is looked for. */
const reach = 6;

/** `bench 2 cans and a jug in the jars`: a name before and a name after. */
export function isOfTwoSystems(reading: Reading, from: number, to: number): boolean {
  return hasName(reading, from - 1, -1) && hasName(reading, to, 1);
}

function hasName({ tokens, lexicon }: Reading, from: number, step: 1 | -1): boolean {
  for (let n = 0; n < reach; n++) {
    const token = tokens[from + n * step];
    if (!token || token.kind === 'line' || ',.;!?'.includes(token.text)) return false;
    if (matchName(tokens, from + n * step, lexicon) !== null) return true;
  }
  return false;
}
