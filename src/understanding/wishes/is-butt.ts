import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { onceFor } from '../reading/once-for.ts';
import { wordsOf } from '../reading/word-list.ts';
import type { WishWorld } from './wish-world.ts';

/** Whether words name what rain water is kept in: as such, or as the household calls its water; not where a system is called so. */
export function isButt(said: string, world: WishWorld): boolean {
  if (systemNames(world.greenhouse).has(said)) return false;
  return world.words.butts.includes(said) || (isRainUsual(world) && said === nameOf(world));
}

/** Whether the water that the household tops up with is rain water, by its name. */
export function isRainUsual(world: WishWorld): boolean {
  const name = nameOf(world);
  return [...world.words.butts, ...world.words.waters.rain].some((word) => name.includes(word));
}

function nameOf({ greenhouse }: WishWorld): string {
  return waterName(greenhouse);
}

const waterName = onceFor(({ water }: Greenhouse) => wordsOf(water.name.toLowerCase()).join(' '));

const systemNames = onceFor(
  ({ systems }: Greenhouse): ReadonlySet<string> =>
    new Set(
      systems.flatMap(({ name, aliases }) =>
        [name, ...aliases].map((each) => wordsOf(each.toLowerCase()).join(' ')),
      ),
    ),
);
