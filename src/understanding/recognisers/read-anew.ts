import type { EntryDraft } from '../../greenhouse/entry.ts';
import { isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { readablesOf } from '../numbers/readables-of.ts';
import { type Frame, isMeasure, isPadding, measureOf, take } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';

/**
 * `measured again, it's 6.0`, `later: 6.3`, `jetzt 6,0`, right after a reading or after what was dosed to change it: a
 * number that nothing names is of what was told, where it can be of that alone.
 */
export function recogniseReadAnew(frame: Frame): Fact[] {
  const { justLogged = [] } = frame.context;
  if (justLogged.length === 0 || !frame.places.hasAny(['read-anew', 'now'])) return [];
  const [at, ...others] = frame.places.where(isMeasure);
  if (at === undefined || others.length > 0 || frame.taken[at]) return [];
  const measure = measureOf(frame, at);
  if (!isBare(measure) || measure.decimals === 0 || !frame.terms.every(isSmall)) return [];
  const possible = justLogged.flatMap((entry) => {
    const quantity = quantityOf(entry);
    const [readable] =
      quantity === null ? [] : readablesOf(measure, frame.context.greenhouse.units, quantity);
    if (quantity === null || !readable || !isNear(entry, readable.value)) return [];
    return [{ quantity, system: entry.system }];
  });
  const [one] = possible;
  const isOfOne = possible.every(
    ({ quantity, system }) => quantity === one?.quantity && system === one.system,
  );
  if (!one || one.system === null || !isOfOne) return [];
  take(frame, at);
  return [
    {
      quantity: one.quantity,
      amount: { kind: 'measure', measure },
      at,
      from: at,
      to: at,
      inTurn: one.system,
      because: 'read anew',
    },
  ];
}

/** What an entry makes a bare number be of: itself, or what it was given to change. */
function quantityOf({ quantity, product }: EntryDraft): Quantity | null {
  if (quantity === 'dose') return product?.startsWith('ph-') ? 'ph' : null;
  return isReading(quantity) && quantity !== 'level' ? quantity : null;
}

/** Nothing changes by more between two readings on one visit. */
const mostChange = 1.4;

function isNear({ quantity, value }: EntryDraft, now: number): boolean {
  if (quantity === 'dose') return true;
  return Math.max(value, now) <= mostChange * Math.min(value, now);
}

function isSmall(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question';
  return (
    isMeasure(term) ||
    isMark(term, ':') ||
    ((isPadding(term) || means(term, 'read-anew', 'after', 'check', 'read-as')) &&
      !means(term, 'said-no', 'sorry', 'not'))
  );
}
