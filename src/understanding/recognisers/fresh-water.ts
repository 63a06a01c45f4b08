import { isVolume } from '../numbers/quantity-of-measure.ts';
import { type Clause, clauseHas, type Frame, isVolumeTerm } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** `frisches Wasser` and other words for a change of solution, other than what was only added. */
export function saysChanged(frame: Frame, clause: Clause): boolean {
  if (!clauseHas(frame, clause, 'changed-solution')) return false;
  for (let i = clause.from; i < clause.to; i++)
    if (means(frame.terms[i], 'changed-solution') && !isOnlyAdded(frame, clause, i)) return true;
  return false;
}

/**
 * Whether the fresh solution that stands there only came to what there was: `2 Eimer frisches Wasser in den Tisch`,
 * `topped up the jars with fresh water`. Where all was let out before, it is what the system was filled with anew.
 */
export function isOnlyAdded(frame: Frame, clause: Clause, i: number): boolean {
  return isAmountOfWater(frame, clause, i) || isAdded(frame, clause, i);
}

/** So much of it, where nothing was emptied as a whole before. */
function isAmountOfWater(frame: Frame, clause: Clause, i: number): boolean {
  const { terms, sentences } = frame;
  if (!means(terms[i], 'solution')) return false;
  const amount = terms[means(terms[i - 1], 'of') ? i - 2 : i - 1];
  if (amount?.kind !== 'measure' || !isVolume(amount.measure)) return false;
  return !sentences[clause.sentence]!.some((said) => said.from < i && isEmptied(frame, said, i));
}

/** Not `tipped a bucket away`: so much of it alone. */
function isEmptied(frame: Frame, { from, to }: Clause, before: number): boolean {
  const range = { from, to: Math.min(to, before - 1) };
  return (
    clauseHas(frame, range, 'empty-out') && !frame.places.hasWhere(isVolumeTerm, from, range.to)
  );
}

/** `topped up with it`, `added 3 l of it`. */
function isAdded(frame: Frame, clause: Clause, i: number): boolean {
  const { terms } = frame;
  const before = terms[i - 1];
  if (before?.kind !== 'measure' && !means(before, 'of', 'with')) return false;
  const isOfAmount = before?.kind === 'measure' || terms[i - 2]?.kind === 'measure';
  const says =
    clauseHas(frame, clause, 'top-up') || (isOfAmount && clauseHas(frame, clause, 'add'));
  return says && !clauseHas(frame, { from: 0, to: clause.to }, 'empty-out', 'change', 'clean');
}
