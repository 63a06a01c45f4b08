import { isBare } from '../numbers/quantity-of-measure.ts';
import { isShare } from './frame.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** `10 of the 12 l`, `10 von den 12 l`, `half of the 12 l`: so much of it, and not all that there was. */
export function withPartsOfAmounts(terms: readonly Term[]): readonly Term[] {
  if (!terms.some((term) => means(term, 'of') || isShare(term))) return terms;
  const read: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const share = shareAt(terms, i);
    const part = share ?? partAt(terms, i);
    read.push(part ?? terms[i]!);
    if (part) while (terms[i + 1] && terms[i + 1]!.to <= part.to) i++;
  }
  return read;
}

/** `half of the 12 l`, `half of 12 l`, `die Hälfte der 12 l`: as much of the amount as the share says. */
function shareAt(terms: readonly Term[], i: number): MeasureTerm | null {
  const share = terms[i]!;
  if (share.kind !== 'measure' || !isShare(share)) return null;
  const of = means(terms[i + 1], 'of') ? i + 2 : i + 1;
  const at = means(terms[of], 'article') && !means(terms[of], 'indefinite') ? of + 1 : of;
  const whole = terms[at];
  if (at === i + 1 || whole?.kind !== 'measure' || whole.measure.unit === null) return null;
  const values = whole.measure.values.map((value) => value * share.measure.values[0]!);
  const place = { from: share.from, to: whole.to, text: whole.text, glued: share.glued };
  return measureTerm(place, { ...whole.measure, values });
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
