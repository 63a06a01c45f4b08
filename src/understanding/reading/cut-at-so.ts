import { stopTerm } from './make-term.ts';
import { means, type Term } from './term.ts';

/** `bench at 380 l so I added 20 cans`: what follows is a saying of its own, as after `then`. */
export function cutAtSo(terms: readonly Term[]): readonly Term[] {
  return terms.map((term, i): Term => {
    if (!means(term, 'so') || i === 0 || terms[i - 1]!.kind === 'stop') return term;
    const next = terms[i + 1];
    if (!next || next.kind === 'stop') return term;
    if (next.kind === 'measure' && !isPutInThen(terms, i)) return term;
    return stopTerm(term, 'then');
  });
}

/** `drank 9 l so 9 l went back in`, `carried 3 cans so 2 went in the bench`: and not `2 cans so 20 l`, one amount. */
function isPutInThen(terms: readonly Term[], so: number): boolean {
  if (!means(terms[so + 2], 'add', 'goes-in')) return false;
  let at = so - 1;
  let isBefore = false;
  for (; at >= 0 && terms[at]!.kind !== 'stop'; at--) {
    if (means(terms[at], 'add', 'top-up', 'fill')) return false;
    if (means(terms[at], 'take-away', 'goes-in', 'carry')) isBefore = true;
  }
  return isBefore;
}
