import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf } from '../../greenhouse/local-time.ts';
import { type Language, languages, type Member } from '../../greenhouse/member.ts';
import { type Folded, fold } from '../reading/fold.ts';
import { type Lexicon, lexiconFor } from '../reading/lexicon.ts';
import type { Token } from '../reading/token.ts';
import { tokenise } from '../reading/tokenise.ts';
import { wordsOf } from '../reading/word-list.ts';
import { wishWords } from '../vocabulary/wishes/wish-languages.ts';
import type { WishWords } from '../vocabulary/wishes/wish-words.ts';

/** What one message is read against, in one language. */
export interface WishWorld {
  readonly greenhouse: Greenhouse;
  readonly member: Member;
  readonly atMs: number;
  readonly today: LocalDate;
  readonly language: Language;
  readonly words: WishWords;
  readonly lexicon: Lexicon;
  readonly folded: Folded;
  /** Without what ends the message, and without courtesies. */
  readonly tokens: readonly Token[];
  /** What stands in each slot at each place, kept while the message is read: many patterns ask alike. */
  readonly slotsRead: Map<string, Map<number, unknown>>;
}

/** The message in each language that the household may speak, the member's own first. */
export function wishWorlds(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): readonly WishWorld[] {
  const folded = fold(text);
  const said = trimmed(tokenise(folded.text));
  const today = localDateOf(atMs, greenhouse.timeZone);
  const spoken = new Set<Language>([member.language, ...languages]);
  return [...spoken].map((language) => ({
    greenhouse,
    member,
    atMs,
    today,
    language,
    words: wishWords[language],
    lexicon: lexiconFor(greenhouse, language),
    folded,
    tokens: withoutCourtesies(said, courtesiesOf(language)),
    slotsRead: new Map(),
  }));
}

function trimmed(tokens: readonly Token[]): readonly Token[] {
  let to = tokens.length;
  while (to > 0 && isEnd(tokens[to - 1]!)) to -= 1;
  return tokens.slice(0, to);
}

function isEnd({ kind, text }: Token): boolean {
  return kind === 'line' || (kind === 'mark' && /^[.!?,;]+$/.test(text));
}

interface Courtesies {
  readonly phrases: readonly (readonly string[])[];
  /** The words that one begins or ends with. */
  readonly outer: ReadonlySet<string>;
}

// Filled when a language's first message is read.
const courtesies = new Map<Language, Courtesies>();

function courtesiesOf(language: Language): Courtesies {
  const known = courtesies.get(language);
  if (known) return known;
  const phrases = wishWords[language].courtesies.map(wordsOf);
  const outer = new Set(phrases.flatMap((words) => [words[0]!, words.at(-1)!]));
  const made = { phrases, outer };
  courtesies.set(language, made);
  return made;
}

function withoutCourtesies(tokens: readonly Token[], courtesies: Courtesies): readonly Token[] {
  const { phrases, outer } = courtesies;
  const [first, last] = [tokens[0], tokens.at(-1)];
  if (!first || !last || !(outer.has(first.text) || outer.has(last.text))) return tokens;
  for (const words of phrases) {
    if (tokens.length <= words.length) continue;
    if (words.every((word, i) => tokens[i]!.text === word)) {
      const rest = tokens.slice(words.length);
      return withoutCourtesies(rest[0]?.text === ',' ? rest.slice(1) : rest, courtesies);
    }
    if (words.every((word, i) => tokens.at(i - words.length)!.text === word)) {
      return withoutCourtesies(trimmed(tokens.slice(0, -words.length)), courtesies);
    }
  }
  return tokens;
}

/** Words as the member wrote them, quotes around them dropped. */
export function asWritten(words: readonly Token[], folded: Folded): string {
  const [first, last] = [words[0], words.at(-1)];
  if (!first || !last) return '';
  const { original, originAt } = folded;
  return original
    .slice(originAt(first.from), originAt(last.to))
    .trim()
    .replaceAll(/^["“„'«]+|["”“'»]+$/gu, '')
    .trim();
}
