import type { Chore, Greenhouse } from '../../greenhouse/greenhouse.ts';
import { type Language, languages } from '../../greenhouse/member.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { type NameForm, nameFormsOf } from '../names/name-form.ts';
import { vocabularies } from '../vocabulary/languages.ts';
import type { Vocabulary } from '../vocabulary/vocabulary.ts';
import { greenhouseWords } from './greenhouse-words.ts';
import type { PhraseTrie } from './phrase-trie.ts';
import { type Spellings, spellingsOf } from './spellings.ts';
import type { Token } from './token.ts';
import { tokenise } from './tokenise.ts';
import type { Word } from './word.ts';
import { type Unit, type WordList, wordListOf } from './word-list.ts';

/** Everything that words can mean in one greenhouse, read in one language first. */
export interface Lexicon {
  readonly language: Language;
  readonly own: WordList;
  /** The household's other languages: what the first has no word for. */
  readonly others: readonly WordList[];
  /** Products, probes and containers of the greenhouse. */
  readonly phrases: PhraseTrie<Word>;
  readonly units: PhraseTrie<Unit>;
  /** One container, by its own name alone: no plural of it. */
  readonly containers: ReadonlyMap<string, Unit>;
  readonly names: readonly NameForm[];
  /** Every single word of a name, a product, a probe or a container. */
  readonly proper: ReadonlySet<string>;
  /** What each chore is called, in words. */
  readonly chores: readonly ChoreName[];
  readonly memberNames: ReadonlyMap<string, string>;
  /** The words that a slip may be put right to, beside those of the first language. */
  readonly spellings: Spellings;
  /** Corrections of typing slips, kept as they are found; null where there is none. */
  readonly corrections: Map<string, string | null>;
}

export interface ChoreName {
  readonly name: string;
  readonly words: readonly string[];
  /** Those that tell it from others. */
  readonly ofWeight: readonly string[];
  readonly system: SystemId | null;
  /** Those of weight without what its system is called: `wipe drains` of the rack's; none, if fewer than two are left. */
  readonly withoutSystem: readonly string[];
}

// Filled when first needed: what can be derived from a language or from one greenhouse alone.
const wordLists = new Map<Language, WordList>();
const lexicons = new WeakMap<Greenhouse, Map<Language, Lexicon>>();
/** Those of the last set-ups by all that stands in them: the same one may be read again. */
const bySetUp = new Map<string, Map<Language, Lexicon>>();
const setUpsKept = 8;

function wordListFor(language: Language): WordList {
  let list = wordLists.get(language);
  if (!list) wordLists.set(language, (list = wordListOf(vocabularies[language])));
  return list;
}

export function lexiconFor(greenhouse: Greenhouse, language: Language): Lexicon {
  let perLanguage = lexicons.get(greenhouse);
  if (!perLanguage) lexicons.set(greenhouse, (perLanguage = lexiconsOf(greenhouse)));
  let lexicon = perLanguage.get(language);
  if (!lexicon) perLanguage.set(language, (lexicon = buildLexicon(greenhouse, language)));
  return lexicon;
}

function lexiconsOf(greenhouse: Greenhouse): Map<Language, Lexicon> {
  const setUp = JSON.stringify(greenhouse);
  const known = bySetUp.get(setUp) ?? new Map<Language, Lexicon>();
  // Taken out and put in again, so that the oldest is the one not asked for the longest.
  bySetUp.delete(setUp);
  const [oldest] = bySetUp.size < setUpsKept ? [] : bySetUp.keys();
  if (oldest !== undefined) bySetUp.delete(oldest);
  bySetUp.set(setUp, known);
  return known;
}

function buildLexicon(greenhouse: Greenhouse, language: Language): Lexicon {
  const spoken = languages.filter(
    (other) => other !== language && greenhouse.members.some((member) => member.language === other),
  );
  const own = wordListFor(language);
  const others = spoken.map(wordListFor);
  const words = greenhouseWords(greenhouse, [own, ...others]);
  const names = nameFormsOf(greenhouse, own.vocabulary.words.article);
  const proper = new Set([...words.proper, ...names.flatMap(({ words: form }) => form)]);
  return {
    language,
    own,
    others,
    phrases: words.phrases,
    units: words.units,
    containers: words.containers,
    names,
    proper,
    chores: greenhouse.chores.map((chore) => choreName(chore, greenhouse, own.vocabulary)),
    memberNames: new Map(
      greenhouse.members.flatMap(({ handle, name }) => [
        [handle.toLowerCase(), handle],
        [name.toLowerCase(), handle],
      ]),
    ),
    spellings: spellingsOf([...words.proper].filter((word) => !own.meant.has(word))),
    corrections: new Map(),
  };
}

const shortestWordOfWeight = 3;

/** What is done, and what it is done to. */
const fewestWordsLeft = 2;

function choreName(
  { name, system }: Chore,
  { systems }: Greenhouse,
  { words: { article, place } }: Vocabulary,
): ChoreName {
  const tokens = tokenise(name.toLowerCase());
  const ofWeight = tokens
    .filter(({ kind, text }) => kind === 'word' && text.length >= shortestWordOfWeight)
    .map(({ text }) => text)
    .filter((word) => !article.includes(word) && !place.includes(word));
  const own = systems.find(({ id }) => id === system);
  const called = own
    ? [own.name, ...own.aliases].flatMap((each) => each.toLowerCase().split(' '))
    : [];
  const rest = ofWeight.filter((word) => !called.includes(word));
  const withoutSystem = rest.length < ofWeight.length && rest.length >= fewestWordsLeft ? rest : [];
  return { name, words: tokens.map(({ text }) => text), ofWeight, system, withoutSystem };
}

/** The language of the household that most words of the message belong to, names left aside; the member's own if in doubt. */
export function languageOf(
  tokens: readonly Token[],
  greenhouse: Greenhouse,
  own: Language,
): Language {
  const spoken = languages.filter(
    (language) =>
      language !== own && greenhouse.members.some((member) => member.language === language),
  );
  if (spoken.length === 0) return own;
  const { proper } = lexiconFor(greenhouse, own);
  const words = tokens.filter(({ kind, text }) => kind === 'word' && !proper.has(text));
  let best = own;
  let most = hits(words, wordListFor(own));
  for (const language of spoken) {
    const count = hits(words, wordListFor(language));
    if (count > most) {
      best = language;
      most = count;
    }
  }
  return best;
}

function hits(words: readonly Token[], list: WordList): number {
  let count = 0;
  for (const { text } of words) if (list.meant.has(text) || list.common.has(text)) count++;
  return count;
}

/** A word that means something to the reader, not just an ordinary one. */
export function isMeant(lexicon: Lexicon, word: string): boolean {
  return (
    lexicon.own.meant.has(word) ||
    lexicon.own.everyday.has(word) ||
    lexicon.proper.has(word) ||
    lexicon.memberNames.has(word) ||
    lexicon.others.some((other) => other.meant.has(word))
  );
}

export function isKnown(lexicon: Lexicon, word: string): boolean {
  return (
    lexicon.own.meant.has(word) ||
    lexicon.own.common.has(word) ||
    lexicon.own.everyday.has(word) ||
    lexicon.proper.has(word) ||
    lexicon.memberNames.has(word) ||
    lexicon.others.some((other) => other.meant.has(word) || other.common.has(word))
  );
}
