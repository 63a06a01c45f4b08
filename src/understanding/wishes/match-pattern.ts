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
    // Words are compared sooner than a slot is read.
    if (!mayGoOn(pattern, part + 1, words, to)) continue;
    const value = readSlot(wanted.slot, words.slice(at, to));
    if (value === undefined) continue;
    const rest = matchFrom(pattern, part + 1, words, to, readSlot);
    if (rest) return new Map([...rest, [wanted.slot, value]]);
  }
  return wanted.optional ? matchFrom(pattern, part + 1, words, at, readSlot) : null;
}

/** Whether the words that a pattern has next, if it has any next, stand at a place. */
function mayGoOn(pattern: Pattern, part: number, words: readonly Token[], at: number): boolean {
  const next = pattern[part];
  if (!next) return at === words.length;
  if (next.optional && mayGoOn(pattern, part + 1, words, at)) return true;
  if (at >= words.length) return false;
  return next.kind === 'slot' || next.any.some((phrase) => startsWith(words, at, phrase));
}

function startsWith(words: readonly Token[], at: number, phrase: readonly string[]): boolean {
  for (let i = 0; i < phrase.length; i++) {
    const said = words[at + i];
    if (!said || !isWord(said.text, phrase[i]!)) return false;
  }
  return true;
}

function isWord(said: string, word: string): boolean {
  if (said === word) return true;
  return isSlipOf(said, word) && !meantAsWritten.has(said);
}

/** `on Monday` is one day, and no slip of `on Mondays`; whoever cleaned the bench has cleared nothing. */
const meantAsWritten: ReadonlySet<string> = new Set(
  Object.values(vocabularies).flatMap(({ weekdays, words }) => [
    ...weekdays.flat(),
    ...words.clean,
  ]),
);
