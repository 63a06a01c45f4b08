import type { Concept } from '../vocabulary/concept.ts';
import type { UnitId, Vocabulary } from '../vocabulary/vocabulary.ts';
import { Meanings } from './meanings.ts';
import { PhraseTrie } from './phrase-trie.ts';
import { type Spellings, spellingsOf } from './spellings.ts';
import { tokenise } from './tokenise.ts';
import { both, meaningless, type Word } from './word.ts';

/** What a number can be measured in: a unit, or so many litres at a time. */
export type Unit = { readonly id: UnitId; readonly shy: boolean } | { readonly litres: number };

/** One language as the reader looks it up. */
export interface WordList {
  readonly vocabulary: Vocabulary;
  readonly phrases: PhraseTrie<Word>;
  readonly units: PhraseTrie<Unit>;
  /** Every single word of every phrase. */
  readonly meant: ReadonlySet<string>;
  readonly spellings: Spellings;
  readonly common: ReadonlySet<string>;
  readonly everyday: ReadonlySet<string>;
  readonly abbreviations: ReadonlySet<string>;
}

/** The words of a phrase as the reader splits it. */
export function wordsOf(phrase: string): string[] {
  return tokenise(phrase).map(({ text }) => text);
}

export function wordListOf(vocabulary: Vocabulary): WordList {
  const phrases = new PhraseTrie<Word>();
  const meant = new Set<string>();
  const mean = (phrase: string, word: Partial<Word>, isOfName = false) => {
    const words = wordsOf(phrase);
    if (!isOfName) for (const single of words) meant.add(single);
    const full = { ...meaningless, ...word };
    const known = phrases.get(words);
    phrases.set(words, known ? both(known, full) : full);
  };
  for (const [concept, list] of Object.entries(vocabulary.words) as [
    Concept,
    readonly string[],
  ][]) {
    // A word that systems are called by: a name, or the beginning of one, comes before it.
    const isOfName = concept === 'planter';
    for (const phrase of list) mean(phrase, { concepts: new Meanings([concept]) }, isOfName);
  }
  for (const [phrase, number] of vocabulary.numbers) mean(phrase, { number });
  for (const [phrase, fraction] of vocabulary.fractions) mean(phrase, { fraction });
  for (const [phrase, ordinal] of vocabulary.ordinals) mean(phrase, { ordinal });
  for (const phrase of vocabulary.anyProduct) mean(phrase, { anyProduct: true });
  for (const [phrase, clockTurn] of vocabulary.clockTurns) mean(phrase, { clockTurn });
  for (const [crop, names] of Object.entries(vocabulary.crops))
    for (const name of names) mean(name, { crop });
  vocabulary.weekdays.forEach((names, i) => {
    for (const name of names) mean(name, { weekday: i + 1 });
  });
  vocabulary.months.forEach((names, i) => {
    for (const name of names) mean(name, { month: i + 1 });
  });
  const units = unitsOf(vocabulary, meant);
  return {
    vocabulary,
    phrases,
    units,
    meant,
    spellings: spellingsOf(meant),
    common: new Set(vocabulary.common),
    everyday: new Set(vocabulary.everyday),
    abbreviations: new Set(vocabulary.abbreviations),
  };
}

function unitsOf(vocabulary: Vocabulary, meant: Set<string>): PhraseTrie<Unit> {
  const units = new PhraseTrie<Unit>();
  for (const [id, list] of Object.entries(vocabulary.units) as [UnitId, readonly string[]][]) {
    for (const phrase of list) {
      const words = wordsOf(phrase);
      for (const word of words) meant.add(word);
      units.set(words, { id, shy: vocabulary.shyUnits.includes(phrase) });
    }
  }
  return units;
}
