import { plusDays } from '../../greenhouse/local-time.ts';
import { type Language, languages } from '../../greenhouse/member.ts';
import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import { onceFor } from '../reading/once-for.ts';
import type { Token } from '../reading/token.ts';
import { wordsOf } from '../reading/word-list.ts';
import type { WishWords } from '../vocabulary/wishes/wish-words.ts';
import { isButt } from './is-butt.ts';
import type { ReadSlot } from './match-pattern.ts';
import { patternOf } from './pattern.ts';
import { PatternIndex } from './pattern-index.ts';
import { readAbout } from './read-about.ts';
import {
  readCm,
  readCount,
  readDegrees,
  readLitres,
  readNumber,
  readTime,
} from './read-amounts.ts';
import {
  readChore,
  readContainer,
  readCrop,
  readFruit,
  readGrown,
  readHolder,
  readMember,
  readName,
  readPlants,
  readProbe,
  readProduct,
  readSomeChore,
  readSystem,
  readSystems,
  readTask,
  withoutArticle,
} from './read-names.ts';
import { readFuture, readScenario } from './read-scenario.ts';
import { readSupply } from './read-supply.ts';
import { readUnits } from './read-units.ts';
import type { ExplainedTerm } from './wish.ts';
import { asWritten, type WishWorld } from './wish-world.ts';

type Reader = (words: readonly Token[], world: WishWorld) => unknown;

/** What may stand in each slot of a pattern; an amount is in mL, a volume in litres. */
export const slotReaders = {
  interval: readInterval,
  count: readCount,
  litres: (words, world) => readLitres(words, world),
  amount: (words, world) => {
    const litres = readLitres(words, world, false);
    return litres === undefined ? undefined : Math.round(litres * 1000);
  },
  cm: readCm,
  low: readNumber,
  high: readNumber,
  time: readTime,
  day: (words, world) => {
    const said = textOf(words);
    const day = world.words.days.find((each) => each.words.includes(said));
    return day && plusDays(world.today, -day.ago);
  },
  wide: readWide,
  lead: (words, world) => world.words.whatIf.includes(textOf(words)) || undefined,
  scenario: (words, world) =>
    readScenario(words, world, (slot, span) => readSlot(slot, span, world)),
  future: readFuture,
  degrees: readDegrees,
  system: readSystem,
  othersystem: readSystem,
  plants: readPlants,
  crop: readCrop,
  chore: readChore,
  somechore: readSomeChore,
  task: readTask,
  name: readName,
  container: readContainer,
  vessel: (words, world) =>
    world.greenhouse.containers.find(({ name }) => name.toLowerCase() === textOf(words))?.name,
  // `the bench is 200 now`: a system is no can, where none is called so.
  measure: (words, world) =>
    readHolder(words, world) ??
    (readSystem(words, world) ? undefined : readContainer(words, world)),
  holder: readHolder,
  probe: readProbe,
  member: readMember,
  product: readProduct,
  other: readProduct,
  systems: readSystems,
  term: readTerm,
  bareterm: (words, world) =>
    withoutArticle(words, world) === words ? readTerm(words, world) : undefined,
  // Asked what it is, a quantity is one that was measured.
  thing: (words, world) => {
    const term = readTerm(words, world);
    return term === 'ec' || term === 'ph' ? undefined : term;
  },
  supply: readSupply,
  about: readAbout,
  fruit: readFruit,
  grown: readGrown,
  butt: (words, world) => isButt(textOf(withoutArticle(words, world)), world) || undefined,
  share: (words, world) => {
    const said = textOf(words);
    return world.words.shares.find((each) => each.words.includes(said))?.share;
  },
  words: (words, world) => asWritten(words, world.folded) || undefined,
  units: readUnits,
  language: (words, world) =>
    languages.find((language: Language) => world.words.languages[language].includes(textOf(words))),
  quantity: (words, world) => namesOf(world.words).quantities.get(textOf(words)),
} as const satisfies Readonly<Record<string, Reader>>;

/** More than a folded wish can have. */
const mostOffsets = 1 << 16;

/** @throws RangeError where a pattern names a slot that nobody reads. */
export function readSlot(slot: string, words: readonly Token[], world: WishWorld): unknown {
  const read = (slotReaders as Readonly<Record<string, Reader>>)[slot];
  if (!read) throw new RangeError(`a pattern has the slot {${slot}}, which nothing reads`);
  let known = world.slotsRead.get(slot);
  if (!known) world.slotsRead.set(slot, (known = new Map<number, unknown>()));
  const span = words[0]!.from * mostOffsets + words.at(-1)!.to;
  if (!known.has(span)) known.set(span, read(words, world));
  return known.get(span);
}

const patternsOf = onceFor((words: WishWords) => ({
  intervals: new PatternIndex(
    words.intervals.map(({ pattern, days }) => ({ pattern: patternOf(pattern), days })),
  ),
  wide: new PatternIndex(words.wide.map((pattern) => ({ pattern: patternOf(pattern) }))),
}));

/** Days from one time to the next. */
function readInterval(words: readonly Token[], world: WishWorld): number | undefined {
  const { intervals } = patternsOf(world.words);
  const read: ReadSlot = (slot, span) => readSlot(slot, span, world);
  for (const { item, slots } of intervals.fits(words, read)) {
    const count = slots.get('count') ?? 1;
    if (typeof count === 'number' && count > 0) return count * item.days;
  }
  return undefined;
}

/** A word of the trade. */
function readTerm(words: readonly Token[], world: WishWorld): ExplainedTerm | undefined {
  return namesOf(world.words).terms.get(textOf(withoutArticle(words, world)));
}

const namesOf = onceFor(({ terms, quantities }: WishWords) => ({
  terms: byName<ExplainedTerm>(terms),
  quantities: byName<WantedQuantity>(quantities),
}));

/** What each name, as the reader splits it, is a name of. */
function byName<T extends string>(
  namesOfEach: Readonly<Record<T, readonly string[]>>,
): ReadonlyMap<string, T> {
  const each = Object.entries(namesOfEach) as [T, readonly string[]][];
  return new Map(
    each
      .flatMap(([named, names]) => names.map((name) => [wordsOf(name).join(' '), named] as const))
      .toReversed(),
  );
}

/** What care is to be taken with: whichever it is, it holds for all. */
function readWide(words: readonly Token[], world: WishWorld): true | undefined {
  const { wide } = patternsOf(world.words);
  return wide.firstFit(words, (slot, span) => readSlot(slot, span, world)) ? true : undefined;
}

function textOf(words: readonly Token[]): string {
  return words.map(({ text }) => text).join(' ');
}
