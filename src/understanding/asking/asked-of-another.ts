import { isLabel } from '../moods/clause-kinds.ts';
import type { Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Ask, AskStatement } from '../statement.ts';
import { quantityAsked, systemsNamed } from './asked-things.ts';

/**
 * `and the gutters?`, `what about the jars`, `and the ph?`, right after a question: the same asked of another
 * system, or of another quantity. Null: nothing was asked just now, or it says more.
 */
export function askedOfAnother(frame: Frame): AskStatement | null {
  const { terms, context } = frame;
  const { asked } = context;
  if (!asked || terms.length > mostTerms || !opensAsMore(terms) || !terms.every(isSmall))
    return null;
  const systems = systemsNamed(frame, 0, terms.length);
  const labels = terms.filter(isLabel);
  const ask = ofAnother(frame, asked, systems.length, labels.length);
  if (!ask) return null;
  return {
    kind: 'ask',
    ask: systems.length === 1 && 'system' in ask ? { ...ask, system: systems[0]! } : ask,
    ...(systems.length > 1 ? { systems } : {}),
    span: { from: 0, to: frame.folded.text.length },
    because: ['the same of another'],
  };
}

const mostTerms = 8;

function ofAnother(frame: Frame, asked: Ask, named: number, labels: number): Ask | null {
  if (labels === 0) {
    if (named === 0 || !('system' in asked)) return null;
    return named === 1 ? asked : { ...asked, system: null };
  }
  const quantity = labels === 1 ? quantityAsked(frame, 0, frame.terms.length) : null;
  return quantity !== null && asked.kind === 'last-reading' ? { ...asked, quantity } : null;
}

/** `and …`, `what about …`, or a question by its sign alone. */
function opensAsMore(terms: readonly Term[]): boolean {
  const first = terms.find((term) => !means(term, 'filler') || isMore(term));
  return isMore(first) || terms.some((term) => term.kind === 'stop' && term.cut === 'question');
}

function isMore(term: Term | undefined): boolean {
  return means(term, 'what', 'how') || (term?.kind === 'stop' && term.cut === 'and');
}

function isSmall(term: Term): boolean {
  if (term.kind === 'name') return term.sure;
  return (
    term.kind === 'stop' ||
    term.kind === 'mark' ||
    isLabel(term) ||
    means(term, 'what', 'how', 'place', 'of', 'article', 'filler', 'link', 'with')
  );
}
