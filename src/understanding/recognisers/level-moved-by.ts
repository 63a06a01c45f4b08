import type { Fact } from '../fact.ts';
import { cmFactor, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  measureOf,
  namesIn,
  previousIn,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { unsaidTime } from '../times/time-mark.ts';
import { fact } from './level-fact.ts';
import { isTalkOfLevel } from './level-talk.ts';

/** `dropped 3 cm`, `sank by 2 l`: by how much it moved, and nobody says from where. */
export function isByHowMuch(frame: Frame, clause: Clause, i: number): boolean {
  const before = previousIn(frame, clause, i, (term) => means(term, 'about', 'article'));
  const lead = frame.terms[before];
  if (before >= clause.from && means(lead, 'moved', 'by') && !means(lead, 'to')) return true;
  // `4 cm since Saturday`, `4 cm lower than on Saturday`: against how it stood then.
  const next = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  const isSince = means(next, 'since') && frame.timed[i + 2] === true;
  if (isVolume(measureOf(frame, i))) return isSince && means(lead, 'down');
  return means(next, 'compared') || isSince;
}

/** By how much the water moved, of a system that is named: where it stands now is what can be told, and is asked. */
export function standsNow(frame: Frame, clause: Clause, i: number): Fact[] {
  const measure = measureOf(frame, i);
  // `dropped 2 jugs in the jars`: they were put in.
  const isInVessels = measure.unit !== null && 'litres' in measure.unit;
  const isOfWater =
    cmFactor(measure) !== null ? isTalkOfLevel(frame, clause) : isVolume(measure) && !isInVessels;
  if (!isOfWater || namesIn(frame, clause).length !== 1) return [];
  if (clauseHas(frame, clause, 'top-up', 'add', 'fill', 'take-away', 'pick')) return [];
  const { writtenAtMs: atMs } = frame.context;
  const time = { from: i, to: i, clause: frame.clauseOf[i]!, ...unsaidTime, atMs };
  return [{ ...fact(frame, i, { kind: 'missing' }, 'moved, and nobody says from where'), time }];
}
