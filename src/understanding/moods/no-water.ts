import {
  type Clause,
  clauseHas,
  clauseToldBefore,
  type Frame,
  inClause,
  isMeasure,
  namesIn,
} from '../reading/frame.ts';
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

/** `pump hums but there's no water`, `Pumpe summt, aber es kommt kein Wasser`: where the clause says so of a pump; else null. */
export function noFlowAt(frame: Frame, clause: Clause): number | null {
  const at = inClause(frame, clause, (_, i) => isNoWater(frame, clause, i))[0];
  if (at === undefined || clauseHas(frame, clause, 'intention', 'condition')) return null;
  if (frame.places.hasWhere(isMeasure, clause.from, clause.to)) return null;
  return pumpSpokenOf(frame, clause, at) === null ? null : at;
}

/** The pump of the clause, or of the one before it where that tells of nothing else that was done. */
export function pumpSpokenOf(frame: Frame, clause: Clause, to: number): number | null {
  const own = inClause(frame, clause, (term, i) => i < to && means(term, 'pump'))[0];
  if (own !== undefined) return own;
  if (namesIn(frame, clause).length > 0 && !means(frame.terms[to], 'dry')) return null;
  const before = clauseToldBefore(frame, clause);
  if (before?.sentence !== clause.sentence) return null;
  if (frame.places.hasWhere(isMeasure, before.from, before.to)) return null;
  return inClause(frame, before, (term) => means(term, 'pump'))[0] ?? null;
}

function isNoWater(frame: Frame, clause: Clause, i: number): boolean {
  const [term, next] = [frame.terms[i], i + 1 < clause.to ? frame.terms[i + 1] : undefined];
  if (means(term, 'no-water-in')) return true;
  if (means(term, 'dry')) return isPumpedDry(frame, clause, i);
  if (!means(term, 'no', 'did-not')) return false;
  // `no water` is one phrase of what was not done.
  return means(term, 'top-up') || means(next, 'water', 'solution');
}

/** `pump humming but the gutters dry`: what it is to bring there does not come. */
function isPumpedDry(frame: Frame, clause: Clause, i: number): boolean {
  const before = clauseToldBefore(frame, clause);
  const isLead =
    before !== undefined && clauseHas(frame, before, 'pump') && namesIn(frame, before).length === 0;
  const runs = isLead && !clauseHas(frame, before, 'broken', 'not', 'did-not');
  const isPlain = frame.terms
    .slice(clause.from, i)
    .every((term) => term.kind === 'name' || means(term, 'article', 'link', 'filler'));
  return runs && isPlain && namesIn(frame, clause).length > 0;
}
