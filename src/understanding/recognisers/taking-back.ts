import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import { opensAsAsked } from '../moods/opens-as-asked.ts';
import { type Frame, frameOf, isMeasure } from '../reading/frame.ts';
import { isMark, isUnknown, means, type Term } from '../reading/term.ts';
import type { TakingBack, TakingBackStatement } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { choreHinted } from './chores.ts';
import { correctOfJustLogged } from './correct-of-just-logged.ts';
import { correctOfTold } from './correct-of-told.ts';
import { denyJustLogged } from './deny-just-logged.ts';
import { systemOfCrop } from './devices.ts';
import { exceptOfJustDone } from './except-of-just-done.ts';
import { exceptOfJustPoured } from './except-of-just-poured.ts';
import type { Named } from './named.ts';
import { numbersCorrected } from './numbers-corrected.ts';
import { oughtToBe } from './ought-to-be.ts';
import { nutrientAt, otherProduct, productCorrected } from './product-put-right.ts';
import { productAt } from './products.ts';
import { retime } from './retime.ts';
import { strikeValue } from './strike-value.ts';
import { systemAndValue } from './system-and-value.ts';
import { turnedInto } from './turned-into.ts';
import { unitPutRight } from './unit-put-right.ts';
import { vesselNotFull } from './vessel-not-full.ts';
import { vesselTold } from './vessel-told.ts';
import { wasOf } from './was-of.ts';

/** `undo`, `sorry, 5.6 not 5.4`, `I meant the gutters`, `didn't top up the jars after all`. */
export function recogniseTakingBack(frame: Frame): TakingBackStatement | null {
  const named = (): Named => ({ system: onlyName(frame), quantity: namedQuantity(frame) });
  const back =
    putBack(frame) ??
    calledOff(frame) ??
    strikeOne(frame) ??
    strikeValue(frame, named) ??
    undo(frame) ??
    undoOf(frame) ??
    retime(frame) ??
    deny(frame) ??
    denyJustLogged(frame) ??
    exceptOfJustDone(frame) ??
    exceptOfJustPoured(frame) ??
    vesselNotFull(frame) ??
    vesselTold(frame) ??
    oughtToBe(frame, named) ??
    systemAndValue(frame, named) ??
    correct(frame) ??
    correctOfTold(frame, named) ??
    correctOfJustLogged(frame, named) ??
    turnedInto(frame, named) ??
    otherProduct(frame) ??
    unitPutRight(frame) ??
    move(frame) ??
    wasOf(frame, () => labelled(frame));
  if (!back || opensAsAsked(frame)) return null;
  return {
    kind: 'taking-back',
    back,
    span: { from: 0, to: frame.folded.text.length },
    because: [back.kind],
  };
}

function some(frame: Frame, test: (term: Term, i: number) => boolean): boolean {
  return frame.terms.some(test);
}

/** `undo the undo`, `no wait, it was right`; `no, bench was right` after it was moved to another. */
function putBack(frame: Frame): TakingBack | null {
  if (!frame.places.hasAny(['put-back'])) return null;
  const system = onlyName(frame);
  const isAlone = frame.terms.every((term) => {
    if (term.kind === 'stop') return term.cut !== 'question';
    return (
      (term.kind === 'name' && system !== null) ||
      term.kind === 'mark' ||
      means(term, 'put-back', 'no-wait', 'said-no', 'yes', 'sorry', 'filler', 'pronoun', 'article')
    );
  });
  if (!isAlone) return null;
  if (system === null) return { kind: 'put-back' };
  return means(frame.terms[0], 'said-no', 'no-wait') ? { kind: 'move', system } : null;
}

/** `no wait`, and nothing else, where nothing is asked. */
function calledOff(frame: Frame): TakingBack | null {
  if (frame.context.openQuestions.length > 0) return null;
  if (!frame.places.hasAny(['called-off'])) return null;
  const isAlone = frame.terms.every((term) =>
    term.kind === 'stop'
      ? term.cut !== 'question'
      : term.kind === 'mark' || means(term, 'called-off', 'no-wait'),
  );
  if (!isAlone) return null;
  return { kind: 'put-back', isBare: true, ...(deny(frame) ? { isDenial: true } : {}) };
}

/** `forget the ec, keep the ph`, `undo the ec`: one quantity of what was told. */
function strikeOne(frame: Frame): TakingBack | null {
  const untrue = frame.places.hasAny(['undo', 'strike-the']) ? untrueOne(frame) : null;
  if (untrue) return untrue;
  const at = frame.terms.findIndex((term) => means(term, 'undo', 'strike-the'));
  if (at < 0 || some(frame, isMeasure) || !frame.terms.slice(0, at).every(isOfCorrecting))
    return null;
  let label = at + 1;
  while (means(frame.terms[label], 'article')) label++;
  const [term, next] = [frame.terms[label], frame.terms[label + 1]];
  const quantity = quantities.find(([, ...concepts]) => means(term, ...concepts))?.[0];
  const isWhole = next === undefined || next.kind === 'stop' || means(next, 'read-as', 'filler');
  return quantity && isWhole ? { kind: 'deny', system: onlyName(frame), quantity } : null;
}

/** `the ec is wrong, strike that`: of the one quantity that is said to be untrue, and of no other. */
function untrueOne(frame: Frame): TakingBack | null {
  const { terms, places } = frame;
  const [label, ...others] = places.where(isLabel);
  if (label === undefined || others.length > 0 || !places.hasAny(['untrue'])) return null;
  if (some(frame, isMeasure)) return null;
  const quantity = quantities.find(([, ...concepts]) => means(terms[label], ...concepts))?.[0];
  return quantity ? { kind: 'deny', system: onlyName(frame), quantity } : null;
}

const quantities: readonly (readonly [Quantity, ...Concept[]])[] = [
  ['ph', 'ph'],
  ['ec', 'ec', 'ppm-word', 'cf-word'],
  ['humidity', 'humidity'],
  ['water-temperature', 'temperature'],
  ['level', 'level'],
];

function undo(frame: Frame): TakingBack | null {
  if (!frame.places.hasAny(['undo']) || some(frame, isMeasure)) return null;
  if (frame.places.hasAny(['not', 'did-not'])) return null;
  const others = frame.terms.filter(
    (term) => term.kind === 'name' || isUnknown(term) || (isDeed(term) && !means(term, 'undo')),
  );
  return others.length <= 1 && !others.some(({ kind }) => kind === 'name')
    ? { kind: 'undo' }
    : null;
}

/** `undo the jars`, and nothing else. */
function undoOf(frame: Frame): TakingBack | null {
  const { terms } = frame;
  if (!frame.places.hasAny(['undo'])) return null;
  const system = onlyName(frame);
  if (system === null) return null;
  const isAlone = terms.every(
    (term) =>
      (term.kind === 'stop' && term.cut !== 'question') ||
      term.kind === 'name' ||
      means(term, 'undo', 'article', 'filler', 'pronoun', 'place', 'of', 'sorry', 'thanks'),
  );
  return isAlone ? { kind: 'undo', system } : null;
}

function deny(frame: Frame): TakingBack | null {
  const negated = frame.places.hasAny(['did-not', 'not', 'no-outage']);
  if (
    !negated ||
    !some(
      frame,
      (term, i) => (means(term, 'after-all') && !means(term, 'filler')) || leadsDenial(frame, i),
    ) ||
    some(frame, isMeasure)
  )
    return null;
  const product = productDenied(frame);
  const probe = frame.terms.flatMap((term) =>
    term.kind === 'word' ? (term.word.probe ?? []) : [],
  )[0];
  const chore = choreDenied(frame);
  return {
    kind: 'deny',
    system: onlyName(frame),
    quantity: chore === null ? deedOf(frame) : 'duty-done',
    ...(product === null ? {} : { product }),
    ...(probe === undefined ? {} : { probe }),
    ...(chore === null ? {} : { chore }),
    ...(some(frame, (term) => means(term, 'after-all') && !means(term, 'filler'))
      ? {}
      : { isOfJustNow: true }),
  };
}

/** `the A`: by its short name too, where it ends what is denied. */
function productDenied(frame: Frame): string | null {
  const at = frame.terms.findIndex((_, i) => productAt(frame, i) !== null);
  if (at >= 0) return productAt(frame, at);
  const said = frame.terms.findLast(
    (term) => term.kind === 'word' && !isDeed(term) && !means(term, 'not'),
  );
  const short = said?.kind === 'word' ? said.word.shyProduct : null;
  const isNutrient = short !== null && !short.startsWith('ph-');
  return isNutrient && frame.places.hasAny(['add', 'add-plainly']) ? short : null;
}

/** `actually i didn't top up the jars`, `wait, I didn't calibrate the stick`, `Moment, ich hab den Stab nicht kalibriert`. */
function leadsDenial(frame: Frame, i: number): boolean {
  const { terms } = frame;
  const isLead =
    means(terms[0], 'after-all') ||
    (means(terms[0], 'no-wait') && !means(terms[0], 'no', 'said-no'));
  if (i !== 0 || !isLead || (deedOf(frame) ?? choreDenied(frame)) === null) return false;
  let at = 1;
  while (terms[at]?.kind === 'stop' || means(terms[at], 'no-wait', 'filler', 'said-no')) at++;
  const isSelf = means(terms[at], 'self');
  const denial = isSelf ? at + 1 : at;
  // `wait, didn't we top up the jars?`
  const asks = terms.some((term) => term.kind === 'stop' && term.cut === 'question');
  if (asks || means(terms[denial + 1], 'self')) return false;
  if (means(terms[denial], 'did-not')) return true;
  // `ich hab … nicht zugegeben`: the verb ends it.
  return isSelf && isDeed(terms.at(-1)) && means(terms.at(-2), 'not');
}

/** `no wait, i didn't turn it`: a chore by a word of it, where nothing else is denied. */
function choreDenied(frame: Frame): string | null {
  const isOfOther = deedOf(frame) !== null && deedOf(frame) !== 'duty-done';
  return isOfOther ? null : choreHinted(frame, { from: 0, to: frame.terms.length });
}

function deedOf(frame: Frame): Quantity | null {
  if (productDenied(frame) !== null) return 'dose';
  if (frame.places.hasAny(['no-power', 'no-outage', 'broken'])) return 'outage';
  if (frame.places.hasAny(['top-up', 'fill', 'solution'])) return 'top-up';
  if (frame.places.hasAny(['changed-solution', 'change'])) return 'reservoir-change';
  if (frame.places.hasAny(['calibrate'])) return 'calibration';
  if (frame.places.hasAny(['pick'])) return 'harvest';
  if (frame.places.hasAny(['did', 'do', 'done'])) return 'duty-done';
  return frame.places.hasAny(['add', 'add-plainly']) ? 'top-up' : null;
}

function onlyName(frame: Frame): SystemId | null {
  const names = namesIn(frame);
  return names.size === 1 ? [...names][0]! : null;
}

/** Where the one crop that is named grows, if in one system alone. */
function onlyCrop(frame: Frame): SystemId | null {
  const grown = new Set(frame.terms.flatMap((term) => systemOfCrop(frame, term) ?? []));
  return grown.size === 1 ? [...grown][0]! : null;
}

function namesIn(frame: Frame): ReadonlySet<SystemId> {
  return new Set(
    frame.terms.flatMap((term) => (term.kind === 'name' && term.sure ? term.systems : [])),
  );
}

/** A slip put right: the number meant, and the one given up if it is told. */
function correct(frame: Frame): TakingBack | null {
  const numbers = frame.places.where(isMeasure);
  if (numbers.length === 0 || numbers.length > 2) return null;
  // `no, 5`, `ach nee, 5`.
  const opening = frame.terms.findIndex((term) => !means(term, 'filler') || means(term, 'said-no'));
  const isAnew = tellsAnew(frame, opening);
  const saysNo =
    means(frame.terms[opening], 'said-no') && (frame.terms.length - opening <= 3 || isAnew);
  const sorry = saysNo
    ? 0
    : frame.terms.findIndex((term, i) => {
        // `scrap that, 40 l`; `scrap that, jars ph 6.1` tells something else instead.
        const isStruck =
          i === 0 && means(term, 'undo') && means(term, 'no-wait') && namesIn(frame).size === 0;
        // `went back to the left tub and it was 6.0 ph` tells what was read there.
        const isTold =
          means(term, 'was') && frame.terms.slice(0, i).some(({ kind }) => kind === 'name');
        return isStruck || (means(term, 'sorry', 'meant', 'rather') && !isTold);
      });
  const star =
    (isStar(frame.terms[0]) && isMeasure(frame.terms[1])) ||
    (isStar(frame.terms.at(-1)) && isMeasure(frame.terms.at(-2)));
  const pair = valuesCorrected(frame, numbers);
  // `gutters 1.4, oops, dwc`: of which of the two it is, a value alone does not put right.
  if (!pair && namesIn(frame).size > 1) return null;
  // `1.8 instead of 1.6 like yesterday` tells of both days.
  const isOfDays = frame.places.hasAny(['yesterday', 'day-before-yesterday', 'week']);
  if (sorry < 0 && !star && (!pair || isOfDays)) return null;
  if (numbers.length === 2 && !pair) return null;
  if (!pair && !isAnew && !saysLittleElse(frame)) return null;
  if (pair && sorry < 0 && !star && frame.terms.some((term) => isUnknown(term))) return null;
  const product = productCorrected(frame);
  const told = isAnew && isGiven(frame) ? 'top-up' : namedQuantity(frame);
  // A crop's name is a system's for what is picked, and for no reading.
  const crop = onlyName(frame) === null ? onlyCrop(frame) : null;
  const ofCrop = crop === null ? told : (told ?? 'harvest');
  const quantity = product === null ? ofCrop : 'dose';
  const corrected = numbersCorrected(frame, pair ?? [numbers[0]!, null], quantity);
  return (
    corrected && {
      kind: 'correct',
      ...corrected,
      system: onlyName(frame) ?? crop,
      ...(product === null ? {} : { product }),
    }
  );
}

/** `no the barrel got 2`, `nee, die Wanne hat 8 l bekommen`: no more than what one system was given after all. */
function tellsAnew({ terms, context }: Frame, opening: number): boolean {
  if (context.openQuestions.length > 0 || !means(terms[opening], 'said-no')) return false;
  const rest = terms.slice(opening + 1);
  // `no readings today topped up the bench with 20 l`: that there were none.
  if (rest[0]?.kind === 'word' && !means(rest[0], 'article', 'no-wait')) return false;
  // `keine 5 l in die Wanne gekippt` denies it, and puts nothing right.
  const first = rest.find((term) => isMeasure(term) || term.kind === 'name');
  if (first?.kind !== 'name' || !means(terms[opening], 'no-wait')) return false;
  const isName = (term: Term): boolean => term.kind === 'name' && term.sure;
  return (
    rest.filter(isName).length === 1 &&
    rest.filter((term) => isMeasure(term)).length === 1 &&
    rest.every(
      (term) =>
        isName(term) ||
        isMeasure(term) ||
        (term.kind === 'stop' && term.cut === 'comma') ||
        isGiving(term) ||
        means(term, 'article', 'place', 'filler'),
    ) &&
    rest.some(isGiving)
  );
}

function isGiven({ terms }: Frame): boolean {
  return terms.some(isGiving);
}

function isGiving(term: Term): boolean {
  return means(term, 'add', 'top-up', 'took', 'has', 'still-there');
}

/** The number meant and the one given up, by their terms; null: not two, or not so said. */
function valuesCorrected(
  frame: Frame,
  numbers: readonly number[],
): readonly [number, number] | null {
  // `dwc 6.0, not 5.9 in the gutters` is of two systems.
  const isOfOne = numbers.length === 2 && namesIn(frame).size < 2;
  return isOfOne ? givenUp(frame, numbers[0]!, numbers[1]!) : null;
}

/**
 * The message without the value given up and the words that give it up: what it tells where there is
 * nothing that it could correct. Null: it gives no value up, or says that it was a slip.
 */
export function withoutGivenUp(frame: Frame): Frame | null {
  if (frame.places.hasAny(['sorry', 'meant', 'rather', 'no-wait'])) return null;
  const numbers = frame.terms.flatMap((term, i) => (isMeasure(term) ? [i] : []));
  const pair = valuesCorrected(frame, numbers);
  if (!pair) return null;
  const [meant, last] = pair;
  let first = last;
  while (first > 0 && first - 1 !== meant && !givesUp(frame.terms[first])) first--;
  // `statt 5 l hat die Wanne 8 l bekommen`: what stands between is turned about by what leads.
  const isDropped = (term: Term, i: number) =>
    (i >= first && i <= last) || (i > last && i < meant && term.kind !== 'name' && !isLabel(term));
  const left = frame.terms.filter((term, i) => !isDropped(term, i));
  const isNews = left.some(
    (term) =>
      term.kind === 'name' || isDeed(term) || means(term, 'venturi', 'air-stones', 'air-pump'),
  );
  if (!isNews) return null;
  return frameOf(frame.context, frame.lexicon, frame.folded, left);
}

/** `sorry, jars ph 6.1`, where nothing of the jars was told that it could correct: it is told now. */
export function withoutExcuse(
  { context, lexicon, folded, terms }: Frame,
  { from, system, onDate }: Extract<TakingBack, { kind: 'correct' }>,
): Frame | null {
  if (from !== null || system === null || onDate !== undefined) return null;
  const left = terms.filter((term) => !means(term, 'sorry', 'no-wait', 'meant', 'rather'));
  // `the can in the jars was a jug`: without an excuse it speaks of what was told, and tells nothing.
  if (left.length === terms.length) return null;
  return frameOf(context, lexicon, folded, left);
}

function givesUp(term: Term | undefined): boolean {
  return means(term, 'not') || (means(term, 'instead-of') && !means(term, 'link', 'did-not'));
}

/** `*5.8`, also where the star multiplies. */
function isStar(term: Term | undefined): boolean {
  return isMark(term, '*') || (means(term, 'times') && term?.text === '*');
}

/** `5.6 not 5.4`, `5.6 instead of 5.4`, `not 5.4 but 5.6`: the one meant first, then the one given up. */
function givenUp(frame: Frame, a: number, b: number): readonly [number, number] | null {
  const between = frame.terms.slice(a + 1, b);
  // `hat 14 l gekriegt statt 16`: the verb ends what is said first.
  const isPlain = between.every(
    (term) => isOfCorrecting(term) || means(term, 'received', 'top-up'),
  );
  if (!isPlain) return null;
  if (
    between.some(
      (term) => means(term, 'instead-of') && !means(term, 'link') && !means(term, 'did-not'),
    )
  )
    return [a, b];
  const before = frame.terms[a - 1];
  // `make that 1.7 a 1.9`.
  if (means(before, 'rather') && between.length === 1 && means(between[0], 'indefinite'))
    return [b, a];
  const notFirst =
    means(before, 'not') ||
    (means(before, 'instead-of') && !means(before, 'link', 'did-not')) ||
    (means(before, 'ph', 'ec', 'temperature') && means(frame.terms[a - 2], 'not'));
  return notFirst ? [b, a] : null;
}

/** Words that may stand between the value meant and the one given up. */
function isOfCorrecting(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'comma' || term.cut === 'but' || term.cut === 'and';
  return (
    term.kind === 'mark' ||
    term.kind === 'name' ||
    isLabel(term) ||
    means(
      term,
      'place',
      'instead-of',
      'not',
      'link',
      'filler',
      'article',
      'pronoun',
      'sorry',
      'meant',
      'rather',
      'no-wait',
      'said-no',
    )
  );
}

/** Nothing but the number, its quantity and system, and words of correcting. */
function saysLittleElse(frame: Frame): boolean {
  return frame.terms.every((term, i) => {
    if (term.kind === 'stop' || term.kind === 'mark' || term.kind === 'name' || isMeasure(term))
      return true;
    if (isStar(term)) return true;
    // `mach 5,8 draus`.
    if (means(term, 'plain-deed') && means(term, 'yes')) return true;
    // `sorry, the cucumbers were 900`.
    if (systemOfCrop(frame, term) !== null) return true;
    if (term.kind !== 'word' || isUnknown(term)) return false;
    if (
      means(
        term,
        'sorry',
        'meant',
        'rather',
        'no-wait',
        'said-no',
        'instead-of',
        'link',
        'article',
        'filler',
        'pronoun',
        'place',
        'self',
        'of',
      )
    )
      return true;
    if (
      means(
        term,
        'ph',
        'ec',
        'temperature',
        'level',
        'humidity',
        'air',
        'oxygen',
        'water',
        'inside',
        'solution',
      )
    )
      return true;
    return nutrientAt(frame, i) !== null || productAt(frame, i) !== null;
  });
}

/** The quantity that the correction names, by a label or a verb. */
function namedQuantity(frame: Frame): Quantity | null {
  const has = (...concepts: Parameters<typeof means>[1][]) => frame.places.hasAny(concepts);
  if (frame.terms.some((_, i) => productAt(frame, i) !== null)) return 'dose';
  if (has('ph')) return 'ph';
  if (has('ec', 'ppm-word', 'cf-word')) return 'ec';
  if (has('humidity')) return 'humidity';
  if (has('temperature')) return has('air', 'inside') ? 'air-temperature' : 'water-temperature';
  if (has('air', 'inside')) return 'air-temperature';
  if (has('level', 'left-over')) return 'level';
  if (has('top-up')) return 'top-up';
  if (has('changed-solution')) return 'reservoir-change';
  return has('pick') ? 'harvest' : null;
}

/** `I meant the gutters`, `sorry, gutters`, `gutters not dwc`. */
function move(frame: Frame): TakingBack | null {
  if (
    some(frame, isMeasure) ||
    some(
      frame,
      (term) => isUnknown(term) || (isDeed(term) && !means(term, 'meant', 'sorry', 'add', 'link')),
    )
  )
    return null;
  // `did the jars not the bench` answers a round.
  if (some(frame, (term) => means(term, 'did', 'done', 'tick') && !means(term, 'meant', 'sorry')))
    return null;
  const names = frame.terms.flatMap((term, i) =>
    term.kind === 'name' && term.sure ? [{ system: term.systems[0]!, i }] : [],
  );
  const negated = names.find(
    ({ i }) =>
      means(frame.terms[i - 1], 'not', 'instead-of') ||
      (means(frame.terms[i - 1], 'article') && means(frame.terms[i - 2], 'not', 'instead-of')),
  );
  const meant = names.filter((name) => name !== negated);
  if (meant.length !== 1) return null;
  const says = some(frame, (term) => means(term, 'meant', 'sorry') && !means(term, 'said-no'));
  if (!says && !negated) return null;
  const quantity = labelled(frame);
  return {
    kind: 'move',
    system: meant[0]!.system,
    ...(quantity === null ? {} : { quantity }),
    ...(negated ? { notOf: negated.system } : {}),
  };
}

/** The quantity whose word is said. */
function labelled(frame: Frame): Quantity | null {
  return some(frame, isLabel) ? namedQuantity(frame) : null;
}
