import { isReading } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { readablesOf } from '../numbers/readables-of.ts';
import { type Frame, isMeasure, isPadding, measureOf, take } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';

/**
 * `measured again, it's 6.0`, `later: 6.3`, `jetzt 6,0`, right after a reading: a number that nothing names is of what was
 * read, where it can be of that alone.
 */
export function recogniseReadAnew(frame: Frame): Fact[] {
  const { justLogged = [] } = frame.context;
  if (justLogged.length === 0 || !frame.places.hasAny(['read-anew', 'now'])) return [];
  const [at, ...others] = frame.places.where(isMeasure);
  if (at === undefined || others.length > 0 || frame.taken[at]) return [];
  const measure = measureOf(frame, at);
  if (!isBare(measure) || measure.decimals === 0 || !frame.terms.every(isSmall)) return [];
  const possible = justLogged.flatMap((entry) => {
    const { quantity, system, value } = entry;
    if (!isReading(quantity) || quantity === 'level') return [];
    const [readable] = readablesOf(measure, frame.context.greenhouse.units, quantity);
    return readable && isNear(value, readable.value) ? [{ quantity, system }] : [];
  });
  const [one] = possible;
  const isOfOne = possible.every(
    ({ quantity, system }) => quantity === one?.quantity && system === one.system,
  );
  if (!one?.system || !isOfOne) return [];
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

/** Nothing changes by more between two readings on one visit. */
const mostChange = 1.4;

function isNear(before: number, now: number): boolean {
  return Math.max(before, now) <= mostChange * Math.min(before, now);
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
