import { cmFactor, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isVolumeTerm,
  measureOf,
  namesIn,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { brimOrMark } from './top-up-mark.ts';

/** The word in place of a verb that has an amount put in: `full again after 4 cans`, `back up to the top with 22 l`. */
export function verbless(frame: Frame, clause: Clause): number | null {
  return afterAmount(frame, clause) ?? upToMarkWith(frame, clause);
}

/** `brought the gutters back up to the top with 22 l`, `bench full again with 4 cans`: what it took to get there. */
function upToMarkWith(frame: Frame, clause: Clause): number | null {
  if (!clauseHas(frame, clause, 'with') || namesIn(frame, clause).length === 0) return null;
  const { terms, places } = frame;
  const amount = places.lastWhere(isVolumeTerm, clause.to - 1);
  if (amount < clause.from || unitIs(measureOf(frame, amount), 'ml', 'cl')) return null;
  let i = amount - 1;
  while (i > clause.from && means(terms[i], 'about', 'another')) i--;
  if (!means(terms[i], 'with') || means(terms[i - 1], 'add', 'top-up', 'fill')) return null;
  const mark = brimOrMark(frame, { ...clause, to: i }, i);
  if (mark !== null) return i;
  const { unit } = measureOf(frame, amount);
  const full = means(terms[i - 1], 'full') ? i - 1 : i - 2;
  const isFilled = means(terms[full], 'full') && (full === i - 1 || means(terms[i - 1], 'filler'));
  return isFilled && unit !== null && 'litres' in unit ? i : null;
}

/**
 * The word that has an amount of water put in before a system stood as it is told: `bench full again after 4 cans`,
 * `gutters 80 l after topping up 2 cans`. Null: nothing of that kind is told.
 */
export function afterAmount(frame: Frame, clause: Clause): number | null {
  if (!clauseHas(frame, clause, 'after') || namesIn(frame, clause).length === 0) return null;
  const { terms, places } = frame;
  let amount = clause.from - 1;
  for (let tried = 0; tried < mostTried; tried++) {
    amount = places.nextWhere(isVolumeTerm, amount + 1);
    if (amount >= clause.to) return null;
    if (unitIs(measureOf(frame, amount), 'ml', 'cl')) continue;
    let i = amount - 1;
    while (
      i > clause.from &&
      means(terms[i], 'about', 'another', 'article', 'top-up', 'add', 'fill', 'with')
    )
      i--;
    if (!means(terms[i], 'after') || frame.timed[amount]) continue;
    return tellsState(frame, { ...clause, to: i }) ||
      tellsState(frame, { ...clause, from: amount + 1 })
      ? i
      : null;
  }
  return null;
}

/** A clause that tells how it stood has no more amounts before the one that was put in. */
const mostTried = 4;

/** Full, empty, or an amount that is there. */
function tellsState(
  frame: Frame,
  { from, to }: { readonly from: number; readonly to: number },
): boolean {
  return (
    clauseHas(frame, { from, to }, 'full', 'brim', 'empty') ||
    frame.places.hasWhere(isStand, from, to)
  );
}

function isStand(term: Parameters<typeof means>[0]): boolean {
  return (
    term?.kind === 'measure' &&
    (term.measure.share ||
      isVolumeTerm(term) ||
      unitIs(term.measure, 'percent') ||
      cmFactor(term.measure) !== null)
  );
}
