import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { type Clause, clauseHas, type Frame, isMeasure, take } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { dosesAgain } from './dose-again.ts';
import { amountOf, type FoundAmount } from './dose-amount.ts';
import { missingDose } from './dose-missing.ts';
import { type ProductGroup, productGroups } from './products.ts';

/** `20 ml A and 20 ml B`, `30 ml each of A and B`, `ph down 5ml`: the product and its millilitres need no verb. */
export function recogniseDoses(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  let latest: Measure | null = null;
  const groups = productGroups(frame);
  for (const group of groups) {
    const found = amountOf(frame, group, latest);
    if (found && isInStock(frame, group, found)) {
      take(frame, found.at, ...group.terms);
      continue;
    }
    if (found) {
      latest = found.measure;
      take(frame, found.at, ...group.terms);
      const isTwice = clauseHas(frame, frame.clauses[frame.clauseOf[found.at]!]!, 'twice');
      facts.push(...dosesOf(group, isTwice ? { ...found, each: true } : found, groups.length > 1));
      continue;
    }
    const missing = missingDose(frame, group, latest);
    if (missing) {
      take(frame, ...group.terms);
      facts.push(...missing);
    }
  }
  facts.push(...dosesAgain(frame, facts));
  return facts;
}

/** `half a litre of ph up left`: what the bottle still holds. */
function isInStock(frame: Frame, group: ProductGroup, found: FoundAmount): boolean {
  const clause = frame.clauses[frame.clauseOf[found.at]!]!;
  const last = Math.max(found.at, group.terms.at(-1)!);
  if (isAdded(frame, clause)) return false;
  if (means(frame.terms[last + 1], 'left-over')) return true;
  // `nur noch 200 ml pH minus da`: it is spoken of as what there still is.
  const first = Math.min(found.at, group.terms[0]!);
  // `from 6.6 down to 5.9 with 8 ml`: that is of another number.
  const other = frame.places.lastWhere(isMeasure, first - 1);
  const said = frame.terms.slice(Math.max(clause.from, other + 1), first);
  return said.some((term) => means(term, 'still-there', 'there-is'));
}

/** By its own verb, or that of the clause it is joined to. */
function isAdded(frame: Frame, clause: Clause): boolean {
  if (clauseHas(frame, clause, 'add', 'top-up', 'fill')) return true;
  const before = frame.clauses[frame.clauseOf[clause.from]! - 1];
  return clause.opens === 'and' && before !== undefined && isAdded(frame, before);
}

function dosesOf(group: ProductGroup, found: FoundAmount, isOneOfSeveral: boolean): Fact[] {
  const amount = { kind: 'measure' as const, measure: found.measure };
  const first = Math.min(found.at, group.terms[0]!);
  const last = Math.max(found.at, group.terms.at(-1)!);
  const shape = { quantity: 'dose' as const, amount, from: first, to: last, because: 'dose' };
  if (group.products.length > 1 && !found.each) {
    return [{ at: found.at, product: group.products[0]!, shared: group.products, ...shape }];
  }
  // `5 ml A and B each`, `5 ml A, 5 ml B each`: of each product, and not of each part of a system.
  const isOfProducts = isOneOfSeveral || group.products.length > 1;
  const each = { each: true, ...(isOfProducts ? { eachOf: 'products' as const } : {}) };
  return group.products.map((product, n) => ({
    at: group.terms[n]!,
    product,
    ...shape,
    ...(found.each ? each : {}),
  }));
}
