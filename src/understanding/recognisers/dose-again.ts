import type { Fact } from '../fact.ts';
import { isBare, millilitre, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isName,
  isPadding,
  measureOf,
  measuresIn,
  take,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Unit } from '../reading/word-list.ts';

/** `put 10 ml of down in the dwc and then another 5`, `and another 5 in the nft`: more of the product just told of. */
export function dosesAgain(frame: Frame, told: readonly Fact[]): Fact[] {
  if (told.length === 0) return [];
  const facts: Fact[] = [];
  let last = -1;
  for (const [c, clause] of frame.clauses.entries()) {
    if (clause.from === clause.to) continue;
    const before = [...told, ...facts].filter(({ at }) => frame.clauseOf[at] === last);
    last = c;
    const [dose, ...others] = before;
    if (!dose || others.length > 0 || dose.product === undefined || dose.each || dose.shared)
      continue;
    const at = onlyMoreOf(frame, clause);
    if (at === null) continue;
    take(frame, at);
    const measure = measureOf(frame, at);
    const unit = measure.unit ?? unitOf(dose) ?? millilitre;
    facts.push({
      ...dose,
      amount: { kind: 'measure', measure: { ...measure, unit } },
      at,
      from: at,
      to: at,
      because: 'more of the dose before',
    });
  }
  return facts;
}

function unitOf({ amount }: Fact): Unit | null {
  return amount.kind === 'measure' ? amount.measure.unit : null;
}

/** The only amount of a clause that says no more than that it is more; null: it says something else. */
function onlyMoreOf(frame: Frame, clause: Clause): number | null {
  const [at, ...others] = measuresIn(frame, clause);
  if (at === undefined || others.length > 0 || !clauseHas(frame, clause, 'another')) return null;
  const measure = measureOf(frame, at);
  if (!isBare(measure) && !unitIs(measure, 'ml', 'cl')) return null;
  return inClause(frame, clause, (term) => !isOfMore(term)).length === 0 ? at : null;
}

function isOfMore(term: Term): boolean {
  return (
    isMeasure(term) ||
    isName(term) ||
    isPadding(term) ||
    means(term, 'another', 'after', 'then', 'add', 'of-it', 'place')
  );
}
