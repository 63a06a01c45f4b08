import { isNamedWork } from '../is-named-work.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { type Clause, type Frame, isMeasure, type TermRange } from '../reading/frame.ts';
import { isProbe, means, type Term } from '../reading/term.ts';
import type { TakingBack, WorkNamed } from '../statement.ts';
import { isSmall, leftOut } from './done.ts';

/**
 * `except the jars`, `but not the gutters, the lid is stuck`, `everything but the pen`, right after all was
 * told done: of what was closed by that, this was not done. Null: nothing of the kind was closed, or more is told.
 */
export function exceptOfJustDone(frame: Frame): TakingBack | null {
  const { context, places, terms, clauses } = frame;
  const closed = context.justLogged?.filter(({ quantity }) => quantity === 'duty-done') ?? [];
  if (closed.length === 0 || !places.hasAny(['except', 'not', 'did-not'])) return null;
  if (terms.some((term) => isMeasure(term) || isQuestion(term))) return null;
  const works: WorkNamed[] = [];
  for (const clause of clauses) {
    const said = namingPart(frame, clause);
    const work = isException(frame, clause, said, works.length > 0) ? leftOut(frame, said) : null;
    if (work !== null) works.push(work);
    else if (works.length === 0 && said.to < clause.to) return null;
    if (tellsMore(frame, { from: said.to, to: clause.to })) return null;
  }
  const isClosed = works.every((work) => closed.some((draft) => isNamedWork(draft, work)));
  return works.length > 0 && isClosed ? { kind: 'not-done', works } : null;
}

/** A further name of a list needs no `not` of its own. */
function isException({ places }: Frame, clause: Clause, { from, to }: TermRange, isList: boolean) {
  const isMore = isList && (clause.opens === 'and' || clause.opens === 'comma');
  return isMore || deniers.some((denier) => places.has(denier, from, to));
}

const deniers = ['except', 'not', 'did-not'] as const;

/** The clause as far as it only names work: what follows may say why. */
function namingPart({ terms }: Frame, { from, to }: Clause): TermRange {
  let end = from;
  while (end < to && isOfNaming(terms[end]!)) end++;
  return { from, to: end };
}

function isOfNaming(term: Term): boolean {
  return (
    term.kind === 'name' ||
    term.kind === 'mark' ||
    isLabel(term) ||
    isSmall(term) ||
    isProbe(term) ||
    means(
      term,
      'did-not',
      'check',
      'calibrate',
      'clean',
      'top-up',
      'fill',
      'change',
      'no-wait',
      'sorry',
    )
  );
}

function tellsMore({ terms }: Frame, { from, to }: TermRange): boolean {
  return terms.slice(from, to).some((term) => term.kind === 'name' || isLabel(term));
}

function isQuestion(term: Term): boolean {
  return term.kind === 'stop' && term.cut === 'question';
}
