import { unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isPadding,
  namesIn,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { isLabel } from './clause-kinds.ts';
import type { Marker } from './hearsay.ts';
import { leftElsewhere, leftInVessel } from './left-in-vessel.ts';

/** `the can was EC 2.1`, `mixed a can at ec 1.4`, `in der Kanne EC 1,4`: read in a vessel, and in no system. */
export function ofVessel(frame: Frame, clause: Clause, mark: Marker): void {
  for (const i of leftInVessel(frame, clause)) mark(i, i + 1, 'not-a-reading');
  for (const i of leftElsewhere(frame, clause)) mark(i, i + 1, 'queried');
  if (!isReadInVessel(frame, clause)) return;
  let last = clause;
  for (const next of frame.clauses.slice(frame.clauseOf[clause.from]! + 1)) {
    if (next.sentence !== clause.sentence || !goesOnWithValues(frame, next)) break;
    last = next;
  }
  mark(clause.from, last.to, 'not-a-reading');
}

export function isReadInVessel(frame: Frame, clause: Clause): boolean {
  if (clause.from >= clause.to || namesIn(frame, clause).length > 0) return false;
  const value = frame.places.nextWhere(isReadingOfWater, clause.from);
  if (
    value >= clause.to ||
    putsIn(frame, clause) ||
    clauseHas(frame, clause, 'calibrate', 'buffer')
  )
    return false;
  if (isMixed(frame, clause)) return true;
  return inClause(frame, clause, (_, i) => isVessel(frame, clause, i)).some(
    (i) => i < value || means(frame.terms[beforeArticle(frame, i)], 'place'),
  );
}

/** `mixed 10 l at EC 1.4`, where nothing has been emptied that it would be for. */
function isMixed(frame: Frame, clause: Clause): boolean {
  return (
    clauseHas(frame, clause, 'mixed') && !clauseHas(frame, { from: 0, to: clause.to }, ...ofNew)
  );
}

const ofNew = ['empty-out', 'changed-solution', 'change', 'refill', 'fresh'] as const;

/** `…, pH 5.9`: nothing but values, of which nobody says that they hold now or of a system. */
function goesOnWithValues(frame: Frame, clause: Clause): boolean {
  return (
    clause.from < clause.to &&
    !clauseHas(frame, clause, 'now', 'after', 'before') &&
    frame.terms
      .slice(clause.from, clause.to)
      .every((term) => isLabel(term) || term.kind === 'measure' || isPadding(term)) &&
    frame.places.hasWhere(isReadingOfWater, clause.from, clause.to)
  );
}

function putsIn(frame: Frame, clause: Clause): boolean {
  return clauseHas(
    frame,
    clause,
    'add',
    'top-up',
    'fill',
    'refill',
    'goes-in',
    'add-plainly',
    'another',
  );
}

function isReadingOfWater(term: Term): boolean {
  if (term.kind === 'measure') return unitIs(term.measure, 'ms-cm', 'us-cm', 'cf', 'ppm');
  return means(term, 'ph', 'ec', 'ppm-word', 'cf-word');
}

/** A container of this greenhouse by its bare name, one of them as an amount (`a can at`), or a vessel of something. */
function isVessel(frame: Frame, clause: Clause, i: number): boolean {
  const [term, next] = [frame.terms[i]!, i + 1 < clause.to ? frame.terms[i + 1] : undefined];
  if (
    means(frame.terms[beforeArticle(frame, i)], 'after', 'before', 'with', 'from', 'plus') &&
    i > clause.from
  )
    return false;
  if (term.kind === 'measure') {
    const isContainer = term.measure.unit !== null && 'litres' in term.measure.unit;
    return isContainer && means(next, 'at', 'to', 'with', 'of', 'was') && !means(next, 'now');
  }
  if (!means(term, 'vessel') || (means(term, 'numbered') && next?.kind === 'measure')) return false;
  return means(next, 'of') || isContainerName(frame, term.text);
}

function isContainerName(frame: Frame, text: string): boolean {
  return frame.context.greenhouse.containers.some(({ name }) => name.toLowerCase() === text);
}

function beforeArticle(frame: Frame, i: number): number {
  return means(frame.terms[i - 1], 'article') ? i - 2 : i - 1;
}
