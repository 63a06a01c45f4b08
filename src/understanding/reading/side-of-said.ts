import type { NameMatch } from '../names/match-name.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { phraseAt, type Reading } from './look-up.ts';
import { isMark, means, type Term } from './term.ts';

/**
 * Where a word of direction is a name though no preposition leads it: `ph left 5.9`, between what is told and its
 * value; `left is fine right ph 6.0`, where its counterpart opens the clause and a value of its own follows. Else
 * what is told of the one would be logged for the other.
 */
export function isSideOfSaid(
  reading: Reading,
  at: number,
  { systems, length }: NameMatch,
  before: readonly Term[],
): boolean {
  const last = before.at(-1);
  const isNumber = reading.tokens[at + length]?.kind === 'number';
  if (isNumber && isQuantity(isMark(last, ':', '=') ? before.at(-2) : last)) return true;
  if (last?.kind !== 'word' || means(last, 'all')) return false;
  const opens = opening(before);
  const isOther =
    opens?.kind === 'name' && opens.everyday && opens.systems.join() !== systems.join();
  return isOther && (isNumber || leadsValue(reading, at + length));
}

function isQuantity(term: Term | undefined): boolean {
  return means(term, 'ph', 'ec', 'temperature', 'ppm-word', 'oxygen');
}

/** The first term of the clause that is being read. */
function opening(before: readonly Term[]): Term | undefined {
  return before[before.findLastIndex(({ kind }) => kind === 'stop') + 1];
}

const leading: readonly Concept[] = ['ph', 'ec', 'temperature', 'ppm-word', 'oxygen', 'down'];

/** `right ph 6`, `unten fehlen 10 l`: a word of a reading, and then a number. */
function leadsValue(reading: Reading, at: number): boolean {
  const phrase = phraseAt(reading, at);
  const isLed = phrase !== null && leading.some((concept) => phrase.value.concepts.has(concept));
  return isLed && reading.tokens[at + phrase.length]?.kind === 'number';
}
