import type { Doubt } from '../doubt.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { Statement } from '../statement.ts';
import type { Answered } from './fill-value.ts';
import { again } from './without-system.ts';

/**
 * `someone else did`, `that was Priya`, `war ich nicht`, where it was asked with how much somebody topped up: they
 * need not know, but can see how full it is now. Where that was told, the question is done with.
 */
export function doneByAnother(frame: Frame, doubt: Doubt, answered: Answered): Statement | null {
  const { reason, waiting } = doubt;
  const isOfTopUp = reason.kind === 'missing-amount' && reason.quantity === 'top-up';
  if (!isOfTopUp && reason.kind !== 'litres-to-brim') return null;
  if (!namesAnother(frame)) return null;
  const drafts = waiting?.for === 'value' ? waiting.drafts : [];
  if (!isOfTopUp || drafts.some(({ system }) => system === null)) return answered([]);
  const levels = drafts.map((draft) => ({ ...draft, quantity: 'level' as const }));
  return again(frame, {
    reason: { kind: 'missing-amount', quantity: 'level' },
    choices: [],
    waiting: { for: 'value', drafts: levels },
  });
}

/** Whose doing it was, and nothing more. */
function namesAnother({ terms }: Frame): boolean {
  const said = terms.filter(({ kind }) => kind !== 'stop' && kind !== 'mark');
  const isAnother = said.some((term) => means(term, 'another-person', 'member', 'third-person'));
  const isNotMe =
    said.some((term) => means(term, 'self', 'own-doing')) &&
    said.some((term) => means(term, 'not', 'did-not', 'said-no'));
  if (!isAnother && !isNotMe) return false;
  return said.every(
    (term) =>
      !isMeasure(term) &&
      !isName(term) &&
      means(
        term,
        'another-person',
        'member',
        'third-person',
        'self',
        'not',
        'did-not',
        'said-no',
        'was',
        'did',
        'has',
        'link',
        'pronoun',
        'article',
        'filler',
        'own-doing',
        'top-up',
        'fill',
        'done',
        'meant',
      ),
  );
}
