import type { Frame } from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';
import type { DoneStatement } from '../statement.ts';

/** `bench yes, jars no` to a list of duties: of each system whether its work is done, and nothing else. */
export function doneByYes(frame: Frame): DoneStatement | null {
  const { terms, context } = frame;
  if (context.repliedTo?.kind !== 'round' || !frame.places.hasAny(['said-no', 'yes'])) return null;
  const done = terms.flatMap((term, i) =>
    term.kind === 'name' && term.sure && means(terms[i + 1], 'yes') ? term.systems : [],
  );
  const isPlain = terms.every((term, i) => {
    if (term.kind === 'name') return term.sure && means(terms[i + 1], 'yes', 'said-no');
    if (term.kind === 'stop') return term.cut !== 'question';
    if (means(term, 'yes', 'said-no')) return terms[i - 1]?.kind === 'name';
    return isMark(term, ':') || means(term, 'article', 'filler');
  });
  if (!isPlain || done.length === 0) return null;
  return {
    kind: 'done',
    systems: done,
    duty: null,
    chore: null,
    except: [],
    span: { from: 0, to: frame.folded.text.length },
    because: ['a yes for it'],
  };
}
