import { matchName, nearness } from '../names/match-name.ts';
import { phraseAt, type Reading, unitAt } from '../reading/look-up.ts';
import type { Match } from '../reading/phrase-trie.ts';
import type { Unit } from '../reading/word-list.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { concept } from './concept-at.ts';

/** The unit that stands at a token, where it is no preposition and no name. */
export function unitFrom(reading: Reading, at: number): Match<Unit> | null {
  const unit = unitAt(reading, at);
  if (unit && closesQuotation(reading, at)) return null;
  // `at 7 barrels ph 6`: a system's name, and no measure.
  // `5.8 w/ ec 1.7`: nor is a word of more signs than the unit.
  const isUnknown = unit !== null && 'id' in unit.value && unit.value.id === 'unknown';
  if (isUnknown && (isNameAt(reading, at) || (phraseAt(reading, at)?.length ?? 0) > unit.length))
    return null;
  if (unit && leadsToLabel(reading, at)) return null;
  if (!unit || !('shy' in unit.value) || !unit.value.shy) return unit;
  // An inch only where the word can be no preposition.
  if (reading.tokens[at]!.glued) return unit;
  const after = reading.tokens[at + unit.length];
  if (!after || after.kind === 'line' || ',.;!?'.includes(after.text)) return unit;
  // `3 in left`, where a tub is called so: what went in it, as like as not.
  if (isNameAt(reading, at + unit.length)) return null;
  const word = phraseAt(reading, at + unit.length)?.value;
  return word &&
    ['below', 'deep', 'left-over', 'down'].some((wanted) => word.concepts.has(wanted as Concept))
    ? unit
    : null;
}

/** `ph 5.8 w ec 1.7`, `ph 5,8 m. ec 1,7`: a letter that stands for `with`, before the word of another reading. */
function leadsToLabel(reading: Reading, at: number): boolean {
  const length = withLength(reading, at);
  const labels = ['ph', 'ec', 'temperature'] as const;
  if (length === 0) return false;
  return (
    labels.some((label) => concept(reading, at + length, label) > 0) ||
    isMillilitres(reading, at + length)
  );
}

/** `6.9>6.3 w 25ml down`: how much of a product was given with it. */
function isMillilitres(reading: Reading, at: number): boolean {
  if (reading.tokens[at]?.kind !== 'number') return false;
  const unit = unitAt(reading, at + 1)?.value;
  return unit !== undefined && 'id' in unit && unit.id === 'ml';
}

/** How many tokens a single letter takes that stands for `with`; 0: there is none. */
export function withLength(reading: Reading, at: number): number {
  const short = reading.tokens[at];
  if (short?.kind !== 'word' || short.text.length > 1 || short.glued) return 0;
  return concept(reading, at, 'with');
}

function isNameAt({ tokens, lexicon }: Reading, at: number): boolean {
  const name = matchName(tokens, at, lexicon);
  return name !== null && name.near <= nearness.inflected;
}

const inchMark = '"';

/** `"dwc ph 5.8"`: the mark of an inch ends what another began. */
function closesQuotation(reading: Reading, at: number): boolean {
  const mark = reading.tokens[at]!;
  if (mark.kind !== 'mark' || mark.text !== inchMark) return false;
  let before = 0;
  for (let i = 0; i < at; i++) if (reading.tokens[i]!.text === mark.text) before++;
  return before % 2 === 1;
}
