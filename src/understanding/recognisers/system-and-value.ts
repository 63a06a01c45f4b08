import { isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import type { Named } from './named.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/**
 * `sorry, it was the bench and 6.2`, `sorry, es war der Tisch und 6,2`: both the system and the value of what was told
 * just now of another one. `named`: the quantity that the message names.
 */
export function systemAndValue(frame: Frame, named: () => Named): TakingBack | null {
  const { terms, places, context } = frame;
  const [number, ...others] = places.where(isMeasure);
  if (number === undefined || others.length > 0 || !places.hasAny(['was', 'meant'])) return null;
  const [name, ...names] = places.where(isName);
  const from = context.recentSystem;
  if (name === undefined || names.length > 0 || name > number || from === null) return null;
  const { system, quantity } = named();
  if (system === null || system === from || context.openQuestions.length > 0) return null;
  if (!saysItWas(terms, name) || !terms.every(mayStandBeside)) return null;
  const joint = terms.slice(name + 1, number);
  if (!joint.some(({ kind }) => kind === 'stop')) return null;
  const corrected = numbersCorrected(frame, [number, null], quantity);
  return corrected && { kind: 'correct', ...corrected, system: from, ofSystem: system };
}

/** An excuse, and straight before the name that it was that one, or was meant. */
function saysItWas(terms: readonly Term[], name: number): boolean {
  const lead = means(terms[name - 1], 'article') ? name - 2 : name - 1;
  const isMeant = means(terms[lead], 'meant') && !means(terms[lead], 'was');
  const isWas = means(terms[lead], 'was');
  const excuses = terms.slice(0, lead).some((term) => means(term, 'sorry', 'no-wait'));
  return isMeant || (isWas && excuses);
}

function mayStandBeside(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'comma' || term.cut === 'and';
  if (term.kind === 'mark') return term.text !== '?';
  if (isName(term) || isMeasure(term) || isLabel(term)) return true;
  return means(
    term,
    'article',
    'pronoun',
    'was',
    'meant',
    'filler',
    'link',
    'sorry',
    'no-wait',
    'self',
  );
}
