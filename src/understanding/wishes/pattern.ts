import { wordsOf } from '../reading/word-list.ts';

/**
 * A whole message as data: `stop reminding me|us to {chore}`. What may be left out ends in `?`,
 * words that may stand for each other are parted by `|`, and a slot in braces holds what varies.
 */
export type Pattern = readonly PatternPart[];

type PatternPart =
  | {
      readonly kind: 'words';
      readonly any: readonly (readonly string[])[];
      readonly optional: boolean;
    }
  | { readonly kind: 'slot'; readonly slot: string; readonly optional: boolean };

// Filled when a pattern is first read.
const patterns = new Map<string, Pattern>();

export function patternOf(text: string): Pattern {
  let pattern = patterns.get(text);
  if (!pattern) patterns.set(text, (pattern = text.split(' ').map(partOf)));
  return pattern;
}

function partOf(part: string): PatternPart {
  const optional = part.endsWith('?');
  if (part.startsWith('{')) {
    return { kind: 'slot', slot: part.slice(1, part.indexOf('}')), optional };
  }
  const words = optional ? part.slice(0, -1) : part;
  // Words that belong together are joined by `_`.
  const any = words.split('|').map((word) => wordsOf(word.replaceAll('_', ' ')));
  return { kind: 'words', any, optional };
}
