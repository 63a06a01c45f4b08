import { describe, expect, it } from 'vitest';
import { type Language, languages } from '../../src/greenhouse/member.ts';
import { fold } from '../../src/understanding/reading/fold.ts';
import { wordListOf, wordsOf } from '../../src/understanding/reading/word-list.ts';
import type { Concept } from '../../src/understanding/vocabulary/concept.ts';
import { vocabularies } from '../../src/understanding/vocabulary/languages.ts';

/** What a language has no word for, or says by other means; whoever adds a language tells it here. */
const maySayNothing: Readonly<Record<Language, readonly string[]>> = {
  // `bzw.`, `in den`; verbs that English does not part, `ago` that only follows, and a day of the month that the 10th says.
  en: [
    'could',
    'again',
    'ago-before',
    'metric-pound',
    'decagram',
    'about-or-almost',
    'on-date',
    'in-here',
    'stands',
    'o-clock-of-24',
    'or-each',
    'where-or-where-to',
  ],
  // The infinitive is a plan and no report; `heute Nacht` is told by the hour; an order is not told as what was done is.
  de: ['tonight', 'may-be-order'],
};

describe.each(languages)('The vocabulary of %s', (language) => {
  const vocabulary = vocabularies[language];
  const list = wordListOf(vocabulary);

  it('has words for every concept, unit and product, but for what it says it lacks', () => {
    const lists = { ...vocabulary.words, ...vocabulary.units, ...vocabulary.products };
    const empty = Object.entries(lists).flatMap(([key, words]) =>
      words.length === 0 ? [key] : [],
    );
    expect(empty.toSorted()).toEqual([...maySayNothing[language]].toSorted());
  });

  it('is written as the reader folds what people write, so that every phrase is found again', () => {
    const lost = (Object.entries(vocabulary.words) as [Concept, readonly string[]][]).flatMap(
      ([concept, phrases]) =>
        phrases.filter((phrase) => {
          const words = wordsOf(fold(phrase).text);
          return list.phrases.get(words)?.concepts.has(concept) !== true;
        }),
    );
    expect(lost).toEqual([]);
  });

  it('knows seven weekdays, twelve months and turns of the clock of less than an hour', () => {
    expect(vocabulary.weekdays.map((names) => names.length > 0)).toEqual(Array(7).fill(true));
    expect(vocabulary.months.map((names) => names.length > 0)).toEqual(Array(12).fill(true));
    expect([...vocabulary.clockTurns.values()].filter((turn) => Math.abs(turn) >= 60)).toEqual([]);
  });

  it('counts to a hundred, and names the halves, thirds and quarters', () => {
    const counted = new Set(vocabulary.numbers.values());
    const whole = Array.from({ length: 99 }, (_, n) => n + 2);
    expect(whole.filter((n) => !counted.has(n))).toEqual([]);
    const shares = new Set(vocabulary.fractions.values());
    expect([1 / 2, 1 / 3, 2 / 3, 1 / 4, 3 / 4].filter((share) => !shares.has(share))).toEqual([]);
  });

  it('names every crop that another language names', () => {
    const crops = new Set(languages.flatMap((other) => Object.keys(vocabularies[other].crops)));
    expect([...crops].filter((crop) => !(crop in vocabulary.crops))).toEqual([]);
  });
});
