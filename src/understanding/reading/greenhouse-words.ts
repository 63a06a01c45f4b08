import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { inflected } from '../names/inflection.ts';
import type { CommonProduct } from '../vocabulary/vocabulary.ts';
import { spellingsOf } from './letters.ts';
import { Meanings } from './meanings.ts';
import { PhraseTrie } from './phrase-trie.ts';
import { both, meaningless, type Word } from './word.ts';
import { type Unit, type WordList, wordsOf } from './word-list.ts';

interface GreenhouseWords {
  readonly phrases: PhraseTrie<Word>;
  readonly units: PhraseTrie<Unit>;
  /** One container, by its own name alone. */
  readonly containers: ReadonlyMap<string, Unit>;
  readonly proper: ReadonlySet<string>;
}

/** The words that only this greenhouse has: its products, probes and containers, as people say them. */
export function greenhouseWords(
  greenhouse: Greenhouse,
  lists: readonly WordList[],
): GreenhouseWords {
  const phrases = new PhraseTrie<Word>();
  const units = new PhraseTrie<Unit>();
  const proper = new Set<string>();
  const endings = lists.flatMap(({ vocabulary }) => vocabulary.endings);
  const mean = (phrase: string, word: Partial<Word>) => {
    const words = wordsOf(phrase.toLowerCase());
    for (const single of words) proper.add(single);
    const full = { ...meaningless, ...word };
    const known = phrases.get(words);
    phrases.set(words, known ? both(known, full) : full);
  };
  for (const { product } of greenhouse.stock) {
    for (const form of spokenForms(product)) mean(form, { product });
  }
  for (const { vocabulary } of lists) {
    for (const common of Object.keys(vocabulary.products) as CommonProduct[]) {
      const product = stockedAs(common, greenhouse);
      for (const phrase of vocabulary.products[common]) mean(phrase, { product });
      for (const phrase of vocabulary.shyProducts[common]) mean(phrase, { shyProduct: product });
    }
  }
  mean(greenhouse.water.name, { concepts: new Meanings(['other-water']) });
  for (const { name } of greenhouse.probes)
    for (const form of formsOf(name, endings)) mean(form, { probe: name });
  for (const { name, litres } of greenhouse.containers) {
    for (const form of formsOf(name, endings)) {
      const words = wordsOf(form);
      for (const single of words) proper.add(single);
      units.set(words, { litres });
    }
  }
  const containers = new Map(
    greenhouse.containers.map(({ name, litres }) => [name.toLowerCase(), { litres }]),
  );
  return { phrases, units, containers, proper };
}

function formsOf(name: string, endings: Parameters<typeof inflected>[1]): string[] {
  return inflected(name.toLowerCase(), endings).flatMap(spellingsOf);
}

/** `cal-mag` is also said `cal mag` and `calmag`. */
function spokenForms(product: string): string[] {
  return [
    ...new Set([product, product.replaceAll(/[-_]/g, ' '), product.replaceAll(/[-_ ]/g, '')]),
  ];
}

/** The stock's own name for a common product: itself, or the one item that ends like it (`grow-a`). */
function stockedAs(common: CommonProduct, greenhouse: Greenhouse): string {
  const stocked = greenhouse.stock.map(({ product }) => product);
  if (stocked.includes(common)) return common;
  const ending = common.slice(common.lastIndexOf('-') + 1);
  const alike = stocked.filter((product) => product.toLowerCase().split(/[-_ ]/).at(-1) === ending);
  return alike.length === 1 ? alike[0]! : common;
}
