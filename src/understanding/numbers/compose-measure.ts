import { phraseAt, phraseWithin, type Reading, unitAt } from '../reading/look-up.ts';
import { Match } from '../reading/phrase-trie.ts';
import type { Token } from '../reading/token.ts';
import type { Unit } from '../reading/word-list.ts';
import { concept } from './concept-at.ts';
import { smallerContainer } from './containers-together.ts';
import { partMore } from './fraction.ts';
import type { Measure } from './measure.ts';
import { type Core, coreAt, fullAt } from './number-core.ts';
import { partOfOther, restInWords, smallerPart } from './smaller-part.ts';
import { addedAmount, addedCount } from './sum-said.ts';
import { unitFrom, withLength } from './unit-from.ts';

/** What word stands before a number, where that tells how it goes on. */
export type Lead = 'between' | 'from' | 'by' | 'ph' | 'label';

/** The number that starts at a token, with its unit, range and parts: `10-12 l`, `half a can`, `1 lb 4 oz`. */
export function measureAt(
  reading: Reading,
  at: number,
  lead: Lead | null = null,
): Match<Measure> | null {
  const spoken = coreAt(reading, at);
  const first = spoken && isLabelled(lead) ? inDigits(reading, at, spoken) : spoken;
  if (!first) return null;
  const range = rangeFrom(reading, at, first, lead);
  const said = range ?? first;
  const isSum = !range && lead !== 'ph' && lead !== 'label';
  const counted = isSum ? addedCount(reading, at + first.length, first) : null;
  const core = counted ? withMore(first, counted) : said;
  let end = at + core.length;
  const isOther =
    isLabelOfNext(reading, at, core, lead === 'ph') ||
    isParticle(reading, at, end) ||
    // `ph 5.8 w 1.7 ec`: no pH has a unit.
    (lead === 'ph' && withLength(reading, end) > 0);
  const unit = isOther ? null : unitOfCount(reading, end);
  if (unit) end += unit.length;
  else if (core.needsUnit) return null;
  let values = core.values;
  const part = unit && core.whole ? partMore(reading, end) : null;
  // `2 cans and half a jug`: the share has a unit of its own.
  const more = part && !unitFrom(reading, end + part.length) ? part : null;
  if (more) {
    values = values.map((value) => value + more.share);
    end += more.length;
  }
  const other = unit && part && !more ? partOfOther(reading, end, unit.value, part) : null;
  const rest =
    other ??
    (unit && values.length === 1
      ? (smallerPart(reading, end, unit.value) ?? restInWords(reading, end, unit.value))
      : null);
  if (rest) {
    values = [values[0]! + rest.share];
    end += rest.length;
  }
  const tokens = reading.tokens;
  const together =
    unit && values.length === 1 ? smallerContainer(reading, at, end, unit.value) : null;
  if (together && unit && 'litres' in unit.value) {
    values = [values[0]! * unit.value.litres + together.litres];
    end += together.length;
  }
  const added =
    unit && !together && values.length === 1 ? addedAmount(reading, at, end, unit.value) : null;
  if (added) {
    values = [values[0]! + added.share];
    end += added.length;
  }
  const measure: Measure = {
    values,
    unit: together ? { id: 'l', shy: false } : (unit?.value ?? null),
    approximate: core.approximate,
    bound: false,
    share: core.share,
    disputedBy: undefined,
    written: writtenFrom(tokens, at, end),
    whole: core.whole && !more,
    decimals: core.decimals,
  };
  if (core.inWords && !unit && !core.share && core.whole && values[0]! <= 1) return null;
  return new Match(measure, end - at);
}

function isLabelled(lead: Lead | null): boolean {
  return lead === 'ph' || lead === 'label';
}

/** `ph six one`, `EC zwei vier`: two digits spoken after the word of a reading, and nothing that they could count. */
function inDigits(reading: Reading, at: number, core: Core): Core {
  const end = at + core.length;
  const second = phraseWithin(reading, end, 1)?.value.number ?? null;
  const isDigit = (value: number | null) => value !== null && value > 0 && value < 10;
  if (!core.inWords || !core.whole || !isDigit(core.values[0]!) || !isDigit(second)) return core;
  const next = reading.tokens[end + 1];
  const after = phraseAt(reading, end + 1)?.value;
  const isLabel = (['ph', 'ec', 'temperature', 'and'] as const).some((concept) =>
    after?.concepts.has(concept),
  );
  if (next && next.kind !== 'line' && next.kind !== 'mark' && !isLabel) return core;
  const value = Number(`${core.values[0]!}.${second!}`);
  return { ...core, values: [value], length: core.length + 1, whole: false, decimals: 1 };
}

/** The unit that follows a number, or `more` of it, or a vessel that is full: `2 more cans`, `2 full cans`. */
function unitOfCount(reading: Reading, at: number): Match<Unit> | null {
  const unit = unitFrom(reading, at);
  if (unit) return unit;
  const more = concept(reading, at, 'another') || fullAt(reading, at);
  const after = more > 0 ? unitFrom(reading, at + more) : null;
  return after ? new Match(after.value, more + after.length) : null;
}

function withMore(core: Core, { share, length }: { share: number; length: number }): Core {
  return {
    ...core,
    values: core.values.map((value) => value + share),
    length: core.length + length,
  };
}

/** `put 25 in`, `poured about 3 in`: what belongs to the verb before the number, and no inch. */
function isParticle(reading: Reading, at: number, end: number): boolean {
  const unit = unitAt(reading, end)?.value;
  if (!unit || !('shy' in unit) || !unit.shy || reading.tokens[end]!.glued) return false;
  let verb = at - 1;
  while (verb > 0 && (concept(reading, verb, 'about') || concept(reading, verb, 'another'))) verb--;
  const parted = [reading.tokens[verb]?.text ?? '', reading.tokens[end]!.text];
  const concepts = reading.lexicon.own.phrases.get(parted)?.concepts;
  return concepts?.has('add') === true || concepts?.has('add-plainly') === true;
}

/** Nobody reads so few parts per million: what follows is the label of the number after it. */
const leastPpm = 30;

/** `ph 6.1 ppm 1120`, `6.1 ppm 1120`: the unit's name leads the next number. */
function isLabelOfNext(reading: Reading, at: number, core: Core, afterPh: boolean): boolean {
  const end = at + core.length;
  const unit = unitFrom(reading, end)?.value;
  if (!unit || !('id' in unit) || (unit.id !== 'ppm' && unit.id !== 'cf')) return false;
  let next = end + 1;
  while ([':', '='].includes(reading.tokens[next]?.text ?? '')) next++;
  if (coreAt(reading, next) === null) return false;
  return afterPh || (unit.id === 'ppm' && core.values[0]! < leastPpm);
}

function writtenFrom(tokens: readonly Token[], from: number, to: number): string {
  let text = '';
  for (let i = from; i < to; i++)
    text += (i > from && !tokens[i]!.glued ? ' ' : '') + tokens[i]!.text;
  return text;
}

/** `10-12`, `10 to 12`, `between 10 and 12`: the middle, approximate. */
function rangeFrom(reading: Reading, at: number, low: Core, lead: Lead | null): Core | null {
  // `half 3 to 4`, `halb 3 bis 4`: hours.
  if ((phraseAt(reading, at - 1)?.value.clockTurn ?? null) !== null) return null;
  const joint = at + low.length;
  const unit = unitFrom(reading, joint);
  const from = joint + (unit?.length ?? 0);
  // `rose by 0.3 to 6.2`, `topped up by 20 l to 500 l`: a step, and where it led.
  if (lead === 'by' && concept(reading, from, 'to') > 0) return null;
  const link = linkLength(reading, from, lead === 'between');
  const afterFrom = lead === 'from';
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
  // `5.9 - 1.7 - 21` goes on: a list, no range.
  if (isDash(reading, at - 1) || isDash(reading, from + link + high.length)) return null;
  const [a, b] = [low.values[0]!, high.values[0]!];
  if (a >= b || low.needsUnit) return null;
  // `pH 5.4 or 6.4`, `12 or 21`: one of two, and nothing between them.
  if (concept(reading, from, 'or') > 0 && !liesBetween(low, high)) return null;
  // `EC 1,8 – 21 °C`: a dash between two things told, far apart.
  const dash = reading.tokens[from]!;
  if (isSpacedDash(dash, reading.tokens[from + 1]) && b > widestSpaced * a) return null;
  if (unit && !sameUnit(unit.value, unitFrom(reading, from + link + high.length)?.value))
    return null;
  const length = from + link + high.length - at;
  return { ...high, values: [(a + b) / 2], length, approximate: true, whole: false };
}

/** `5 or 6 l`, `2 or 3 cans`, `5.8 or 5.9`: told with `or`, and so near that the middle is what is meant. */
function liesBetween(low: Core, high: Core): boolean {
  const [a, b] = [low.values[0]!, high.values[0]!];
  return low.whole && high.whole
    ? b - a <= nextWholes || b <= widestInDoubt * a
    : b - a <= nextTenths + 1e-9;
}

const nextWholes = 2;
const nextTenths = 0.3;
/** Of two whole numbers, one of them about right, the greater is no more than so many times the other. */
const widestInDoubt = 1.5;

/** A range that is written with blanks around its dash is no wider than this. */
const widestSpaced = 2.5;

function isSpacedDash(dash: Token, after: Token | undefined): boolean {
  return ['-', '–', '—'].includes(dash.text) && !dash.glued && after?.glued === false;
}

function isDash({ tokens }: Reading, at: number): boolean {
  const isMark = ['-', '–', '—'].includes(tokens[at]?.text ?? '');
  return isMark && tokens[at - 1]?.kind === 'number' && tokens[at + 1]?.kind === 'number';
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
  // `Wanne und Tisch pH 5,8 bzw. 6`: each has its own.
  if (concept(reading, at, 'or-each') > 0) return 0;
  return concept(reading, at, 'until') || concept(reading, at, 'or');
}
