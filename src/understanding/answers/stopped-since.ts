import type { Supply } from '../../greenhouse/entry.ts';
import type { Doubt } from '../doubt.ts';
import { layOut, piecesOf } from '../lay-out.ts';
import { fold } from '../reading/fold.ts';
import type { Frame } from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import type { DoubtStatement } from '../statement.ts';

/**
 * `it has stopped`, `dead now`, where a pump was heard to labour or the bubbles were weak: whether it is the
 * pump that has stopped is asked. Null: it says something else, or something more.
 */
export function stoppedSince(frame: Frame, { reason, choices }: Doubt): DoubtStatement | null {
  if (reason.kind !== 'trouble' || (reason.of !== 'noise' && reason.of !== 'air')) return null;
  const note = choices.flatMap(({ drafts }) => drafts)[0];
  if (!note || !frame.terms.some(isStopped) || !frame.terms.every(mayStandBeside)) return null;
  const of = reason.of === 'air' ? 'air-pump' : pumpIn(frame, note.note ?? '');
  const { quantity: _q, note: _n, trouble: _t, ...where } = note;
  const { writtenAtMs: atMs } = frame.context;
  return {
    kind: 'doubt',
    reason: { kind: 'stopped-altogether', of },
    choices: [{ label: { kind: 'yes' }, drafts: [{ quantity: 'outage', ...where, of, atMs }] }],
    waiting: null,
    span: { from: 0, to: frame.folded.text.length },
    because: ['stopped since'],
  };
}

function isStopped(term: Term): boolean {
  return means(term, 'broken') && !means(term, 'working');
}

function mayStandBeside(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question';
  if (isUnknown(term) || means(term, 'not', 'working')) return false;
  return (
    term.kind === 'mark' ||
    isStopped(term) ||
    means(term, 'pronoun', 'link', 'filler', 'now', 'just-now', 'then', 'whole')
  );
}

/** Which pump the note was of. */
function pumpIn({ context }: Frame, note: string): Supply {
  const folded = fold(note);
  const { terms } = layOut(piecesOf(folded, folded.text, context), context);
  return terms.some((term) => means(term, 'air-pump')) ? 'air-pump' : 'pump';
}
