import { isSlipOf } from '../reading/slip.ts';
import type { Token } from '../reading/token.ts';
import { vocabularies } from '../vocabulary/languages.ts';
import type { Pattern } from './pattern.ts';

/** Reads what stands in a slot; undefined: that cannot stand there. */
export type ReadSlot = (slot: string, words: readonly Token[]) => unknown;

const longestSlot = 12;

/** What the slots of a pattern hold where it fits all of the words from a place on; null where it does not. */
export function matchFrom(
  pattern: Pattern,
  part: number,
  words: readonly Token[],
  at: number,
  readSlot: ReadSlot,
): ReadonlyMap<string, unknown> | null {
  const wanted = pattern[part];
  if (!wanted) return at === words.length ? new Map() : null;
  if (wanted.kind === 'words') {
    for (const phrase of wanted.any) {
      if (!startsWith(words, at, phrase)) continue;
      const rest = matchFrom(pattern, part + 1, words, at + phrase.length, readSlot);
      if (rest) return rest;
    }
    return wanted.optional ? matchFrom(pattern, part + 1, words, at, readSlot) : null;
  }
  const isLast = part === pattern.length - 1;
  const least = isLast ? Math.max(words.length, at + 1) : at + 1;
  const most = Math.min(words.length, at + longestSlot);
  for (let to = least; to <= most; to++) {
    const value = readSlot(wanted.slot, words.slice(at, to));
    if (value === undefined) continue;
    const rest = matchFrom(pattern, part + 1, words, to, readSlot);
    if (rest) return new Map([...rest, [wanted.slot, value]]);
  }
  return wanted.optional ? matchFrom(pattern, part + 1, words, at, readSlot) : null;
}

function startsWith(words: readonly Token[], at: number, phrase: readonly string[]): boolean {
  return phrase.every((word, i) => {
    const said = words[at + i]?.text;
    return said !== undefined && isWord(said, word);
  });
}

function isWord(said: string, word: string): boolean {
  // `on Monday` is one day, and no slip of `on Mondays`.
  return said === word || (!dayNames().has(said) && isSlipOf(said, word));
}

// Filled when the first word is compared.
let allDayNames: ReadonlySet<string> | null = null;

function dayNames(): ReadonlySet<string> {
  allDayNames ??= new Set(Object.values(vocabularies).flatMap(({ weekdays }) => weekdays.flat()));
  return allDayNames;
}
