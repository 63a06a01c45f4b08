import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, measureAtTerm } from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';
import { isBottleful, type ProductGroup } from './products.ts';

export interface FoundAmount {
  readonly at: number;
  readonly measure: Measure;
  readonly each: boolean;
}

export function amountOf(
  frame: Frame,
  group: ProductGroup,
  latest: Measure | null,
): FoundAmount | null {
  const before = backwards(frame, group.terms[0]!);
  const after = forwards(frame, group.terms.at(-1)!);
  const each = before.each || after.each;
  if (before.same && latest) return { at: group.terms[0]!, measure: latest, each };
  if (before.at !== null) return { at: before.at, measure: measureAtTerm(frame, before.at)!, each };
  if (after.at !== null) return { at: after.at, measure: measureAtTerm(frame, after.at)!, each };
  return afterItsPlace(frame, group);
}

/** `put ph down in the row, about 15 ml`, `added A and B to the bench, 20 ml each`: a clause of nothing but the amount. */
function afterItsPlace(frame: Frame, group: ProductGroup): FoundAmount | null {
  const end = group.terms.at(-1)!;
  const clause = frame.clauses[frame.clauseOf[end]!]!;
  const next = frame.clauses[frame.clauseOf[end]! + 1];
  if (!next || clause.closes !== 'comma') return null;
  const place = frame.terms.slice(end + 1, clause.to);
  const isPlace =
    place.some(({ kind }) => kind === 'name') &&
    place.every((term) => term.kind === 'name' || means(term, 'place', 'article', 'filler'));
  const said = frame.terms.slice(next.from, next.to);
  const at = next.from + said.findIndex((term) => isMeasure(term));
  const isAmountAlone = said.every(
    (term, n) => next.from + n === at || means(term, 'about', 'ish', 'each', 'of', 'filler'),
  );
  const each = said.some((term) => means(term, 'each'));
  // `added A and B to the bench, 15 each`: of each, in a unit that is asked.
  const isOfEach = each && isBareWhole(frame, at) && group.products.length > 1;
  if (!isPlace || at < next.from || !isAmountAlone || !(isDose(frame, at) || isOfEach)) return null;
  return { at, measure: measureAtTerm(frame, at)!, each };
}

interface Search {
  readonly at: number | null;
  readonly each: boolean;
  readonly same: boolean;
}

function backwards(frame: Frame, start: number): Search {
  let each = false;
  let same = false;
  for (let i = start - 1; i >= 0; i--) {
    const term = frame.terms[i]!;
    if (means(term, 'each', 'both')) each = true;
    else if (means(term, 'same')) same = true;
    else if (isMeasure(term)) {
      // `je 30 ml A und B` says it before the millilitres.
      const eachBefore = means(frame.terms[i - 1], 'each');
      const isOf = means(frame.terms[i + 1], 'of');
      return {
        at:
          isDose(frame, i) ||
          // `10 of ph down`: of what unit is asked.
          (isOf && isBareWhole(frame, i)) ||
          ((isOf || isBottleful(frame, start)) && isAmount(frame, i))
            ? i
            : null,
        each: each || eachBefore,
        same,
      };
    } else if (!means(term, 'of', 'article', 'filler') && !isMark(term, '-', ':', '*')) break;
  }
  return { at: null, each, same };
}

function forwards(frame: Frame, end: number): Search {
  let at: number | null = null;
  let each = false;
  let crossed = false;
  for (let i = end + 1; i < frame.terms.length; i++) {
    const term = frame.terms[i]!;
    if (means(term, 'each')) {
      each = true;
      if (at !== null) break;
      continue;
    }
    if (isMeasure(term)) {
      if (at !== null || !isDose(frame, i) || belongsToNext(frame, i)) break;
      at = i;
    } else if (
      term.kind === 'stop' &&
      term.cut === 'comma' &&
      !crossed &&
      isEachClause(frame, i + 1)
    )
      crossed = true;
    else if (term.kind === 'name' && at !== null) continue;
    else if (
      !means(term, 'link', 'filler', 'about', 'ish', 'of', 'place', 'article') &&
      !isMark(term, ':', '=', '-', '*')
    )
      break;
    else if (means(term, 'to') && at === null) break;
  }
  return { at, each, same: false };
}

/** `, 20 ml each`. */
function isEachClause(frame: Frame, start: number): boolean {
  return isMeasure(frame.terms[start]) && means(frame.terms[start + 1], 'each');
}

/** `A, 20 ml B`: the millilitres stand before their product. */
function belongsToNext(frame: Frame, i: number): boolean {
  let j = i + 1;
  while (means(frame.terms[j], 'of', 'each')) j++;
  const next = frame.terms[j];
  if (next?.kind !== 'word' || (next.word.product === null && next.word.shyProduct === null))
    return false;
  // `A 20 ml B 20 ml` goes on in the same order.
  return !isMeasure(frame.terms[j + 1]);
}

function isBareWhole(frame: Frame, i: number): boolean {
  const measure = measureAtTerm(frame, i);
  return measure !== null && isBare(measure) && measure.whole;
}

function isDose(frame: Frame, i: number): boolean {
  const measure = measureAtTerm(frame, i);
  return (
    measure !== null && isVolume(measure) && (measure.unit === null || !('litres' in measure.unit))
  );
}

/** `half a jug of A`, `1 oz of A`: of a product, whatever it is measured in; a unit that is none of volume is asked about. */
function isAmount(frame: Frame, i: number): boolean {
  const measure = measureAtTerm(frame, i);
  return measure !== null && measure.unit !== null;
}
