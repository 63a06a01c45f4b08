import { stopTerm } from './make-term.ts';
import { means, type Term } from './term.ts';

/** `bench at 380 l so I added 20 cans`: what follows is a saying of its own, as after `then`. */
export function cutAtSo(terms: readonly Term[]): readonly Term[] {
  return terms.map((term, i): Term => {
    if (!means(term, 'so') || i === 0 || terms[i - 1]!.kind === 'stop') return term;
    const next = terms[i + 1];
    if (!next || next.kind === 'stop' || next.kind === 'measure') return term;
    return stopTerm(term, 'then');
  });
}
