import { type Clause, clauseHas, type Frame, isName, isVolumeTerm } from '../reading/frame.ts';
import { isUnknown, means } from '../reading/term.ts';

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

/** `left tub 2 jugs left over in shed`: behind a name, amounts that are left in a place which is none of ours. */
export function leftElsewhere(frame: Frame, clause: Clause): readonly number[] {
  if (!clauseHas(frame, clause, 'left-over')) return [];
  return frame.places
    .within(isVolumeTerm, clause.from, clause.to)
    .filter(
      (i) =>
        frame.places.hasWhere(isName, clause.from, i) &&
        isStranger(frame, placeOf(frame, clause, i)),
    );
}

/** Where the word stands for what an amount is left in; the clause's end, if there is none. */
function placeOf(frame: Frame, clause: Clause, i: number): number {
  let at = i + 1;
  while (
    at < clause.to &&
    means(frame.terms[at], 'left-over') &&
    !means(frame.terms[at], 'article')
  )
    at++;
  if (at === i + 1 || !means(frame.terms[at], 'place')) return clause.to;
  while (at < clause.to && means(frame.terms[at], 'place', 'article')) at++;
  return at;
}

function isStranger({ terms, clauseOf }: Frame, at: number): boolean {
  return clauseOf[at] === clauseOf[at - 1] && isUnknown(terms[at]);
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
