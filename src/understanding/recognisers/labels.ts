import type { Quantity } from '../../greenhouse/quantity.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { isBare, unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure } from '../reading/frame.ts';
import { isMark, isProbe, means, type Term } from '../reading/term.ts';

/** The quantity that a word names here; null if it names none, or has been read already. */
export function quantityOf(frame: Frame, clause: Clause, i: number): Quantity | null {
  const term = frame.terms[i]!;
  if (frame.taken[i] || term.kind !== 'word') return null;
  if ((term.word.product ?? '').startsWith('ph-') || means(term, 'ph')) return 'ph';
  if (means(term, 'ec', 'ppm-word', 'cf-word')) return 'ec';
  if (means(term, 'humidity')) return 'humidity';
  if (means(term, 'oxygen') && isOxygen(frame, clause, i)) return 'dissolved-oxygen';
  if (means(term, 'air', 'air-thermometer')) return 'air-temperature';
  if (term.word.probe !== null) return quantityOfProbe(frame, clause, term.word.probe);
  if (!means(term, 'temperature')) return null;
  return isOfTheAir(frame, clause, i) ? 'air-temperature' : 'water-temperature';
}

/** `pen 5.8`, `the stick says 1.7`: a probe for one quantity names it where nothing else does. */
function quantityOfProbe(frame: Frame, clause: Clause, name: string): Quantity | null {
  const labels = frame.places.hasWhere(isLabel, clause.from, clause.to);
  if (isOnlyByIt(frame, clause, name)) return null;
  const { probes } = frame.context.greenhouse;
  const measures = probes.find((probe) => probe.name === name)?.measures ?? [];
  return labels || measures.length !== 1 ? null : measures[0]!;
}

/** `ec 1.25 (pen), 1.31 (the other pen)`: named before beside another quantity, it says no more than what was read with. */
function isOnlyByIt(
  { places, terms, clauses, clauseOf }: Frame,
  { from }: Clause,
  name: string,
): boolean {
  const at = places.lastWhere(isProbe, from - 1);
  const term = terms[at];
  if (term?.kind !== 'word' || term.word.probe !== name) return false;
  const before = clauses[clauseOf[at]!]!;
  return before.to === from - 1 && places.hasWhere(isLabel, before.from, before.to);
}

/** `do` is oxygen only straight before or after its number, or where a system alone stands between: `DO in the dwc 7.4`. */
function isOxygen(frame: Frame, clause: Clause, i: number): boolean {
  if (!means(frame.terms[i], 'do', 'is-it')) return true;
  let j = i + 1;
  while (j < clause.to && isJoint(frame.terms[j])) j++;
  const next = j < clause.to ? frame.terms[j] : undefined;
  if (j === i + 1 && isSaidOfSystem(frame, clause, j)) return true;
  if (isMeasure(next)) return isBare(next.measure) || unitIs(next.measure, 'mg-l', 'ppm');
  const before = i > clause.from ? frame.terms[i - 1] : undefined;
  return isMeasure(before) && (unitIs(before.measure, 'mg-l') || !next);
}

/** A system, and a decimal number that ends the clause. */
function isSaidOfSystem({ terms }: Frame, { to }: Clause, place: number): boolean {
  const name = means(terms[place + 1], 'article') ? place + 2 : place + 1;
  if (!means(terms[place], 'place') || terms[name]?.kind !== 'name') return false;
  const at = isJoint(terms[name + 1]) ? name + 2 : name + 1;
  const value = terms[at];
  return at + 1 === to && isMeasure(value) && isBare(value.measure) && value.measure.decimals > 0;
}

function isJoint(term: Term | undefined): boolean {
  return isMark(term, ':', '=', '-') || means(term, 'link', 'about');
}

/** Whether the temperature at a term is of the air: by the nearest word for air or water before it, else after it. */
export function isOfTheAir(frame: Frame, clause: Clause, i: number): boolean {
  const before = frame.places.lastWhere(isAirOrWater, i);
  if (before >= clause.from) return airOrWater(frame.terms[before]) === 'air';
  const after = frame.places.nextWhere(isAirOrWater, i + 1);
  return after < clause.to && airOrWater(frame.terms[after]) === 'air';
}

function isAirOrWater(term: Term): boolean {
  return airOrWater(term) !== null;
}

function airOrWater(term: Term | undefined): 'air' | 'water' | null {
  if (means(term, 'air', 'inside', 'air-thermometer')) return 'air';
  return means(term, 'water') || (means(term, 'temperature') && means(term, 'solution'))
    ? 'water'
    : null;
}
