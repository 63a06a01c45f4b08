import type { SystemId } from '../../greenhouse/system.ts';
import type { Context } from '../context.ts';
import type { Folded } from '../reading/fold.ts';
import type { Lexicon } from '../reading/lexicon.ts';
import { readingOf } from '../reading/look-up.ts';
import { onceFor } from '../reading/once-for.ts';
import { means, type Term } from '../reading/term.ts';
import { termsOf } from '../reading/terms-of.ts';
import { tokenise } from '../reading/tokenise.ts';
import type { EntryStatement } from '../statement.ts';

/** Where a note starts: the offset of its word, and of its text. */
export interface NotePlace {
  readonly from: number;
  readonly textFrom: number;
}

const colon = /^\s*(?::|-|–|—|=)\s*/;

/** `note: …` at the start of the message, of a line or of a sentence. */
export function findNote(folded: Folded, lexicon: Lexicon): NotePlace | null {
  const { text } = folded;
  for (const start of starts(text)) {
    for (const word of noteWords(lexicon)) {
      if (!text.startsWith(word, start)) continue;
      const after = start + word.length;
      const mark = colon.exec(text.slice(after, after + 12));
      const isFirst = start === firstLetter(text);
      if (mark) return { from: start, textFrom: after + mark[0].length };
      if (isFirst && text[after] === ' ') return { from: start, textFrom: after + 1 };
      break;
    }
  }
  return null;
}

/** The longest first. */
const noteWords = onceFor((lexicon: Lexicon): readonly string[] =>
  [lexicon.own, ...lexicon.others]
    .flatMap(({ vocabulary }) => vocabulary.words.note)
    .sort((a, b) => b.length - a.length),
);

const startsLookedAt = 200;

function starts(text: string): number[] {
  const found = [firstLetter(text)];
  const cut = /[.!?\n;,]\s+/g;
  for (let match = cut.exec(text); match && found.length < startsLookedAt; match = cut.exec(text))
    found.push(match.index + match[0].length);
  return found;
}

function firstLetter(text: string): number {
  return text.length - text.trimStart().length;
}

/** A note, kept whole; under the system it names if it names one. */
export function noteEntry(
  context: Context,
  folded: Folded,
  lexicon: Lexicon,
  place: NotePlace,
): EntryStatement {
  const { original, originAt, text } = folded;
  const note = original.slice(originAt(place.textFrom)).trim();
  const read = readingOf(
    tokenise(text.slice(place.textFrom, place.textFrom + lettersLookedAt)),
    lexicon,
  );
  const system = systemOfNote(termsOf(read));
  return {
    kind: 'entry',
    draft: { system, quantity: 'note', value: 1, atMs: context.writtenAtMs, note },
    span: { from: place.from, to: text.length },
    because: ['note'],
    assumptions: [],
  };
}

const lettersLookedAt = 2000;

/** The one system that a note names. */
export function systemOfNote(terms: readonly Term[]): SystemId | null {
  const found = new Set<SystemId>();
  terms.forEach((term, i) => {
    if (term.kind === 'name' && term.sure && standsAsName(terms, i))
      for (const system of term.systems) found.add(system);
  });
  return found.size === 1 ? [...found][0]! : null;
}

/** At a clause's start or after an article or preposition: `the third basil gutter` is no name. */
function standsAsName(terms: readonly Term[], i: number): boolean {
  const before = terms[i - 1];
  return (
    !before ||
    before.kind === 'stop' ||
    before.kind === 'mark' ||
    means(before, 'article', 'place', 'both')
  );
}
