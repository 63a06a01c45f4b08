import { type Clause, clauseHas, type Frame, isVolumeTerm } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** `3 l left over in the can`, `the can still has 3 l left`: amounts that are in a vessel, and in no system. */
export function leftInVessel(frame: Frame, clause: Clause): readonly number[] {
  if (!clauseHas(frame, clause, 'vessel')) return [];
  if (!clauseHas(frame, clause, 'left-over', 'there-is', 'still-there', 'has')) return [];
  // `put the can with 3 l in the jars`: it is in there no more.
  if (clauseHas(frame, clause, 'add', 'top-up', 'fill', 'refill', 'goes-in')) return [];
  return frame.places
    .within(isVolumeTerm, clause.from, clause.to)
    .filter((i) => isInVesselAfter(frame, clause, i) || isOfVesselBefore(frame, clause, i));
}

function isInVesselAfter(frame: Frame, clause: Clause, i: number): boolean {
  let at = i + 1;
  while (at < clause.to && means(frame.terms[at], 'left-over', 'still-there', 'filler')) at++;
  // `left in the can` may be one phrase with its place.
  const isPlaced = at > i + 1 || means(frame.terms[at], 'place');
  while (at < clause.to && means(frame.terms[at], 'place', 'article')) at++;
  return isPlaced && at < clause.to && isVessel(frame, at);
}

function isOfVesselBefore(frame: Frame, clause: Clause, i: number): boolean {
  let at = i - 1;
  while (
    at >= clause.from &&
    !isVessel(frame, at) &&
    means(
      frame.terms[at],
      'left-over',
      'still-there',
      'there-is',
      'has',
      'link',
      'filler',
      'about',
      'article',
    )
  )
    at--;
  return at >= clause.from && isVessel(frame, at);
}

function isVessel(frame: Frame, at: number): boolean {
  return means(frame.terms[at], 'vessel') && !means(frame.terms[at], 'reservoir');
}
