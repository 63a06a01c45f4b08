import { stopBefore } from './make-term.ts';
import { means, type Term } from './term.ts';

/**
 * `dwc 5.8/1.7/21 gutters the same`, `jars ph 6.2 same for the gutters`: the same of one more system is a saying of its
 * own, as after a comma.
 */
export function cutAtSame(terms: readonly Term[]): readonly Term[] {
  if (!terms.some(isSame)) return terms;
  return terms.flatMap((term, i): readonly Term[] => {
    if (terms[i - 1]?.kind !== 'measure') return [term];
    if (leadsToName(terms, i)) return [stopBefore(term, 'comma'), term];
    if (term.kind !== 'name') return [term];
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

/** `same for the gutters`, and nothing behind it. */
function leadsToName(terms: readonly Term[], i: number): boolean {
  if (!means(terms[i], 'same')) return false;
  let name = i + 1;
  while (means(terms[name], 'place', 'article', 'both', 'all')) name++;
  const closes = terms[name + 1] === undefined || terms[name + 1]!.kind === 'stop';
  return name > i + 1 && terms[name]?.kind === 'name' && closes;
}
