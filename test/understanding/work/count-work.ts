import type { Context } from '../../../src/understanding/context.ts';
import { readFrame } from '../../../src/understanding/read-frame.ts';
import { withoutCompounds } from '../../../src/understanding/reading/compounds.ts';
import { fold } from '../../../src/understanding/reading/fold.ts';
import { frameOf } from '../../../src/understanding/reading/frame.ts';
import { lexiconFor } from '../../../src/understanding/reading/lexicon.ts';
import { readingOf } from '../../../src/understanding/reading/look-up.ts';
import { putNamesRight } from '../../../src/understanding/reading/put-names-right.ts';
import { putRight } from '../../../src/understanding/reading/put-right.ts';
import { shadeMeasures } from '../../../src/understanding/reading/shade-measures.ts';
import { termsOf } from '../../../src/understanding/reading/terms-of.ts';
import { tokenise } from '../../../src/understanding/reading/tokenise.ts';

/**
 * How often tokens, terms and clauses are looked at while a text is read: the steps that `understand` takes,
 * with counters between them and no limit of length.
 */
export function countWork(text: string, context: Context): number {
  let looks = 0;
  const counted = <T>(list: readonly T[]): readonly T[] =>
    new Proxy(list, {
      get(target, key, receiver) {
        if (typeof key === 'string' && /^\d/.test(key)) looks += 1;
        return Reflect.get(target, key, receiver) as unknown;
      },
    });
  const folded = fold(text);
  const lexicon = lexiconFor(context.greenhouse, context.member.language);
  const tokens = counted(withoutCompounds(counted(tokenise(folded.text)), lexicon));
  const right = putRight(counted(shadeMeasures(counted(termsOf(readingOf(tokens, lexicon))))));
  const terms = putNamesRight(counted(right));
  const frame = frameOf(context, lexicon, folded, counted(terms));
  readFrame({ ...frame, clauses: counted(frame.clauses), clauseOf: counted(frame.clauseOf) });
  return looks;
}
