import { isSlipOf, slipsAllowed } from '../reading/slip.ts';
import type { Token } from '../reading/token.ts';
import { matchFrom, type ReadSlot } from './match-pattern.ts';
import type { Pattern } from './pattern.ts';

const mostKept = 5000;

/**
 * Many patterns over the same words. Most are out of the question since a word that they need is not
 * there at all; which, is looked up by the words that are there instead of tried one by one.
 */
export class PatternIndex<T extends { readonly pattern: Pattern }> {
  readonly #entries: readonly Entry<T>[];
  /** Where the entries stand that need one of some words, of which this is one. */
  readonly #placesByWord = new Map<string, number[]>();
  readonly #placesOfAny: number[] = [];
  readonly #vocabulary = new Set<string>();
  readonly #meant = new Map<string, readonly string[]>();
  /** Words long enough to be typed with a slip, which keeps the first letter. */
  readonly #byInitial = new Map<string, string[]>();

  constructor(all: readonly T[]) {
    this.#entries = all.map((item) => ({ item, needs: needsOf(item.pattern) }));
    for (const [place, { needs }] of this.#entries.entries()) {
      const [first] = needs;
      if (!first) this.#placesOfAny.push(place);
      for (const word of first ?? []) addTo(this.#placesByWord, word, place);
      for (const word of needs.flat()) this.#vocabulary.add(word);
    }
    for (const word of this.#vocabulary) {
      if (slipsAllowed(word) > 0) addTo(this.#byInitial, word.charAt(0), word);
    }
  }

  /** The first, in their order, that fits all of the words. */
  firstFit(words: readonly Token[], readSlot: ReadSlot): Fit<T> | null {
    const [first] = this.fits(words, readSlot);
    return first ?? null;
  }

  /** Every one that fits all of the words, in their order, as far as asked for. */
  *fits(words: readonly Token[], readSlot: ReadSlot): Generator<Fit<T>> {
    for (const { item } of this.#candidates(words)) {
      const slots = matchFrom(item.pattern, 0, words, 0, readSlot);
      if (slots) yield { item, slots };
    }
  }

  #candidates(words: readonly Token[]): readonly Entry<T>[] {
    const said = this.#saidIn(words);
    const places = new Set(this.#placesOfAny);
    for (const word of said) {
      for (const place of this.#placesByWord.get(word) ?? []) places.add(place);
    }
    return [...places]
      .sort((one, other) => one - other)
      .map((place) => this.#entries[place]!)
      .filter(({ needs }) => needs.every((any) => any.some((word) => said.has(word))));
  }

  /** The words of the vocabulary that are there, slips of the finger allowed. */
  #saidIn(words: readonly Token[]): ReadonlySet<string> {
    const said = new Set<string>();
    for (const { text } of words) {
      for (const word of this.#meantBy(text)) said.add(word);
    }
    return said;
  }

  /** The words that one may be, kept as it is found. */
  #meantBy(text: string): readonly string[] {
    const known = this.#meant.get(text);
    if (known) return known;
    const alike = (this.#byInitial.get(text.charAt(0)) ?? []).filter((word) =>
      isSlipOf(text, word),
    );
    const meant = this.#vocabulary.has(text) ? [text, ...alike] : alike;
    // What people type is without end; what is worth keeping is not.
    if (this.#meant.size < mostKept) this.#meant.set(text, meant);
    return meant;
  }
}

export interface Fit<T> {
  readonly item: T;
  readonly slots: ReadonlyMap<string, unknown>;
}

interface Entry<T> {
  readonly item: T;
  /** Of each of these lists a word must be there. */
  readonly needs: readonly (readonly string[])[];
}

function needsOf(pattern: Pattern): readonly (readonly string[])[] {
  return pattern.flatMap((part) =>
    part.kind === 'slot' || part.optional ? [] : [part.any.map((phrase) => phrase[0]!)],
  );
}

function addTo<K, V>(lists: Map<K, V[]>, key: K, value: V): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}
