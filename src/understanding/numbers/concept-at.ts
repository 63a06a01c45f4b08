import { phraseAt, type Reading } from '../reading/look-up.ts';
import type { Concept } from '../vocabulary/concept.ts';

/** How many tokens a phrase of that concept takes here; 0 if there is none. */
export function concept(reading: Reading, at: number, wanted: Concept): number {
  const phrase = phraseAt(reading, at);
  return phrase?.value.concepts.has(wanted) ? phrase.length : 0;
}
