import { isRunOn } from './begins-anew.ts';
import type { Lexicon } from './lexicon.ts';
import { stopBefore } from './make-term.ts';
import type { Term } from './term.ts';

/** Shorter messages hold no two sayings. */
const shortestRunOn = 4;

/**
 * What is written in one breath, cut where the next saying begins: `topped jars 1 jug should I do the bench`,
 * `how full is the bench its 300 l now`, `t2 doesn't need any 18 gal in it`, `did pond did table couldn't reach rail`.
 */
export function cutRunOns(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  if (terms.length < shortestRunOn) return terms;
  const said: Term[] = [];
  let from = 0;
  for (const [i, term] of terms.entries()) {
    if (term.kind === 'stop') from = i + 1;
    const cut = i > from ? isRunOn(terms, from, i, lexicon) : null;
    if (cut !== null) {
      said.push(stopBefore(term, cut));
      from = i;
    }
    said.push(term);
  }
  return said;
}
