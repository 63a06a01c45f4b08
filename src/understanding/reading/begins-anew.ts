import { asksWhatToDo, wordsOfAsking } from './asks-what-to-do.ts';
import type { Lexicon } from './lexicon.ts';
import { type Cut, means, type Term } from './term.ts';

/** How a saying that begins at `i`, behind another that begins at `from`, is parted from it; null: none begins there. */
export function isRunOn(
  terms: readonly Term[],
  from: number,
  i: number,
  lexicon: Lexicon,
): Cut | null {
  const isAsked =
    asksBehindReport(terms, from, i, lexicon) ||
    asksBehindPlace(terms, from, i, lexicon) ||
    tellsBehindQuestion(terms, from, i);
  if (isAsked) return 'sentence';
  const parts =
    needsBehindValue(terms, from, i) ||
    isThereUnneeded(terms, from, i, lexicon) ||
    isOnlyDone(terms, from, i) ||
    isMoreDone(terms, from, i);
  return parts ? 'comma' : null;
}

/** `topped jars 1 jug do you want …`, `dwc ph 6.5 should I …`: behind an amount, whoever is asked. */
function asksBehindReport(
  terms: readonly Term[],
  from: number,
  i: number,
  { own: { vocabulary } }: Lexicon,
): boolean {
  const { text } = terms[i]!;
  if (terms[i]!.kind !== 'word') return false;
  if (!vocabulary.asksOneself.includes(text) && !vocabulary.asksReader.includes(text)) return false;
  if (means(terms[i - 1], ...asking)) return false;
  const said = terms.slice(from, i);
  return (
    said.some(({ kind }) => kind === 'measure') && !said.some((term) => means(term, ...asking))
  );
}

/** `im in the greenhouse now what do I do`, `bin im Gewächshaus was muss ich machen`: behind where one is. */
function asksBehindPlace(
  terms: readonly Term[],
  from: number,
  i: number,
  { own: { vocabulary } }: Lexicon,
): boolean {
  if (!means(terms[i], 'what', 'how')) return false;
  const words = terms.slice(i, i + wordsOfAsking).flatMap(({ text }) => text.split(' '));
  if (!asksWhatToDo(words, 0, vocabulary)) return false;
  // `dwc ph 5.4 what should i do` is about the value, and its receipt says it.
  return !terms.slice(from, i).some((term) => term.kind === 'measure' || means(term, ...asking));
}

const asking = [
  'what',
  'when',
  'why',
  'how',
  'how-much',
  'how-long',
  'who',
  'which',
  'condition',
  'unanswered',
] as const;

/** `how full should the bench be its 300 now`: a verb with its subject and a figure, where the question has its own. */
function tellsBehindQuestion(terms: readonly Term[], from: number, i: number): boolean {
  const term = terms[i];
  // `sind jetzt` may be one phrase.
  const isNow = means(term, 'now') && term!.text.includes(' ');
  if (!isNow && !means(term, 'link', 'there-is')) return false;
  let next = i + 1;
  const isOfNow = isNow || means(terms[next], 'now', 'still-there');
  while (means(terms[next], 'now', 'still-there', 'filler', 'about')) next++;
  const hasSubject = means(term, 'there-is', 'pronoun', 'article');
  if (terms[next]?.kind !== 'measure' || !(hasSubject || isOfNow)) return false;
  const said = terms.slice(from, i);
  return (
    said.some((each) => means(each, 'how', 'how-much', 'what', 'why', 'when')) &&
    said.some((each) => means(each, 'link', 'is-it', 'last-out')) &&
    !said.some(({ kind }) => kind === 'measure')
  );
}

/** `bench fine 2.3 jars need water`: of the next system what it needs, where the one before has its value. */
function needsBehindValue(terms: readonly Term[], from: number, i: number): boolean {
  const name = means(terms[i], 'article') ? i + 1 : i;
  if (terms[name]?.kind !== 'name' || means(terms[i - 1], 'article', 'place')) return false;
  const verb = terms[name + 1];
  const needsWater = means(verb, 'intention') && verb!.text.includes(' ');
  if (!means(verb, 'need') && !needsWater) return false;
  const said = terms.slice(from, i);
  const value = said.findIndex(({ kind }) => kind === 'measure');
  return value > 0 && said.slice(0, value).some(({ kind }) => kind === 'name');
}

/** `t2 doesn't need any 18 gal in it`: what is there, behind what was not needed or given. */
function isThereUnneeded(
  terms: readonly Term[],
  from: number,
  i: number,
  lexicon: Lexicon,
): boolean {
  let at = i;
  while (means(terms[at], 'there-is', 'still-there', 'link', 'about', 'filler')) at++;
  if (terms[at]?.kind !== 'measure' || isWhatWasNotGiven(terms[i - 1])) return false;
  const isThere =
    means(terms[at + 1], 'left-over') ||
    terms.slice(i, at).some((term) => means(term, 'there-is', 'still-there'));
  if (!isThere || means(terms[i - 1], 'there-is', 'still-there', 'link', 'about')) return false;
  const said = terms.slice(from, i);
  const denied = said.findIndex((term) => means(term, 'did-not', 'not', 'no'));
  return denied >= 0 && said.some(({ kind }) => kind === 'name') && saysNone(terms[i - 1], lexicon);
}

/** `any`, `water`, `braucht nichts`: what there was no need of. */
function saysNone(term: Term | undefined, { own }: Lexicon): boolean {
  if (means(term, 'anything', 'solution', 'water', 'no-water-in')) return true;
  const last = term?.text.slice(term.text.lastIndexOf(' ') + 1) ?? '';
  return own.vocabulary.words.anything.includes(last);
}

/** `none of the 18 gal`: that is the amount denied. */
function isWhatWasNotGiven(term: Term | undefined): boolean {
  return means(term, 'of', 'article', 'need', 'add', 'top-up');
}

/** `didn't measure anything just topped the buckets with 9`: what was done, behind what was not. */
function isOnlyDone(terms: readonly Term[], from: number, i: number): boolean {
  if (!means(terms[i], 'merely')) return false;
  const before = terms.slice(Math.max(from, i - longestDenial), i);
  const denied = before.findIndex((term) => means(term, 'did-not', 'not', 'no', 'could-not'));
  if (denied < 0 || denied === before.length - 1) return false;
  if (isOfAdding(terms[i + 1])) return true;
  const after = terms.slice(i + 1, i + 1 + longestDeed);
  const end = after.findIndex(({ kind }) => kind === 'stop');
  const told = end < 0 ? after : after.slice(0, end);
  return told.some(isOfAdding) && told.some(({ kind }) => kind === 'measure');
}

/** So many words say what was not done, and so many what was instead. */
const longestDenial = 12;
const longestDeed = 8;

function isOfAdding(term: Term | undefined): boolean {
  return means(term, 'top-up', 'add', 'fill', 'did');
}

/** `did pond did table couldn't reach rail`, `Wanne gemacht Tisch gemacht konnte nicht an die Rinne`. */
function isMoreDone(terms: readonly Term[], from: number, i: number): boolean {
  const term = terms[i]!;
  const isNot = means(term, 'could-not', 'did-not', 'could');
  if (!isNot && !means(term, 'did') && !isNameAt(terms, i)) return false;
  const said = terms.slice(from, i);
  const did = said.findIndex((each) => means(each, 'did'));
  if (did < 0 || said.some(({ kind }) => kind === 'measure')) return false;
  const isOpened = means(said[0], 'did');
  const hasName = said.some(({ kind }) => kind === 'name');
  if (!hasName || !(isOpened || did === said.length - 1)) return false;
  if (isNot) return true;
  return isOpened
    ? means(term, 'did') && term.text === said[0]!.text && terms[i - 1]!.kind === 'name'
    : did === said.length - 1 && isNameAt(terms, i);
}

/** `Tisch …` behind `Wanne gemacht`. */
function isNameAt(terms: readonly Term[], i: number): boolean {
  return terms[means(terms[i], 'article') ? i + 1 : i]?.kind === 'name';
}
