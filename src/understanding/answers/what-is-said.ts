import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Measure } from '../numbers/measure.ts';
import { type Frame, isMeasure, isShare } from '../reading/frame.ts';
import { phraseWithin, type Reading, readingOf, unitAt } from '../reading/look-up.ts';
import { isCrop, isMark, isUnknown, means, type Term } from '../reading/term.ts';
import { tokenise } from '../reading/tokenise.ts';
import { systemOfCrop } from '../recognisers/devices.ts';
import { findTimes } from '../times/find-times.ts';
import type { Concept } from '../vocabulary/concept.ts';

/** What of an answer a message holds. */
export interface Said {
  readonly measure: Measure | null;
  readonly systems: readonly SystemId[];
  readonly ordinal: number | null;
  readonly yes: boolean;
  readonly no: boolean;
  /** `keep it`: as a note. */
  readonly keep: boolean;
  readonly each: boolean;
  readonly inAll: boolean;
  /** `both`, `all`: of each that was offered. */
  readonly ofAll: boolean;
  /** `both`: of two. */
  readonly both: boolean;
  readonly quantity: Quantity | null;
  readonly timeMs: number | null;
  /** A day or a part of one, no time. */
  readonly timeIsVague: boolean;
  readonly unit: string | null;
  /** The one system that grows the crop that is said. */
  readonly cropOf: SystemId | null;
  /** A product by its name, or by a short one that is another word as well. */
  readonly product: string | null;
}

/** The parts of an answer; null if the message says anything else. */
export function whatIsSaid(frame: Frame): Said | null {
  const marks = findTimes(frame);
  const isTime = marks.map(({ from, to }) => [from, to] as const);
  const rest = frame.terms
    .map((term, i) => ({ term, i }))
    .filter(({ i }) => !isTime.some(([from, to]) => i >= from && i <= to));
  const which = whichOfThem(frame);
  const measures = which === null ? rest.filter(({ term }) => isMeasure(term)) : [];
  const names = rest.flatMap(({ term, i }) =>
    term.kind === 'name' && !isGivenUp(frame, i) ? term.systems : [],
  );
  const isNaming = names.length > 0;
  const now = rest.some(({ term }) => means(term, 'just-now', 'now'));
  const unit = unitAlone(frame);
  if (measures.length > 1 || marks.length > 1) return release(frame, null);
  const isOrdinalSaid = rest.some(({ term }) => term.kind === 'word' && term.word.ordinal !== null);
  // `the second was only half full`: how full one of the cans was, and none of the answers on offer.
  if (isOrdinalSaid && measures.some(({ term }) => isShare(term))) return release(frame, null);
  for (const { term } of rest) {
    if (term.kind === 'stop') {
      if (term.cut === 'question') return release(frame, null);
      continue;
    }
    if (isMeasure(term) || term.kind === 'name' || isMark(term, '-', ':', '*', '#', '%', '°'))
      continue;
    if (unit !== null) continue;
    // `jars full`: a level of its own, and no word on what so many litres were.
    if (isNaming && means(term, 'full', 'empty') && !means(term, 'add', 'fill'))
      return release(frame, null);
    if (isUnknown(term) || term.kind !== 'word') return release(frame, null);
    const small = means(
      term,
      'article',
      'chatter',
      'filler',
      'place',
      'pronoun',
      'yes',
      'said-no',
      'keep',
      'numbered',
      'each',
      'both',
      'in-all',
      'all',
      'about',
      'ish',
      'link',
      'self',
      'just-now',
      'now',
      'thanks',
      'at',
      'since',
      'at-hour',
    );
    const names = means(
      term,
      'ph',
      'ec',
      'temperature',
      'level',
      'humidity',
      'left-over',
      'top-up',
      'add',
      'has',
      'fill',
      'water',
      'air',
      'inside',
      'oxygen',
      'solution',
    );
    // `all of it`, and no part of an amount.
    const isWithoutFigure = productOf(term) !== null || means(term, 'of-it');
    // `t2, sorry`: for not having said it at once.
    const isExcuse = measures.length === 0 && isNaming && means(term, 'sorry', 'to-say');
    // `that was the buckets`, where it is asked of which system it is.
    const isOfSystem = measures.length === 0 && isNaming && means(term, 'was', 'meant');
    // `the second one was right`.
    const isOfOne = isOrdinalSaid && means(term, 'put-back', 'was', 'judged');
    const isSaid =
      isExcuse ||
      (isOfSystem && asksWhichSystem(frame)) ||
      isOfOne ||
      small ||
      names ||
      isCrop(term) ||
      (measures.length === 0 && isWithoutFigure);
    if (!isSaid && term.word.ordinal === null) return release(frame, null);
  }
  const first = measures[0]?.term;
  const ordinal =
    which ??
    rest.flatMap(({ term }) =>
      term.kind === 'word' && term.word.ordinal !== null ? [term.word.ordinal] : [],
    )[0] ??
    null;
  const product = rest.map(({ term }) => productOf(term)).find((each) => each !== null) ?? null;
  const some = (...concepts: Parameters<typeof means>[1][]) =>
    rest.some(({ term }) => means(term, ...concepts));
  return {
    measure: isMeasure(first) ? first.measure : null,
    systems: [...new Set(names)],
    ordinal: names.length > 0 ? null : ordinal,
    yes: some('yes') && measures.length === 0 && names.length === 0 && product === null,
    no: some('said-no') && measures.length === 0 && names.length === 0 && unit === null,
    keep: some('keep') && measures.length === 0 && names.length === 0,
    both: some('both'),
    each: some('each', 'both'),
    inAll: some('in-all'),
    // `all checked` is of the work, and answers nothing.
    ofAll:
      some('both', 'all') &&
      !some('done', 'did', 'check', 'checked') &&
      measures.length === 0 &&
      names.length === 0,
    quantity: quantitySaid(some),
    timeMs: marks[0]?.atMs ?? (now && rest.length <= 2 ? frame.context.writtenAtMs : null),
    timeIsVague: marks[0]?.vague ?? false,
    unit,
    product,
    cropOf: rest.map(({ term }) => systemOfCrop(frame, term)).find((id) => id !== null) ?? null,
  };
}

/** `buckets, not the gutters`, `Wanne, nein die Rinne`: of two names the one that it is not. */
function isGivenUp({ terms }: Frame, i: number): boolean {
  const lead = means(terms[i - 1], 'article', 'place') ? i - 2 : i - 1;
  if (means(terms[lead], 'not', 'instead-of') && !means(terms[lead], 'link', 'place')) return true;
  let next = i + 1;
  while (terms[next]?.kind === 'stop') next++;
  if (!means(terms[next], 'said-no', 'no-wait') || means(terms[next], 'not')) return false;
  const name = means(terms[next + 1], 'article', 'place') ? next + 2 : next + 1;
  return terms[name]?.kind === 'name';
}

/** `the third`: one of those on offer, though the word is a share as well. */
function whichOfThem({ terms, lexicon }: Frame): number | null {
  const shares = terms.filter((term) => isMeasure(term));
  const [share] = shares;
  const isAlone =
    shares.length === 1 &&
    share!.measure.share &&
    terms.every((term) => term === share || means(term, 'article', 'filler', 'numbered'));
  return isAlone ? (lexicon.own.phrases.get([share!.text])?.ordinal ?? null) : null;
}

function productOf(term: Term): string | null {
  return term.kind === 'word' ? (term.word.product ?? term.word.shyProduct) : null;
}

/** Times are taken while looking for an answer; where there is none, the message is read afresh. */
function release(frame: Frame, nothing: null): null {
  frame.taken.fill(false);
  frame.timed.fill(false);
  return nothing;
}

function quantitySaid(
  some: (...concepts: Parameters<typeof means>[1][]) => boolean,
): Quantity | null {
  if (some('ph')) return 'ph';
  if (some('ec')) return 'ec';
  if (some('humidity')) return 'humidity';
  if (some('oxygen')) return 'dissolved-oxygen';
  if (some('top-up', 'fill')) return 'top-up';
  if (some('temperature')) return some('air', 'inside') ? 'air-temperature' : 'water-temperature';
  if (some('level', 'left-over', 'full', 'empty')) return 'level';
  if (some('add')) return 'top-up';
  return some('water') ? 'water-temperature' : null;
}

const mostBeforeUnit = 4;
const leadsToUnit: readonly Concept[] = [
  'place',
  'pronoun',
  'link',
  'was',
  'article',
  'filler',
  'both',
  'each',
  'all',
];

/** A unit said by itself: `litres`. */
function unitAlone(frame: Frame): string | null {
  const reading = readingOf(tokenise(frame.folded.text), frame.lexicon);
  // `in litres`, `it was litres`: small words may lead to it.
  for (let from = 0; from < mostBeforeUnit && from < reading.tokens.length; from++) {
    const unit = unitAt(reading, from);
    const end = from + (unit?.length ?? 0);
    const isEnd = end === reading.tokens.length;
    if (
      unit &&
      (isEnd || isOtherGivenUp(reading, end) || isOfEach(reading, end) || isPolite(reading, end))
    )
      return frame.folded.text.slice(reading.tokens[from]!.from, reading.tokens[end - 1]!.to);
    const small = phraseWithin(reading, from, 1)?.value.concepts;
    if (!small || !leadsToUnit.some((concept) => small.has(concept))) return null;
  }
  return null;
}

/** `ml sorry`, `cm thanks`: nothing more than a kind word. */
function isPolite(reading: Reading, at: number): boolean {
  const last = phraseWithin(reading, at, 1);
  if (!last || at + last.length !== reading.tokens.length) return false;
  const { concepts } = last.value;
  return concepts.has('thanks') || (concepts.has('sorry') && !concepts.has('said-no'));
}

/** `ml each`, `ml both`: nothing more than of how many amounts. */
function isOfEach(reading: Reading, at: number): boolean {
  const last = phraseWithin(reading, at, 1);
  if (!last || at + last.length !== reading.tokens.length) return false;
  return last.value.concepts.has('each') || last.value.concepts.has('both');
}

function asksWhichSystem({ context }: Frame): boolean {
  return context.openQuestions.some(({ doubt }) => doubt.reason.kind === 'which-system');
}

/** `…, not l`: nothing but the unit that it is not of. */
function isOtherGivenUp(reading: Reading, at: number): boolean {
  const from = reading.tokens[at]?.text === ',' ? at + 1 : at;
  const not = phraseWithin(reading, from, 1)?.value.concepts;
  if (!not?.has('not') && !not?.has('instead-of')) return false;
  return unitAt(reading, from + 1)?.length === reading.tokens.length - from - 1;
}
