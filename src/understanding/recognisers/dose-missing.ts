import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  hasUnknown,
  isMeasure,
  measureOf,
  take,
} from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';
import { countListedAfter, type ProductGroup } from './products.ts';

/**
 * A product without its millilitres: asked for where something was added, or nothing else is said. `latest`: the
 * amount told last, whose unit a number after it shares (`200 ml A and 200 B`).
 */
export function missingDose(
  frame: Frame,
  group: ProductGroup,
  latest: Measure | null,
): Fact[] | null {
  const clause = frame.clauses[frame.clauseOf[group.terms[0]!]!]!;
  const listed = countListedAfter(frame, group.terms.at(-1)!);
  const near = listed ?? nearestBare(frame, clause, group);
  // `A and B added`: the verb stands with the last of them.
  const { to } = frame.clauses[frame.clauseOf[group.terms.at(-1)!]!]!;
  const whole = { ...clause, to };
  const added =
    clauseHas(frame, whole, 'add', 'top-up', 'fill') && !hasUnknown(frame, clause.from, to);
  const leads = listed !== null || (near !== null && leadsNutrient(frame, group, near));
  if (near !== null && (added || leads || isReadAsDose(frame, group, near))) {
    take(frame, near);
    const bare = measureOf(frame, near);
    const measure = latest && leads ? { ...bare, unit: latest.unit } : bare;
    return group.products.map((product, n) => ({
      quantity: 'dose',
      amount: { kind: 'measure', measure },
      at: group.terms[n]!,
      from: Math.min(near, group.terms[0]!),
      to: Math.max(near, group.terms.at(-1)!),
      product,
      // `ph down 5.4` may as well be a reading, and `put 2 up` anything.
      ...((added && !isUnsure(frame, group)) || leads
        ? {}
        : { doubt: { kind: 'which-quantity' as const, value: measure.written } }),
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

/** By a short name of a pH product alone, where nobody speaks of the pH. */
function isUnsure({ terms }: Frame, group: ProductGroup): boolean {
  const isShy = group.terms.some((i) => {
    const term = terms[i];
    return term?.kind === 'word' && term.word.product === null;
  });
  return (
    isShy &&
    group.products.some((product) => product.startsWith('ph-')) &&
    !terms.some((term) => means(term, 'ph'))
  );
}

/** `200 B`, `20 of nutrient A`: a number straight before a nutrient is of it. */
function leadsNutrient(frame: Frame, group: ProductGroup, near: number): boolean {
  const between = frame.terms.slice(near + 1, group.terms[0]);
  return (
    near < group.terms[0]! &&
    between.every((term) => means(term, 'of')) &&
    group.products.every((product) => !product.startsWith('ph-'))
  );
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
