import { measureTerm } from './make-term.ts';
import { isMark, means, type Term } from './term.ts';

/** Lets `about`, `-ish`, `more than` and their like colour the number beside them. */
export function shadeMeasures(terms: readonly Term[]): Term[] {
  let isGuess = false;
  let opens = true;
  return terms.map((term, i) => {
    if (opens) isGuess = opensGuess(term);
    opens = term.kind === 'stop';
    if (term.kind !== 'measure') return term;
    const approximate =
      term.measure.approximate || isGuess || isAboutBefore(terms, i) || isIshAfter(terms, i);
    const bound = isBound(terms, i);
    if (approximate === term.measure.approximate && !bound) return term;
    return measureTerm(term, { ...term.measure, approximate, bound });
  });
}

function isAboutBefore(terms: readonly Term[], i: number): boolean {
  let j = i - 1;
  while (means(terms[j], 'article', 'at', 'to', 'link') && !means(terms[j], 'about') && j > i - 4)
    j--;
  return means(terms[j], 'about');
}

/** `I'd say dwc ph 5.8`: the clause opens with what makes a guess of it. */
function opensGuess(term: Term): boolean {
  return means(term, 'ish') && !means(term, 'about');
}

function isIshAfter(terms: readonly Term[], i: number): boolean {
  let j = i + 1;
  if (isMark(terms[j], '-')) j++;
  if (!means(terms[j], 'ish')) return false;
  // `5.8 about 1.7`: the word belongs to the number after it.
  return !(means(terms[j], 'about') && terms[j + 1]?.kind === 'measure');
}

function isBound(terms: readonly Term[], i: number): boolean {
  // `under ph 6`: the word of the reading may stand between.
  const lead = means(terms[i - 1], 'ph', 'ec', 'temperature', 'humidity') ? i - 2 : i - 1;
  const before = terms[lead];
  return (
    means(before, 'beyond') &&
    !means(before, 'filler', 'about') &&
    terms[lead - 1]?.kind !== 'measure'
  );
}
