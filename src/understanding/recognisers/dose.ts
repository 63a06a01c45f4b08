import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { type Frame, take } from '../reading/frame.ts';
import { amountOf, type FoundAmount } from './dose-amount.ts';
import { missingDose } from './dose-missing.ts';
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
