import type { DutyKind } from '../../greenhouse/duty.ts';
import type { Token } from '../reading/token.ts';
import { wordsOf } from '../reading/word-list.ts';
import { readSystem } from './read-names.ts';
import type { About } from './wish.ts';
import type { WishWorld } from './wish-world.ts';

/** `the gutters`, `topping up`, `topping up the gutters`, `the gutters top-up`, `everything`. */
export function readAbout(words: readonly Token[], world: WishWorld): About | undefined {
  const said = words.filter(({ kind }) => kind !== 'mark');
  const text = textOf(said);
  if (world.words.everything.some((each) => wordsOf(each).join(' ') === text)) {
    return { system: null, duty: null };
  }
  const system = said.length > 0 ? readSystem(said, world) : undefined;
  if (system) return { system, duty: null };
  const duty = readWork(said, world);
  if (duty) return { system: null, duty };
  for (let cut = 1; cut < said.length; cut++) {
    const [one, other] = [said.slice(0, cut), said.slice(cut)];
    for (const [work, place] of [
      [one, other],
      [other, one],
    ] as const) {
      const kind = readWork(work, world);
      const named = kind && readSystem(place, world);
      if (kind && named) return { system: named, duty: kind };
    }
  }
  return undefined;
}

function readWork(words: readonly Token[], world: WishWorld): DutyKind | undefined {
  const [first] = words;
  const isArticled = first !== undefined && world.words.articles.includes(first.text);
  const said = textOf(isArticled ? words.slice(1) : words);
  const kinds = Object.entries(world.words.work) as [DutyKind, readonly string[]][];
  return kinds.find(([, names]) => names.some((name) => wordsOf(name).join(' ') === said))?.[0];
}

function textOf(words: readonly Token[]): string {
  return words.map(({ text }) => text).join(' ');
}
