import { isLabel } from '../moods/clause-kinds.ts';
import { isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  measureOf,
  measuresIn,
  namesIn,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { verbless } from './after-amount.ts';
import { saysChanged } from './fresh-water.ts';

/** The verb of adding in a clause, if it has water as its object or none. */
export function verbOf(frame: Frame, clause: Clause): number | null {
  if (
    clauseHas(frame, clause, 'calibrate', 'pick') ||
    saysChanged(frame, clause) ||
    isFillTime(frame, clause)
  )
    return null;
  const verbs = inClause(
    frame,
    clause,
    (term, i) =>
      (means(term, 'top-up', 'add', 'fill', 'refill', 'add-plainly') ||
        (means(term, 'goes-in') && goesIntoSystem(frame, clause))) &&
      !frame.taken[i] &&
      !isLevelWord(frame, clause, i) &&
      !isTakingOut(frame, clause, i) &&
      // `300 l before topping up`: how it stood then.
      !means(frame.terms[i - 1], 'before') &&
      !isOfReading(frame, clause, i),
  );
  const strong = verbs.find((i) => means(frame.terms[i], 'top-up', 'fill', 'refill'));
  return strong ?? verbs[0] ?? verbless(frame, clause);
}

/** `took 3 cans out`: of the shed, of the bench; into no system by itself. */
export function isTakingOut(frame: Frame, clause: Clause, i: number): boolean {
  return (
    means(frame.terms[i], 'took') &&
    means(frame.terms[i], 'add') &&
    clauseHas(frame, { from: i + 1, to: clause.to }, 'put-by')
  );
}

/** `34 l went, to the last drop, into the bench`: an amount, and the system that it goes into. */
function goesIntoSystem(frame: Frame, clause: Clause): boolean {
  const isInto = namesIn(frame, clause).some((name) => {
    const lead = frame.terms[means(frame.terms[name - 1], 'article') ? name - 2 : name - 1];
    return means(lead, 'place') && !means(lead, 'to', 'at', 'from', 'of');
  });
  return isInto && measuresIn(frame, clause).some((i) => isVolume(measureOf(frame, i)));
}

/** `bench fill took 9 min`: how long, not how much. */
function isFillTime(frame: Frame, clause: Clause): boolean {
  return (
    measuresIn(frame, clause).some((i) => unitIs(measureOf(frame, i), 'minute', 'second')) &&
    clauseHas(frame, clause, 'flood')
  );
}

/** `aimed for ph 5.8 but got 6.0`: what was read, where a reading is spoken of and no volume. */
function isOfReading(frame: Frame, clause: Clause, i: number): boolean {
  if (!means(frame.terms[i], 'read-as')) return false;
  const [next] = measuresIn(frame, clause).filter((at) => at > i);
  if (next === undefined || !isBare(measureOf(frame, next))) return false;
  const start = frame.sentences[clause.sentence]![0]!.from;
  return frame.places.hasWhere(isLabel, start, i);
}

/** `put` in `put the lid on` or `got` as a link are verbs only with an amount; that is looked after below. */
function isLevelWord(frame: Frame, clause: Clause, i: number): boolean {
  return means(frame.terms[i], 'link') && previousIsLabel(frame, clause, i);
}

function previousIsLabel(frame: Frame, clause: Clause, i: number): boolean {
  for (let j = i - 1; j >= clause.from; j--) if (isLabel(frame.terms[j])) return true;
  return false;
}
