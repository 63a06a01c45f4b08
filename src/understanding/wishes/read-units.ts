import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Token } from '../reading/token.ts';
import { splitAt } from './split-at.ts';
import type { WishWorld } from './wish-world.ts';

/** Units as somebody wants to read them: one, or one of each kind joined by `and` or a comma. */
export function readUnits(
  words: readonly Token[],
  { words: { unitNames, joiners } }: WishWorld,
): Partial<SpokenUnits> | undefined {
  const named = splitAt(words, joiners).map((part) => {
    const said = part.map(({ text }) => text).join(' ');
    return unitNames.find((each) => each.words.includes(said))?.units;
  });
  const kinds = named.flatMap((units) => (units ? [Object.keys(units)[0]] : []));
  // Gallons and litres at once would be neither.
  if (kinds.length < named.length || new Set(kinds).size < kinds.length) return undefined;
  return Object.assign({}, ...named) as Partial<SpokenUnits>;
}
