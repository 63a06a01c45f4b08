import type { NameMatch } from '../names/match-name.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { phraseAt, type Reading } from './look-up.ts';
import { means, type Term } from './term.ts';

/**
 * Where a word of direction is a name though no preposition leads it: `left is fine right ph 6.0`, where its
 * counterpart opens the clause and a value of its own follows. Else what is told of the one would be logged for the
 * other.
 */
export function isSideOfSaid(
  reading: Reading,
  at: number,
  { systems, length }: NameMatch,
  before: readonly Term[],
): boolean {
  const last = before.at(-1);
  if (last?.kind !== 'word' || means(last, 'all')) return false;
  const opens = opening(before);
  if (opens?.kind !== 'name' || !opens.everyday) return false;
  return opens.systems.join() !== systems.join() && leadsValue(reading, at + length);
}

/** The first term of the clause that is being read. */
function opening(before: readonly Term[]): Term | undefined {
  return before[before.findLastIndex(({ kind }) => kind === 'stop') + 1];
}

const leading: readonly Concept[] = ['ph', 'ec', 'temperature', 'ppm-word', 'oxygen', 'down'];

/** `right 6`, `right ph 6`, `unten fehlen 10 l`: a number, after a word of a reading or none. */
function leadsValue(reading: Reading, at: number): boolean {
  if (reading.tokens[at]?.kind === 'number') return true;
  const phrase = phraseAt(reading, at);
  const isLed = phrase !== null && leading.some((concept) => phrase.value.concepts.has(concept));
  return isLed && reading.tokens[at + phrase.length]?.kind === 'number';
}
