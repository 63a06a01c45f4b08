import { isLabel } from '../moods/clause-kinds.ts';
import { type Clause, clauseHas, type Frame, isMeasure, isPadding } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/**
 * Whether a clause speaks of nothing but where the water stands, so that a bare length or share in it can be a
 * level: `bench 52 cm`, `5 cm down in the dwc`; but not `moved the bench 10 cm left`.
 */
export function isTalkOfLevel(frame: Frame, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (frame.timed[i] || term.kind === 'name' || isMeasure(term) || isPadding(term)) continue;
    if (term.kind === 'clock' || isLabel(term) || isWordOfLevel(term)) continue;
    // `the water is 25 cm high`; `the tub is 25 cm high` is its size.
    if (means(term, 'size') && isHeightOfWater(frame, clause)) continue;
    if (frame.taken[i] === true || means(term, 'was', 'third-person')) continue;
    if (means(term, 'top-up', 'fill', 'add') && clauseHas(frame, clause, 'after', 'before'))
      continue;
    return false;
  }
  return true;
}

/** `the water stands 25 cm high`: no size of the tub, nor of a plant. */
export function isHeightOfWater(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'water', 'solution', 'level');
}

function isWordOfLevel(term: Term): boolean {
  return means(
    term,
    'level',
    'deep',
    'left-over',
    'below',
    'except',
    'air',
    'going',
    'down',
    'rising',
    'low',
    'full',
    'brim',
    'place',
    'of',
    'to',
    'water',
    'solution',
    'reservoir',
    'there-is',
    'has',
    'each',
    'both',
    'all',
    'check',
    'today',
    'this',
    'morning',
    'greeting',
    'member',
    'ish',
    'instrument',
    'beyond',
    'since',
    'yesterday',
    'another',
    'at-hour',
    'after',
    'before',
  );
}
