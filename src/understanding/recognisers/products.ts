import { isDeed } from '../moods/clause-kinds.ts';
import { isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import { clauseHas, type Frame, isMeasure, isName } from '../reading/frame.ts';
import { isMark, type MeasureTerm, means, type Term } from '../reading/term.ts';

/** Products named side by side: `A and B`. Indices of their terms. */
export interface ProductGroup {
  readonly terms: readonly number[];
  readonly products: readonly string[];
}

/** The products that a message speaks of, those joined by `and`, `/` or `+` together. */
export function productGroups(frame: Frame): ProductGroup[] {
  const groups: { terms: number[]; products: string[] }[] = [];
  frame.terms.forEach((_, i) => {
    const parts = frame.taken[i] ? [] : partsOfFeed(frame, i);
    if (parts.length > 0) groups.push({ terms: parts.map(() => i), products: [...parts] });
    const product = productAt(frame, i);
    if (product === null || frame.taken[i]) return;
    const last = groups.at(-1);
    const before = last?.terms.at(-1);
    if (last && before !== undefined && joins(frame, before, i)) {
      last.terms.push(i);
      last.products.push(product);
    } else groups.push({ terms: [i], products: [product] });
  });
  return groups;
}

/** `15 ml of each part`, `added both nutrients`: of a feed in two bottles, the two of them. */
function partsOfFeed({ terms, context }: Frame, i: number): readonly string[] {
  if (!means(terms[i], 'feed-part')) return [];
  let j = i - 1;
  while (
    j >= 0 &&
    i - j <= mostBefore &&
    means(terms[j], 'of', 'article') &&
    !means(terms[j], 'both')
  )
    j--;
  if (!means(terms[j], 'each', 'both')) return [];
  const [one, two, ...more] = context.greenhouse.stock.filter(
    ({ product }) => !product.startsWith('ph-'),
  );
  return one && two && more.length === 0 ? [one.product, two.product] : [];
}

/** What product a term names; a short name that is another word as well only where millilitres or products stand beside it. */
export function productAt(frame: Frame, i: number): string | null {
  const term = frame.terms[i];
  if (term?.kind !== 'word') return null;
  if (term.word.product !== null) return term.word.product;
  if (isPhMinus(frame, i)) return 'ph-down';
  if (term.word.shyProduct === null) return null;
  const before = beforeProduct(frame, i);
  const isOf = means(frame.terms[i - 1], 'of');
  const isDosed =
    isMeasure(before) &&
    (unitIs(before.measure, 'ml', 'cl') ||
      (isOf && (before.measure.unit !== null || before.measure.whole)) ||
      isBottleful(frame, i)) &&
    (isEndOfPhrase(frame, i) || isDoseSpokenOf(frame, i));
  if (isDosed) return term.word.shyProduct;
  if (isGivenAmount(frame, i - 1) && isEndOfPhrase(frame, i)) return term.word.shyProduct;
  // `down 3 cm`, `3 cm down` are levels, `up 0.2` a change.
  const beside = [frame.terms[i - 1], frame.terms[i + 1]];
  const isMeasured = beside.some((other) => isMeasure(other) && !unitIs(other.measure, 'ml', 'cl'));
  if (isMeasured && term.word.shyProduct.startsWith('ph-')) return null;
  if (besideProduct(frame, i) || isSameAgain(frame, i)) return term.word.shyProduct;
  if (isAddedAlone(frame, i) || isCountedOff(frame, i)) return term.word.shyProduct;
  if (countListedAfter(frame, i) !== null) return term.word.shyProduct;
  return dosedAfter(frame, i) ? term.word.shyProduct : null;
}

/** `before the 10 ml down the dwc had 6.4`: the dose that was given, and what follows is of something else. */
function isDoseSpokenOf({ terms }: Frame, i: number): boolean {
  return (
    isMeasure(terms[i - 1]) &&
    means(terms[i - 2], 'article') &&
    means(terms[i - 3], 'before', 'after')
  );
}

/** Nobody pours more than this of a concentrate in one go, L. */
const mostOfABottleL = 2;

/** `0.5 l B`: litres straight before a nutrient's short name that is no article, as little as comes out of a bottle. */
export function isBottleful(frame: Frame, i: number): boolean {
  const [before, term] = [frame.terms[i - 1], frame.terms[i]];
  const short = shyOf(frame, i);
  if (short === null || short.startsWith('ph-') || means(term, 'article')) return false;
  return (
    isMeasure(before) &&
    unitIs(before.measure, 'l') &&
    (before.measure.values[0] ?? 0) <= mostOfABottleL
  );
}

/** `gave 5 down`, `gave the dwc 10 A`: a number behind a verb of adding, before the short name of what was added. */
export function isGivenAmount(frame: Frame, i: number): boolean {
  const [amount, product] = [frame.terms[i], frame.terms[i + 1]];
  if (!isMeasure(amount) || !isBare(amount.measure) || product?.kind !== 'word') return false;
  if (product.word.shyProduct === null && product.word.product === null) return false;
  const { from } = frame.clauses[frame.clauseOf[i]!]!;
  let j = i - 1;
  while (j >= from && (isName(frame.terms[j]) || means(frame.terms[j], 'article', 'place'))) j--;
  return j >= from && means(frame.terms[j], 'add') && !means(frame.terms[j], 'took');
}

/** `5 runter rein`, `6.6 5 down`: a whole number that the short name of a pH product follows straight. */
export function mayBeDosed({ terms }: Frame, i: number): boolean {
  const [amount, product] = [terms[i], terms[i + 1]];
  return (
    isMeasure(amount) &&
    amount.measure.whole &&
    product?.kind === 'word' &&
    product.word.shyProduct?.startsWith('ph-') === true
  );
}

/** `5 ml pH-`, `pH- 5 ml`: a dash that touches its word and leads to no number but millilitres. */
function isPhMinus(frame: Frame, i: number): boolean {
  const [dash, after] = [frame.terms[i + 1], frame.terms[i + 2]];
  const before = beforeProduct(frame, i);
  return (
    means(frame.terms[i], 'ph') &&
    isMark(dash, '-') &&
    dash?.glued === true &&
    (isMeasure(after) ? isMl(after) : isMeasure(before) && isMl(before))
  );
}

function isMl({ measure }: MeasureTerm): boolean {
  return unitIs(measure, 'ml', 'cl');
}

/** `added A`, `added B to the dwc`: how much is asked for; not `put up`, nor `put a bucket under it`. */
function isAddedAlone(frame: Frame, i: number): boolean {
  const next = frame.terms[i + 1];
  // `poured a 5 litre bucket in`: no concentrate comes by the litre.
  const isOfThing =
    next?.kind === 'name' || (isMeasure(next) && isVolume(next.measure) && !isMl(next));
  if (means(frame.terms[i], 'article') && isOfThing) return false;
  const isVerb = means(frame.terms[i - 1], 'add') && !means(frame.terms[i - 1], 'link', 'took');
  return isVerb && shyOf(frame, i)?.startsWith('ph-') === false && isEndOfPhrase(frame, i);
}

/** `200 ml a and 200 b`, `30 of a and 30 of b`, `gave the bench 200 a`: a number is of a nutrient, though its unit is missing. */
function isCountedOff(frame: Frame, i: number): boolean {
  const before = countBefore(frame, i);
  if (before === null || shyOf(frame, i)?.startsWith('ph-') !== false || !isEndOfPhrase(frame, i))
    return false;
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  return (
    isOtherCounted(frame, i, before, -1) ||
    isOtherCounted(frame, i, before, 1) ||
    (isBareAt(frame, before) && clauseHas(frame, clause, 'add', 'add-plainly'))
  );
}

/** `A 20 B 20`: the number behind a nutrient, where another stands beside it with its number behind as well. */
export function countListedAfter(frame: Frame, i: number): number | null {
  const count = countAfter(frame, i);
  if (count === null) return null;
  const next = afterJoint(frame, count, 1);
  if (isOtherNutrient(frame, i, next) && countAfter(frame, next) !== null) return count;
  const before = afterJoint(frame, i, -1);
  for (let other = before - 1; other >= before - 2; other--)
    if (isOtherNutrient(frame, i, other) && countAfter(frame, other) === before) return count;
  return null;
}

/** The number straight behind a nutrient, bare or in millilitres. */
function countAfter(frame: Frame, i: number): number | null {
  const at = isMark(frame.terms[i + 1], ':', '=', '-') ? i + 2 : i + 1;
  const term = frame.terms[at];
  if (nutrientAt(frame, i) === null || !isMeasure(term)) return null;
  return isBare(term.measure) || isMl(term) ? at : null;
}

function afterJoint({ terms }: Frame, i: number, step: 1 | -1): number {
  const joint = terms[i + step];
  const isJoint =
    (joint?.kind === 'stop' && (joint.cut === 'comma' || joint.cut === 'and')) ||
    isMark(joint, '/', '+');
  return isJoint ? i + 2 * step : i + step;
}

function isOtherNutrient(frame: Frame, i: number, other: number): boolean {
  const product = nutrientAt(frame, other);
  return product !== null && product !== nutrientAt(frame, i);
}

function nutrientAt({ terms }: Frame, i: number): string | null {
  const term = terms[i];
  const product = term?.kind === 'word' ? (term.word.product ?? term.word.shyProduct) : null;
  return product?.startsWith('ph-') ? null : product;
}

/** The number straight before a product, bare or in millilitres. */
function countBefore(frame: Frame, i: number): number | null {
  const at = means(frame.terms[i - 1], 'of') ? i - 2 : i - 1;
  const term = frame.terms[at];
  if (!isMeasure(term)) return null;
  return isBare(term.measure) || unitIs(term.measure, 'ml', 'cl') ? at : null;
}

function isBareAt(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  return isMeasure(term) && isBare(term.measure);
}

/** Whether another nutrient with a number of its own stands before or after. */
function isOtherCounted(frame: Frame, i: number, count: number, step: 1 | -1): boolean {
  let other = step < 0 ? count - 1 : i + 1;
  if (frame.terms[other]?.kind === 'stop') other += step;
  if (step > 0) {
    if (!isMeasure(frame.terms[other])) return false;
    other += means(frame.terms[other + 1], 'of') ? 2 : 1;
  }
  return countBefore(frame, other) !== null && isOtherNutrient(frame, i, other);
}

/** `20 ml A, same of B`. */
function isSameAgain(frame: Frame, i: number): boolean {
  const before = means(frame.terms[i - 1], 'of') ? frame.terms[i - 2] : frame.terms[i - 1];
  return means(before, 'same') && isEndOfPhrase(frame, i);
}

/** `20 ml of each of the two …`: no more small words than these stand between an amount and its product. */
const mostBefore = 6;

function beforeProduct(frame: Frame, i: number): Term | undefined {
  let j = i - 1;
  while (i - j <= mostBefore && means(frame.terms[j], 'of', 'each', 'both', 'article')) j--;
  return frame.terms[j];
}

/** `20 ml a day` has no product. */
function isEndOfPhrase(frame: Frame, i: number): boolean {
  const after = frame.terms[i + 1];
  return (
    !after ||
    after.kind === 'stop' ||
    after.kind === 'mark' ||
    after.kind === 'measure' ||
    after.kind === 'name' ||
    isDeed(after) ||
    means(
      after,
      'place',
      'each',
      'after',
      'then',
      'today',
      'yesterday',
      'tomorrow',
      'tonight',
      'on-day',
      'since',
      'last',
      'now',
      'before',
      'link',
      'filler',
      'this',
      'ago',
      'at-hour',
      'in-all',
      'of-it',
      'left-over',
    )
  );
}

function besideProduct(frame: Frame, i: number): boolean {
  return isNamedProduct(frame, i, 1) || isNamedProduct(frame, i, -1);
}

/** A joint and then another product: `A and B`, `A/B`. */
function isNamedProduct(frame: Frame, i: number, step: 1 | -1): boolean {
  const joint = frame.terms[i + step];
  // `5 ml A, down 3 cm`: after a comma `up` and `down` are no products.
  const mayList = !shyOf(frame, i)?.startsWith('ph-');
  const isJoint =
    (joint?.kind === 'stop' && (joint.cut === 'and' || (joint.cut === 'comma' && mayList))) ||
    isMark(joint, '/', '-');
  if (!isJoint) return false;
  const other = frame.terms[i + 2 * step];
  return (
    other?.kind === 'word' &&
    ((other.word.shyProduct !== null && other.word.shyProduct !== shyOf(frame, i)) ||
      other.word.product !== null)
  );
}

function shyOf(frame: Frame, i: number): string | null {
  const term = frame.terms[i];
  return term?.kind === 'word' ? term.word.shyProduct : null;
}

/** `A 20 ml, B 20 ml`: at a clause's start or after a verb, the millilitres end the clause. */
function dosedAfter(frame: Frame, i: number): boolean {
  let j = i + 1;
  while (isMark(frame.terms[j], ':', '=', '-')) j++;
  const measure = frame.terms[j];
  const end = frame.terms[j + 1];
  const ends =
    !end ||
    end.kind === 'stop' ||
    end.kind === 'mark' ||
    means(end, 'place', 'each', 'alike') ||
    (end.kind === 'word' && end.word.shyProduct !== null);
  return (
    isMeasure(measure) &&
    unitIs(measure.measure, 'ml', 'cl') &&
    ends &&
    !means(frame.terms[i - 1], 'of')
  );
}

function joins(frame: Frame, a: number, b: number): boolean {
  if (b - a === 1) return false;
  for (let i = a + 1; i < b; i++) {
    const term = frame.terms[i]!;
    const joint =
      (term.kind === 'stop' && (term.cut === 'and' || term.cut === 'comma')) ||
      isMark(term, '/', '-', '+') ||
      means(term, 'article', 'both', 'of', 'each');
    if (!joint) return false;
  }
  // `added 5 ml A, ph up 3 ml`: the second has an amount of its own.
  const comma = frame.terms
    .slice(a + 1, b)
    .some((term) => term.kind === 'stop' && term.cut === 'comma');
  return !(hasOwnAmount(frame, b) && (comma || hasAmountBefore(frame, a)));
}

function hasAmountBefore(frame: Frame, i: number): boolean {
  const before = beforeProduct(frame, i);
  return isMeasure(before) && unitIs(before.measure, 'ml', 'cl');
}

function hasOwnAmount(frame: Frame, i: number): boolean {
  let j = i + 1;
  while (isMark(frame.terms[j], ':', '=', '-')) j++;
  const next = frame.terms[j];
  return isMeasure(next) && unitIs(next.measure, 'ml', 'cl');
}
