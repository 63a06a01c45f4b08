import type { Clause, Frame } from '../reading/frame.ts';
import type { Concept } from '../vocabulary/concept.ts';

const supplies: readonly Concept[] = [
  'no-power',
  'power',
  'pump',
  'air-pump',
  'no-bubbles',
  'no-flow',
];

/** `has there been a power cut`, `gab es einen Stromausfall`: whether there was any, and not that there was one. */
export function asksOfOutage(frame: Frame, { to }: Pick<Clause, 'to'>, first: number): boolean {
  if (!frame.places.hasAny(supplies)) return false;
  if (!supplies.some((supply) => frame.places.has(supply, first, to))) return false;
  const said = frame.folded.text.slice(frame.terms[first]!.from);
  return frame.lexicon.own.vocabulary.asksOfOutage.some((opener) => said.startsWith(opener));
}
