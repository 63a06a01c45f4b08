import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Token } from '../reading/token.ts';
import type { WishWorld } from './wish-world.ts';

/** Units as somebody wants to read them: one, or one of each kind joined by `and` or a comma. */
export function readUnits(
  words: readonly Token[],
  { words: { unitNames, joiners } }: WishWorld,
): Partial<SpokenUnits> | undefined {
  const named = partsOf(words, joiners).map(
    (part) => unitNames.find((each) => each.words.includes(part))?.units,
  );
  const kinds = named.flatMap((units) => (units ? [Object.keys(units)[0]] : []));
  // Gallons and litres at once would be neither.
  if (kinds.length < named.length || new Set(kinds).size < kinds.length) return undefined;
  return Object.assign({}, ...named) as Partial<SpokenUnits>;
}

function partsOf(words: readonly Token[], joiners: readonly string[]): readonly string[] {
  const parts: string[][] = [[]];
  for (const { text } of words) {
    if (joiners.includes(text)) parts.push([]);
    else parts.at(-1)!.push(text);
  }
  return parts.map((part) => part.join(' '));
}
