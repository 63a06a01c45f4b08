import { asksWhatToDo } from '../reading/asks-what-to-do.ts';
import type { Lexicon } from '../reading/lexicon.ts';
import { onceFor } from '../reading/once-for.ts';
import type { AskConcept } from '../vocabulary/concept.ts';
import type { Vocabulary } from '../vocabulary/vocabulary.ts';
import { isFiller } from './clause-view.ts';
import type { Clause } from './clauses.ts';

/** The clause as a question where it opens as one, with or without a question mark: `how long can I leave the jars`. */
export function asAsked(clause: Clause, { own }: Lexicon): Clause {
  if (clause.isQuestion) return clause;
  const said = clause.pieces.filter(({ concepts }) => !isFiller(concepts));
  if (said.some(({ concepts }) => concepts.has('not') || concepts.has('cannot'))) return clause;
  const isOfSystem = clause.pieces.some(({ system }) => system !== null);
  const { longest, phrases, withObject } = openersOf(own.vocabulary);
  const words = clause.pieces.flatMap(({ text }) => text.split(' '));
  if (words.some((_, i) => asksWhatToDo(words, i, own.vocabulary))) {
    return { ...clause, isQuestion: true };
  }
  for (let first = 0; first < Math.min(clause.pieces.length, 2); first++) {
    for (let count = 1; count <= longest; count++) {
      const opened = words.slice(first, first + count).join(' ');
      if (phrases.has(opened) || (isOfSystem && withObject.has(opened))) {
        return { ...clause, isQuestion: true };
      }
    }
    if (said[0] === clause.pieces[first]) break;
  }
  return clause;
}

/** Words that ask wherever they come first; `when` and `which` may go on with what is said. */
const opening: readonly AskConcept[] = ['how-long', 'how-much', 'why', 'when-past'];

const openersOf = onceFor(({ words, asksOneself, asksWithObject }: Vocabulary) => {
  const phrases = [...opening.flatMap((concept) => words[concept]), ...asksOneself];
  return {
    phrases: new Set(phrases),
    withObject: new Set(asksWithObject),
    longest: Math.max(...phrases.map((phrase) => phrase.split(' ').length)),
  };
});
