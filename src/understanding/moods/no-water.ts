import { type Clause, clauseHas, type Frame, inClause, namesIn } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { isDeed } from './clause-kinds.ts';

/** Where a clause says of a system that it has no water, and of no deed; null: it does not. */
export function noWaterAt(frame: Frame, clause: Clause): number | null {
  if (namesIn(frame, clause).length === 0 || clauseHas(frame, clause, 'intention', 'condition')) {
    return null;
  }
  const at = inClause(frame, clause, (term) => means(term, 'none-left', 'no-water-in'))[0];
  const deeds = inClause(frame, clause, (term, i) => i !== at && isDeed(term));
  return at === undefined || deeds.length > 0 ? null : at;
}
