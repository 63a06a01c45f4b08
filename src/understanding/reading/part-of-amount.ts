import { isBare } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** `10 of the 12 l`, `10 von den 12 l`: so much of it, and not all that there was. */
export function withPartsOfAmounts(terms: readonly Term[]): readonly Term[] {
  if (!terms.some((term) => means(term, 'of'))) return terms;
  const read: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const part = partAt(terms, i);
    read.push(part ?? terms[i]!);
    if (part) i += 3;
  }
  return read;
}

function partAt(terms: readonly Term[], i: number): MeasureTerm | null {
  const [part, of, the, whole] = terms.slice(i, i + 4);
  if (part?.kind !== 'measure' || whole?.kind !== 'measure') return null;
  if (!means(of, 'of') || !means(the, 'article')) return null;
  const isOfIt = isBare(part.measure) && whole.measure.unit !== null;
  // `2 of the 5 l bottles` counts bottles.
  if (!isOfIt || means(terms[i + 4], 'vessel')) return null;
  if (part.measure.values[0]! > whole.measure.values[0]!) return null;
  const measure = { ...part.measure, unit: whole.measure.unit };
  const { from, glued } = part;
  const text = `${part.text} ${of!.text} ${whole.text}`;
  return measureTerm({ from, to: whole.to, text, glued }, measure);
}
