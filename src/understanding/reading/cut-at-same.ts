import { stopBefore } from './make-term.ts';
import { means, type Term } from './term.ts';

/** `dwc 5.8/1.7/21 gutters the same`: the name of which the same holds begins a saying of its own, as after a comma. */
export function cutAtSame(terms: readonly Term[]): readonly Term[] {
  if (!terms.some(isSame)) return terms;
  return terms.flatMap((term, i): readonly Term[] => {
    if (term.kind !== 'name' || terms[i - 1]?.kind !== 'measure') return [term];
    let end = i + 1;
    while (means(terms[end], 'article')) end++;
    const closes = terms[end + 1] === undefined || terms[end + 1]!.kind === 'stop';
    if (!isSame(terms[end]) || !closes) return [term];
    return [stopBefore(term, 'comma'), term];
  });
}

function isSame(term: Term | undefined): boolean {
  return means(term, 'same', 'alike');
}
