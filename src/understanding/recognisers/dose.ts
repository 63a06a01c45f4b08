import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  hasUnknown,
  isMeasure,
  measureAtTerm,
  measureOf,
  take,
} from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';
import { type ProductGroup, productGroups } from './products.ts';

/** `20 ml A and 20 ml B`, `30 ml each of A and B`, `ph down 5ml`: the product and its millilitres need no verb. */
export function recogniseDoses(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  let latest: Measure | null = null;
  for (const group of productGroups(frame)) {
    const found = amountOf(frame, group, latest);
    if (found) {
      latest = found.measure;
      take(frame, found.at, ...group.terms);
      facts.push(...dosesOf(group, found));
      continue;
    }
    const missing = missingDose(frame, group);
    if (missing) {
      take(frame, ...group.terms);
      facts.push(...missing);
    }
  }
  return facts;
}

interface FoundAmount {
  readonly at: number;
  readonly measure: Measure;
  readonly each: boolean;
}

function dosesOf(group: ProductGroup, found: FoundAmount): Fact[] {
  const amount = { kind: 'measure' as const, measure: found.measure };
  const first = Math.min(found.at, group.terms[0]!);
  const last = Math.max(found.at, group.terms.at(-1)!);
  const shape = { quantity: 'dose' as const, amount, from: first, to: last, because: 'dose' };
  if (group.products.length > 1 && !found.each) {
    return [{ ...shape, at: found.at, product: group.products[0]!, shared: group.products }];
  }
  return group.products.map((product, n) => ({
    ...shape,
    at: group.terms[n]!,
    product,
    ...(found.each ? { each: true } : {}),
  }));
}

function amountOf(frame: Frame, group: ProductGroup, latest: Measure | null): FoundAmount | null {
  const before = backwards(frame, group.terms[0]!);
  const after = forwards(frame, group.terms.at(-1)!);
  const each = before.each || after.each;
  if (before.same && latest) return { at: group.terms[0]!, measure: latest, each };
  if (before.at !== null) return { at: before.at, measure: measureAtTerm(frame, before.at)!, each };
  if (after.at !== null) return { at: after.at, measure: measureAtTerm(frame, after.at)!, each };
  return null;
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
      return { at: isDose(frame, i) ? i : null, each: each || eachBefore, same };
    } else if (!means(term, 'of', 'article', 'filler') && !isMark(term, '-', ':', '*')) break;
  }
  return { at: null, each, same };
}

function forwards(frame: Frame, end: number): Search {
  let at: number | null = null;
  let crossed = false;
  for (let i = end + 1; i < frame.terms.length; i++) {
    const term = frame.terms[i]!;
    if (means(term, 'each')) return { at, each: true, same: false };
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
  return { at, each: false, same: false };
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

function isDose(frame: Frame, i: number): boolean {
  const measure = measureAtTerm(frame, i);
  return (
    measure !== null && isVolume(measure) && (measure.unit === null || !('litres' in measure.unit))
  );
}

/** A product without its millilitres: asked for where something was added, or nothing else is said. */
function missingDose(frame: Frame, group: ProductGroup): Fact[] | null {
  const clause = frame.clauses[frame.clauseOf[group.terms[0]!]!]!;
  const near = nearestBare(frame, clause, group);
  const added =
    clauseHas(frame, clause, 'add', 'top-up', 'fill') && !hasUnknown(frame, clause.from, clause.to);
  if (near !== null && (added || isReadAsDose(frame, group, near))) {
    take(frame, near);
    const measure = measureOf(frame, near);
    return group.products.map((product, n) => ({
      quantity: 'dose',
      amount: { kind: 'measure', measure },
      at: group.terms[n]!,
      from: Math.min(near, group.terms[0]!),
      to: Math.max(near, group.terms.at(-1)!),
      product,
      // `ph down 5.4` may as well be a reading.
      ...(added ? {} : { doubt: { kind: 'which-quantity' as const, value: measure.written } }),
      because: 'dose without unit',
    }));
  }
  if (near !== null) return null;
  if (!added && !saysNothingElse(frame, clause, group)) return null;
  return group.products.map((product, n) => ({
    quantity: 'dose',
    amount: { kind: 'missing' },
    at: group.terms[n]!,
    from: group.terms[0]!,
    to: group.terms.at(-1)!,
    product,
    because: 'dose without amount',
  }));
}

/** A number without a unit beside the product: `added 15 ph down`. */
function nearestBare(frame: Frame, clause: Clause, group: ProductGroup): number | null {
  for (let i = group.terms[0]! - 1; i >= clause.from; i--) {
    const term = frame.terms[i]!;
    if (isMeasure(term)) return frame.taken[i] ? null : i;
    if (!means(term, 'of', 'article', 'each')) break;
  }
  for (let i = group.terms.at(-1)! + 1; i < frame.terms.length; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term)) return frame.taken[i] ? null : i;
    const passes =
      means(term, 'link', 'to', 'about', 'filler', 'article', 'at', 'from') ||
      isMark(term, ':', '=', '-', '→') ||
      (term.kind === 'stop' && term.cut === 'comma');
    if (!passes) break;
  }
  return null;
}

/** `ph down 5.4` may be either; `ph down to 5.4` and `ph down, 5.4` are readings. */
function isReadAsDose(frame: Frame, group: ProductGroup, near: number): boolean {
  const last = group.terms.at(-1)!;
  const onlyMarks = frame.terms.slice(last + 1, near).every((term) => isMark(term, ':', '=', '-'));
  return near < group.terms[0]! ? false : onlyMarks;
}

function saysNothingElse(frame: Frame, clause: Clause, group: ProductGroup): boolean {
  if (group.products.some((product) => !product.startsWith('ph'))) return false;
  const last = frame.clauses[frame.clauseOf[group.terms.at(-1)!]!]!;
  for (let i = clause.from; i < last.to; i++) {
    const term = frame.terms[i]!;
    if (group.terms.includes(i) || term.kind === 'name' || term.kind === 'mark') continue;
    if (term.kind === 'stop') continue;
    if (!means(term, 'article', 'place', 'filler', 'self')) return false;
  }
  return true;
}
