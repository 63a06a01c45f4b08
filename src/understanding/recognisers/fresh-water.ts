import { isVolume } from '../numbers/quantity-of-measure.ts';
import { type Clause, clauseHas, type Frame, isVolumeTerm } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** `frisches Wasser` and other words for a change of solution, other than so much water that went in. */
export function saysChanged(frame: Frame, clause: Clause): boolean {
  if (!clauseHas(frame, clause, 'changed-solution')) return false;
  for (let i = clause.from; i < clause.to; i++)
    if (means(frame.terms[i], 'changed-solution') && !isAmountOfWater(frame, clause, i))
      return true;
  return false;
}

/** `2 Eimer frisches Wasser in den Tisch`: so much of it, where nothing was emptied as a whole before. */
export function isAmountOfWater(frame: Frame, clause: Clause, i: number): boolean {
  const { terms, sentences } = frame;
  if (!means(terms[i], 'changed-solution') || !means(terms[i], 'solution')) return false;
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
