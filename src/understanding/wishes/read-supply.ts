import type { Supply } from '../../greenhouse/entry.ts';
import type { Token } from '../reading/token.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { withoutArticle } from './read-names.ts';
import type { WishWorld } from './wish-world.ts';

const supplies: readonly (readonly [Concept, Supply])[] = [
  ['air-pump', 'air-pump'],
  ['air-stones', 'air-pump'],
  ['venturi', 'air-pump'],
  ['pump', 'pump'],
  ['power', 'power'],
];

/** The power, a pump, or what gives air, by any of its names. */
export function readSupply(words: readonly Token[], world: WishWorld): Supply | undefined {
  const said = withoutArticle(words, world).map(({ text }) => text);
  const word = (offset: number): string | null => said[offset] ?? null;
  const { own, others } = world.lexicon;
  for (const { phrases } of [own, ...others]) {
    const found = phrases.longest(word);
    if (found?.length !== said.length) continue;
    const supply = supplies.find(([concept]) => found.value.concepts.has(concept));
    if (supply) return supply[1];
  }
  return undefined;
}
