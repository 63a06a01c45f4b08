import type { SystemId } from '../../greenhouse/system.ts';
import { sameButForEnding } from '../names/inflection.ts';
import { isSlipOf } from '../reading/slip.ts';
import type { Token } from '../reading/token.ts';
import { wordsOf } from '../reading/word-list.ts';
import { splitAt } from './split-at.ts';
import { asWritten, type WishWorld } from './wish-world.ts';

/** The one system that all these words name. */
export function readSystem(words: readonly Token[], world: WishWorld): SystemId | undefined {
  const said = withoutArticle(words, world);
  const found = new Set(
    world.lexicon.names
      .filter(({ words: name }) => isNamed(said, name, world))
      .map(({ system }) => system),
  );
  return found.size === 1 ? [...found][0] : undefined;
}

/** Systems named one after the other, or all of them; undefined where one of them is none. */
export function readSystems(
  words: readonly Token[],
  world: WishWorld,
): readonly SystemId[] | undefined {
  const { joiners, everything } = world.words;
  const said = words.map(({ text }) => text).join(' ');
  if (everything.includes(said)) return world.greenhouse.systems.map(({ id }) => id);
  const systems = splitAt(words, joiners)
    .filter((name) => name.length > 0)
    .map((name) => readSystem(name, world));
  return systems.length > 0 && systems.every((system) => system !== undefined)
    ? systems
    : undefined;
}

/** A system, or the one in which the crop named grows. */
export function readPlants(words: readonly Token[], world: WishWorld): SystemId | undefined {
  return readSystem(words, world) ?? readGrown(words, world);
}

/** The one system in which the crop named grows. */
export function readGrown(words: readonly Token[], world: WishWorld): SystemId | undefined {
  const crop = readCrop(withoutArticle(words, world), world);
  const growing = world.greenhouse.systems.filter((system) => system.crop === crop);
  return crop !== undefined && growing.length === 1 ? growing[0]!.id : undefined;
}

const longestCrop = 3;

/** A crop by the trade's one name for it, or as the member calls it. */
export function readCrop(words: readonly Token[], world: WishWorld): string | undefined {
  if (words.length === 0 || words.length > longestCrop) return undefined;
  if (words.some(({ kind }) => kind !== 'word')) return undefined;
  const said = words.map(({ text }) => text).join(' ');
  for (const { vocabulary } of [world.lexicon.own, ...world.lexicon.others]) {
    for (const [crop, names] of Object.entries(vocabulary.crops)) {
      if (names.some((name) => name === said || isSlipOf(said, name))) return crop;
    }
  }
  return asWritten(words, world.folded);
}

/** A crop that grows here or that the trade knows, or fruit of any kind. */
export function readFruit(words: readonly Token[], world: WishWorld): string | undefined {
  const said = words.map(({ text }) => text).join(' ');
  if (world.words.fruit.includes(said)) return said;
  const crop = readCrop(words, world);
  const isKnown = world.greenhouse.systems.some((system) => system.crop === crop);
  return isKnown || (crop !== undefined && crop in world.lexicon.own.vocabulary.crops)
    ? crop
    : undefined;
}

export function readChore(words: readonly Token[], world: WishWorld): string | undefined {
  const said = meaningOf(words, world);
  if (said.length === 0) return undefined;
  const fitting = world.lexicon.chores.filter(({ words: called }) => {
    const known = called.filter((word) => !isArticle(word, world));
    return (
      said.length === known.length &&
      said.every((word, i) => isWordOf(word, known[i]!, world) || isDeed(word, known[i]!, world))
    );
  });
  return fitting.length === 1 ? fitting[0]!.name : undefined;
}

/** A chore by some of its words, in any order or in one: `the windows`, `filter cleaning`, `Filterreinigung`. */
export function readSomeChore(words: readonly Token[], world: WishWorld): string | undefined {
  const exact = readChore(words, world);
  if (exact !== undefined) return exact;
  const said = meaningOf(words, world).filter((word) => word.length >= shortestHint);
  // What is called so is a system, and no chore of it.
  if (said.length === 0 || readSystem(words, world) !== undefined) return undefined;
  const fitting = world.greenhouse.chores.filter(({ name }) => {
    const known = wordsOf(name.toLowerCase()).filter((word) => !isArticle(word, world));
    const isOfIt = (word: string): boolean =>
      known.some((each) => isWordOf(word, each, world) || isDeed(word, each, world));
    return said.every(isOfIt) || said.every((word) => isJoinedOf(word, known));
  });
  return fitting.length === 1 ? fitting[0]!.name : undefined;
}

const shortestHint = 3;
const shortestStem = 4;
const longestStem = 6;

/** `filterreinigung` is made of `filter` and `reinigen`. */
function isJoinedOf(said: string, known: readonly string[]): boolean {
  const stems = known
    .filter(({ length }) => length >= shortestStem)
    .map((word) => word.slice(0, longestStem));
  return stems.length > 1 && stems.every((stem) => said.includes(stem));
}

/** `tying` for `tie`. */
function isDeed(said: string, known: string, { words }: WishWorld): boolean {
  return words.deedForms.some(
    ([spoken, told]) => said.endsWith(spoken) && said.slice(0, -spoken.length) + told === known,
  );
}

const longestTask = 8;
const shortestTask = 4;

/**
 * New work, as the member calls it: words alone, beginning with none that begins a report or a question,
 * and with nobody's name, which begins who goes when.
 */
export function readTask(words: readonly Token[], world: WishWorld): string | undefined {
  if (words.length > longestTask || words.some(({ kind }) => kind !== 'word')) return undefined;
  // `I'm away` begins as `I` does.
  const [first = ''] = words[0]!.text.split(/['’]/u);
  if (world.words.noTask.includes(first)) return undefined;
  // `reicht die Wanne noch bis | Samstag`.
  if (world.words.noTaskEnd.includes(words.at(-1)!.text)) return undefined;
  if (readMember(words.slice(0, 1), world) !== undefined) return undefined;
  const task = asWritten(words, world.folded);
  return task.length >= shortestTask ? task : undefined;
}

/** The one system that a task speaks of; null: none, or several. */
export function systemOfTask(task: string, world: WishWorld): SystemId | null {
  const words = wordsOf(task.toLowerCase());
  const named = new Set(
    world.lexicon.names
      .filter(({ words: name }) =>
        words.some((_, at) => name.every((word, i) => isWordOf(words[at + i] ?? '', word, world))),
      )
      .map(({ system }) => system),
  );
  if (named.size > 0) return named.size === 1 ? [...named][0]! : null;
  const { crops } = world.lexicon.own.vocabulary;
  const growing = world.greenhouse.systems.filter(
    ({ crop }) => crop !== null && crops[crop]?.some((name) => words.includes(name)),
  );
  return growing.length === 1 ? growing[0]!.id : null;
}

const longestName = 40;

export function readName(words: readonly Token[], world: WishWorld): string | undefined {
  const name = asWritten(words, world.folded);
  return words.length <= 5 && name !== '' && name.length <= longestName ? name : undefined;
}

export function readContainer(words: readonly Token[], world: WishWorld): string | undefined {
  const isPlain = words.length <= 2 && words.every(({ kind }) => kind === 'word');
  return isPlain ? asWritten(words, world.folded) : undefined;
}

/** One of the household's containers, one or several of them. */
export function readHolder(words: readonly Token[], world: WishWorld): string | undefined {
  const [word, ...more] = withoutArticle(words, world);
  if (!word || more.length > 0) return undefined;
  const { containers } = world.greenhouse;
  return containers.find(({ name }) => isWordOf(word.text, name.toLowerCase(), world))?.name;
}

/** A meter by its name. */
export function readProbe(words: readonly Token[], world: WishWorld): string | undefined {
  const said = withoutArticle(words, world)
    .map(({ text }) => text)
    .join(' ');
  return world.greenhouse.probes.find(({ name }) => name.toLowerCase() === said)?.name;
}

export function readMember(words: readonly Token[], world: WishWorld): string | undefined {
  return words.length === 1 ? world.lexicon.memberNames.get(words[0]!.text) : undefined;
}

/** A product by its name in the stock, or by what it does. */
export function readProduct(words: readonly Token[], world: WishWorld): string | undefined {
  const said = withoutArticle(words, world).map(({ text }) => text);
  const word = (offset: number): string | null => said[offset] ?? null;
  const { phrases, own, others } = world.lexicon;
  for (const trie of [phrases, own.phrases, ...others.map((other) => other.phrases)]) {
    const found = trie.longest(word);
    if (found?.length !== said.length) continue;
    const { product, shyProduct } = found.value;
    if (product !== null) return product;
    // A letter may be a system's name.
    if (shyProduct !== null && !readSystem(words, world)) return shyProduct;
  }
  return undefined;
}

function isNamed(said: readonly Token[], name: readonly string[], world: WishWorld): boolean {
  const words = said.filter(({ kind }) => kind !== 'mark');
  return (
    words.length === name.length && words.every(({ text }, i) => isWordOf(text, name[i]!, world))
  );
}

function isWordOf(said: string, known: string, { lexicon }: WishWorld): boolean {
  return (
    said === known ||
    (said !== '' && sameButForEnding(said, known, lexicon.own.vocabulary.endings)) ||
    isSlipOf(said, known)
  );
}

export function withoutArticle(words: readonly Token[], world: WishWorld): readonly Token[] {
  return words.length > 1 && isArticle(words[0]!.text, world) ? words.slice(1) : words;
}

function meaningOf(words: readonly Token[], world: WishWorld): readonly string[] {
  return words
    .filter(({ kind, text }) => kind !== 'mark' && !isArticle(text, world))
    .map(({ text }) => text);
}

function isArticle(word: string, { words }: WishWorld): boolean {
  return words.articles.includes(word);
}
