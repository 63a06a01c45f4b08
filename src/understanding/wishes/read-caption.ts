import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import type { Token } from '../reading/token.ts';
import { readAbout } from './read-about.ts';
import type { About } from './wish.ts';
import { asWritten, type WishWorld, wishWorlds } from './wish-world.ts';

export interface Caption {
  readonly about: About;
  /** What it says beyond what it names; empty: nothing. */
  readonly note: string;
}

const longestAbout = 6;

/**
 * What the caption of a photo is about: `gutters`, `gutters: behind the door`, `topping up the
 * gutters`, or words that name one system. null: it does not say.
 */
export function readCaption(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): Caption | null {
  for (const world of wishWorlds(text, greenhouse, member, atMs)) {
    const { tokens, folded } = world;
    const whole = tokens.length <= longestAbout ? readAbout(tokens, world) : undefined;
    if (whole) return { about: whole, note: '' };
    const mark = tokens.findIndex(({ text: said }) => /^[:,–-]$/.test(said));
    if (mark > 0 && mark <= longestAbout) {
      const about = readAbout(tokens.slice(0, mark), world);
      if (about) return { about, note: asWritten(tokens.slice(mark + 1), folded) };
    }
    const named = systemsNamed(tokens, world);
    const [only] = named;
    if (only && named.length === 1) return { about: only, note: text.trim() };
  }
  return null;
}

/** The systems that any few words side by side name. */
function systemsNamed(tokens: readonly Token[], world: WishWorld): readonly About[] {
  const found = new Map<string, About>();
  tokens.slice(0, longestCaption).forEach((_, from) => {
    for (let length = 1; length <= longestName; length++) {
      const words = tokens.slice(from, from + length);
      if (words.length < length || words.some(({ kind }) => kind === 'mark')) break;
      const about = readAbout(words, world);
      if (about?.system) found.set(about.system, { system: about.system, duty: null });
    }
  });
  return [...found.values()];
}

const longestName = 3;
const longestCaption = 60;
