import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { LocalTime } from '../../greenhouse/local-time.ts';
import type { Member } from '../../greenhouse/member.ts';
import type { SetUpChange } from '../../greenhouse/set-up/set-up-change.ts';
import type { Token } from '../reading/token.ts';
import { readCm, readCount, readLitres, readNumber, readTime } from './read-amounts.ts';
import { saidInstead } from './said-instead.ts';
import { type WishWorld, wishWorlds } from './wish-world.ts';

/** A change that was shown, with another figure: `no, 3 l`, `half past 8`; null: the message is no such figure. */
export function readAmended(
  change: SetUpChange,
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): SetUpChange | null {
  for (const world of wishWorlds(text, greenhouse, member, atMs)) {
    const words = saidInstead(world) ?? world.tokens;
    const amended = words.length > 0 ? withFigure(change, words, world) : null;
    if (amended) return amended;
  }
  return null;
}

function withFigure(
  change: SetUpChange,
  words: readonly Token[],
  world: WishWorld,
): SetUpChange | null {
  switch (change.kind) {
    case 'morning-set': {
      const morning: LocalTime | undefined = readTime(words, world);
      return morning === undefined ? null : { ...change, morning };
    }
    case 'container-set':
    case 'butt-set': {
      const litres = readLitres(words, world);
      return litres === undefined ? null : { ...change, litres };
    }
    case 'planted': {
      const plants = readCount(words, world);
      return plants === undefined ? null : { ...change, plants };
    }
    case 'figure-set': {
      const value = figureReaders[change.figure](words, world);
      return value === undefined ? null : { ...change, value };
    }
    case 'stock-added':
    case 'stock-counted': {
      const mL = stockOf(words, world, change.mL);
      return mL === undefined ? null : { ...change, mL };
    }
    default:
      return null;
  }
}

const figureReaders = {
  brimL: (words: readonly Token[], world: WishWorld) => readLitres(words, world),
  lowL: (words: readonly Token[], world: WishWorld) => readLitres(words, world),
  depthCm: readCm,
  plants: readCount,
} as const;

const mLPerLitre = 1000;

/** mL; a bare number is in litres where litres were shown. */
function stockOf(words: readonly Token[], world: WishWorld, shownMl: number): number | undefined {
  const litres = readLitres(words, world, false);
  if (litres !== undefined) return Math.round(litres * mLPerLitre);
  const bare = readNumber(words, world);
  return bare === undefined ? undefined : bare * (shownMl >= mLPerLitre ? mLPerLitre : 1);
}
