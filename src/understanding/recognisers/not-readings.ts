import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isMeasure,
  isName,
  measureOf,
  nextIn,
  take,
} from '../reading/frame.ts';
import { isBracket } from '../reading/said-twice.ts';
import { isMark, isProbe, isUnknown, means, type Term } from '../reading/term.ts';
import { isNumberOfPlanter } from '../systems/stranger.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { isHeldAgainst } from './held-against.ts';
import { isHeightOfWater } from './level-talk.ts';

/** Takes out the numbers that measure nothing here: counts, labels, sizes, prices, the weather outside. */
export function takeNotReadings(frame: Frame): void {
  for (const clause of frame.clauses) {
    for (let i = clause.from; i < clause.to; i++) {
      const term = frame.terms[i]!;
      if (term.kind === 'digits') take(frame, i);
      else if (isMeasure(term) && !frame.taken[i] && isNoReading(frame, clause, i)) take(frame, i);
    }
    dropOutside(frame, clause);
  }
}

function isNoReading(frame: Frame, clause: Clause, i: number): boolean {
  const term = frame.terms[i]!;
  if (!isMeasure(term)) return false;
  const { measure } = term;
  const before = frame.terms[i - 1];
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  const bare = measure.unit === null && !measure.share;
  // `1. dwc ph 5.8`, `1) dwc ph 5.8`: the number of a line.
  const isLineNumber =
    clause.to - clause.from === 1 &&
    (clause.closes === 'sentence' || isBracket(frame.terms[clause.to], ')')) &&
    (clause.opens === 'start' || clause.opens === 'line');
  if (bare && measure.whole && isLineNumber) return true;
  // `at the third mark`: which of several.
  const isOneOf = measure.share && means(before, 'article') && !means(before, 'indefinite');
  if (isOneOf && isUnknown(after)) return true;
  if (i > clause.from && bare && isNumberOf(before)) return true;
  if (i > clause.from && isNumberOfPlanter(frame, clause, i)) return true;
  if (means(before, 'money') || means(after, 'money')) return true;
  // `5.9 plus minus 0.1`: how far off it may be.
  if (means(before, 'tolerance') && isMeasure(frame.terms[i - 2])) return true;
  // The 4.01 solution, the 7.00 buffer, buffer 7: what a bottle is called.
  const isCalled =
    means(after, 'buffer', 'vessel') || (means(after, 'solution') && means(before, 'article'));
  const isOfBottle = isCalled || means(before, 'buffer');
  const isInBuffer =
    (means(after, 'buffer') && isMeasure(frame.terms[i + 2])) ||
    // `7er zeigte 7,1`: what was shown in it is told.
    (means(after, 'buffer') &&
      means(frame.terms[i + 2], 'read-as') &&
      isMeasure(frame.terms[i + 3])) ||
    (means(before, 'buffer') && isMeasure(frame.terms[i - 2])) ||
    // `buffer 4.01 showed 4.10`.
    (means(before, 'buffer') && means(after, 'read-as') && isMeasure(frame.terms[i + 2]));
  if (bare && isOfBottle && !isInBuffer && !calibrates(frame, clause)) return true;
  if (bare && isOfBuffer(frame, clause, i)) return true;
  if (bare && measure.whole && isHourOfComing(frame, clause, i)) return true;
  if ((bare || isVolume(measure)) && isPlanned(frame, clause, i)) return true;
  if (bare && measure.whole && isCounted(frame, clause, i, after)) return true;
  if (
    !bare &&
    i > clause.from &&
    means(before, 'vessel') &&
    !means(before, 'reservoir') &&
    isVolume(measure)
  )
    return true;
  // `filled the jars from a can`: what it came out of, full or not.
  const isSource = means(before, 'from') && i > clause.from && measure.values[0] === 1;
  if (isSource && measure.unit && 'litres' in measure.unit) return true;
  // A 5 l bottle, 5 cm of root, 50 % shade.
  if (!bare && means(after, 'vessel') && isVolume(measure)) return true;
  const isLength = unitIs(measure, 'cm', 'mm', 'm', 'in');
  const isSizeAfter = means(after, 'size', 'counted') && !means(after, 'with');
  const isSized = isSizeAfter || means(before, 'size');
  if (isLength && isSized && !isHeightOfWater(frame, clause)) return true;
  if (isSetting(frame, clause, i)) return true;
  if (isStep(frame, clause, i)) return true;
  if (isHeldAgainst(frame, clause, i) || isGivenUp(frame, clause, i)) return true;
  if (isPartNumber(frame, clause, i)) return true;
  // The 10 l bucket.
  if (isVolume(measure) && after?.kind === 'name' && means(before, 'article')) return true;
  if (unitIs(measure, 'percent', 'cm', 'mm', 'm', 'in') && after && isUnknown(after)) return true;
  if (unitIs(measure, 'day', 'week', 'month', 'year')) return true;
  return false;
}

/** `7.1 in the 7.0 buffer so dwc 5.9`: an aside on the probe, beside other values and with no probe to log it for. */
function isOfBuffer(frame: Frame, clause: Clause, i: number): boolean {
  const at = means(frame.terms[i + 2], 'article') ? i + 3 : i + 2;
  const isIn = means(frame.terms[i + 1], 'place') && isMeasure(frame.terms[at]);
  if (!isIn || !means(frame.terms[at + 1], 'buffer') || calibrates(frame, clause)) return false;
  return (
    frame.places.where(isMeasure).length > 2 && !frame.places.hasWhere(isProbe, clause.from, i)
  );
}

/** `it was already 9 when I got here`: how late it was, with nothing that was measured. */
function isHourOfComing(frame: Frame, clause: Clause, i: number): boolean {
  const { terms, places } = frame;
  let verb = i - 1;
  while (
    verb > clause.from &&
    means(terms[verb], 'filler', 'about') &&
    !means(terms[verb], 'link', 'was')
  )
    verb--;
  const isSaid = verb >= clause.from && means(terms[verb], 'link', 'was');
  if (!isSaid || !means(terms[i + 1], 'by-the-time') || !means(terms[i + 2], 'self')) return false;
  return !hasLabel(frame, clause) && !places.hasWhere(isName, clause.from, i);
}

/** `the plan said 12, but …`, `im Plan stand 12`: what somebody wrote down to be done. */
function isPlanned({ terms }: Frame, clause: Clause, i: number): boolean {
  const [verb, subject] = [terms[i - 1], terms[i - 2]];
  if (i - 2 < clause.from || i + 1 !== clause.to) return false;
  if (means(subject, 'job')) return means(verb, 'says', 'was');
  return clause.closes === 'but' && means(subject, 'pronoun') && means(verb, 'says');
}

/** `row 3`, `error 12`, `plant no. 7`: what names a thing by a number. */
function isNumberOf(before: Term | undefined): boolean {
  return (
    means(before, 'numbered') &&
    !means(before, 'not', 'said-no', 'level') &&
    before?.kind === 'word'
  );
}

/** `20 plants`, `6 buckets`, `3 ripe ones`: a whole number and what is counted. */
function isCounted(frame: Frame, clause: Clause, i: number, after: Term | undefined): boolean {
  if (!after) return false;
  if (after.kind === 'name') {
    const first = frame.terms[i - 1];
    if (first?.kind === 'name' && first.systems.join() !== after.systems.join()) return false;
    // `dwc:5.8/1.7/21 nft:6.0/1.2/20`: the number ends a row, and the name opens the next.
    if (isMark(first, '/') && isMeasure(frame.terms[i - 2])) return false;
    if (isMeasure(first) && first.measure.unit === null) return false;
    // `ec 1400 gutters`: the label's own number.
    if (i > clause.from && isLabel(first)) return false;
    if (isOneOfRow(frame, clause, i)) return false;
    // `all 6 buckets`, `2 jars look sad`; but `topped up 12 dwc` is an amount.
    return isPlural(frame, after.text) && !means(first, 'top-up', 'add', 'fill') && !after.everyday;
  }
  if (after.kind !== 'word') return false;
  if (after.word.crop !== null) return true;
  if (
    means(after, 'of') &&
    i + 2 < clause.to &&
    (means(frame.terms[i + 2], 'pronoun') ||
      // `30 of a`, and nothing after it: a product's short name.
      (means(frame.terms[i + 2], 'article') && i + 3 < clause.to) ||
      frame.terms[i + 2]?.kind === 'name')
  )
    return true;
  if (means(after, 'counted') && !means(after, 'link', 'another', 'size', 'now')) return true;
  // `ph6 lv half full`: the label's own number.
  if (i > clause.from && isLabel(frame.terms[i - 1])) return false;
  return isUnknown(after) && nextIn(frame, clause, i, () => false) >= 0;
}

/** `topped up 12 bench, 3 buckets`: nothing but a number and its system, where such a one stands right before. */
function isOneOfRow(frame: Frame, clause: Clause, i: number): boolean {
  const before = frame.clauses[frame.clauseOf[i]! - 1];
  return (
    before?.sentence === clause.sentence &&
    isAmountOfSystem(frame, clause) &&
    isAmountOfSystem(frame, before)
  );
}

function isAmountOfSystem({ terms }: Frame, { from, to }: Clause): boolean {
  const first = means(terms[from], 'add', 'top-up', 'fill') ? from + 1 : from;
  return to - first === 2 && isMeasure(terms[first]) && terms[first + 1]?.kind === 'name';
}

/** `instead of the 12 l I gave the bench 2 cans`: what was not given, before what was. */
function isGivenUp(frame: Frame, clause: Clause, i: number): boolean {
  const lead = means(frame.terms[i - 1], 'article', 'about') ? i - 2 : i - 1;
  return (
    lead === clause.from &&
    means(frame.terms[lead], 'instead-of') &&
    frame.places.hasWhere(isMeasure, i + 1, clause.to)
  );
}

/** `heater set at 18C`: what a device is turned to, no temperature that was read. */
function isSetting(frame: Frame, clause: Clause, i: number): boolean {
  if (!isInDegrees(measureOf(frame, i))) return false;
  for (let j = clause.from; j < i; j++) {
    const isTurned =
      means(frame.terms[j], 'set') && !means(frame.terms[j], 'link', 'place', 'now', 'filler');
    if (isTurned) return true;
  }
  return false;
}

/** `ph rose by 0.3 to 6.2`, `temp rose 2 degrees to 23`, `up by 0.2`: how much it changed, not what it is. */
function isStep(frame: Frame, clause: Clause, i: number): boolean {
  const measure = measureOf(frame, i);
  const before = i > clause.from ? frame.terms[i - 1] : undefined;
  const leadsOn = means(frame.terms[i + 1], 'to') && isMeasure(frame.terms[i + 2]);
  if (isVolume(measure) || unitIs(measure, 'cm', 'mm', 'm', 'in', 'percent'))
    return means(before, 'moved') && leadsOn;
  if (
    clauseHas(frame, clause, 'top-up', 'add', 'fill', 'set', 'at-hour') &&
    !hasLabel(frame, clause) &&
    !isInDegrees(measure)
  )
    return false;
  if (means(before, 'by') && !means(before, 'at-hour')) return hasLabel(frame, clause);
  if (isTooLittle(frame, clause, i)) return true;
  return means(before, 'moved', 'by') && leadsOn;
}

/** `ec up 0.2`, `temp 2 runter`, `ec 0.2 higher`, `2 degrees too warm`: so little of it is a step and no value. */
function isTooLittle(frame: Frame, clause: Clause, i: number): boolean {
  const measure = measureOf(frame, i);
  // `0.2 ec up on yesterday`.
  const next = isLabel(frame.terms[i + 1]) ? i + 2 : i + 1;
  const [before, after] = [frame.terms[i - 1], next < clause.to ? frame.terms[next] : undefined];
  // `higher by 0.2`; `um 0,2 gestiegen` may be told of a time.
  const [lead, tail] = means(before, 'by') ? [frame.terms[i - 2], undefined] : [before, after];
  const isMoved =
    means(after, 'too-much') ||
    [lead, tail].some((term) => means(term, 'rising', 'down', 'compared') && !means(term, 'to'));
  if (!isMoved || means(before, 'to', 'at')) return false;
  return leastValues.some(
    ([quantity, least]) =>
      measure.values[0]! < least &&
      (clauseHas(frame, clause, quantity) || (quantity === 'temperature' && isInDegrees(measure))),
  );
}

function isInDegrees(measure: Measure): boolean {
  return unitIs(measure, 'celsius', 'fahrenheit', 'degree');
}

/** What is below them is no value of a solution that feeds plants, beside a word of its rising or falling. */
const leastValues: readonly (readonly [Concept, number])[] = [
  ['ec', 0.7],
  ['temperature', 5],
  ['air', 5],
  ['inside', 5],
];

function hasLabel(frame: Frame, clause: Clause): boolean {
  return frame.places.hasWhere(isLabel, clause.from, clause.to);
}

function calibrates(frame: Frame, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (means(term, 'calibrate') || (term?.kind === 'word' && term.word.probe !== null))
      return true;
  }
  return false;
}

/** Whether a name is said as of several things: `jars`. */
export function isPlural(frame: Frame, text: string): boolean {
  const { endings } = frame.lexicon.own.vocabulary;
  return endings.some(([ending]) => text.length > ending.length + 2 && text.endsWith(ending));
}

const toldWithoutNumber: readonly Concept[] = [
  'no-bubbles',
  'no-flow',
  'weak-bubbles',
  'broken',
  'labouring',
  'leak',
  'ailing',
  'murky',
  'foul',
  'off-colour',
];

/** `bucket 4 ph 5.8`: one of the parts of a system, numbered. */
function isPartNumber(frame: Frame, clause: Clause, i: number): boolean {
  const name = frame.terms[i - 1];
  const measure = measureOf(frame, i);
  if (i === clause.from || name?.kind !== 'name' || measure.unit !== null || !measure.whole)
    return false;
  // `tote 4 ph 6`, where there are a Tote 2 and a Tote 3: a number that is none of theirs.
  const isOfSeveral = name.systems.length > 1 && !name.sure;
  const isPart =
    isOfSeveral ||
    name.singular ||
    frame.lexicon.own.phrases.get([name.text])?.concepts.has('numbered') === true;
  if (!isPart) return false;
  // `hardly any bubbles in bucket 2`: what is told needs no number.
  if (i + 1 >= clause.to) return clauseHas(frame, clause, ...toldWithoutNumber);
  const after = frame.terms[i + 1];
  if (after?.kind !== 'word' || means(after, 'about')) return false;
  return isLabel(after) ? isMeasure(frame.terms[i + 2]) : !means(after, 'ish', 'at-hour');
}

function dropOutside(frame: Frame, clause: Clause): void {
  if (!clauseHas(frame, clause, 'outside')) return;
  const isInside = clauseHas(frame, clause, 'inside', 'in-here');
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    const isOfOutside = !isInside || isSaidOutside(frame, clause, i);
    if (isMeasure(term) && !isVolume(term.measure) && isOfOutside) take(frame, i);
    if (means(term, 'temperature', 'air', 'humidity') && isOfOutside) take(frame, i);
  }
}

/** `outside 30 inside 34`, `30 outside, 34 in here`: by the word straight after, else by the one before. */
function isSaidOutside(frame: Frame, clause: Clause, i: number): boolean {
  const isPlace = (term: Term | undefined): boolean => means(term, 'outside', 'inside', 'in-here');
  const opensWithPlace = isPlace(
    frame.terms.slice(clause.from, clause.to).find((term) => isPlace(term) || isMeasure(term)),
  );
  const step = opensWithPlace ? -1 : 1;
  let j = i + step;
  while (j >= clause.from && j < clause.to && !isPlace(frame.terms[j])) j += step;
  return j < clause.from || j >= clause.to || means(frame.terms[j], 'outside');
}
