import type { SystemId } from '../../greenhouse/system.ts';
import { stems } from '../names/inflection.ts';
import { type Frame, isMeasure, isName, type TermRange } from '../reading/frame.ts';
import { edits } from '../reading/slip.ts';

const shortestWordOfWeight = 3;

/** The chore whose every word of weight stands in this stretch of a message, inflected as may be. */
export function choreIn(frame: Frame, { from, to }: TermRange): string | null {
  const { chores } = frame.lexicon;
  if (chores.length === 0) return null;
  const said: string[] = [];
  for (let i = from; i < to; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term)) return null;
    if (term.text.includes(' ')) said.push(...term.text.split(' '));
    else said.push(term.text);
  }
  const saysEach = (words: readonly string[]): boolean =>
    words.length > 0 && words.every((word) => said.some((other) => isSameWord(frame, word, other)));
  const found = chores.filter(({ ofWeight }) => saysEach(ofWeight));
  if (found.length > 0) return found.length === 1 ? found[0]!.name : null;
  // `drains wiped`: the rack's, where no other system is named.
  const named = new Set(frame.places.within(isName, from, to).flatMap((i) => systemsAt(frame, i)));
  const short = chores.filter(
    ({ withoutSystem, system }) =>
      saysEach(withoutSystem) && [...named].every((each) => each === system),
  );
  return short.length === 1 ? short[0]!.name : null;
}

function systemsAt({ terms }: Frame, i: number): readonly SystemId[] {
  const term = terms[i];
  return term?.kind === 'name' ? term.systems : [];
}

/** `die Ranken kapp ich`, `i tie up the tomatoes`: somebody who writes in the present says what is to be done. */
export function isSaidAsPresent(frame: Frame, name: string, { from, to }: TermRange): boolean {
  const chore = frame.lexicon.chores.find((each) => each.name === name);
  if (!chore || !frame.places.has('self', from, to)) return false;
  const said = frame.terms.slice(from, to).flatMap(({ text }) => text.split(' '));
  const { presentOf } = frame.lexicon.own.vocabulary;
  const isPlain = (word: string): boolean =>
    [word, ...presentOf.map(([ending, own]) => withEnding(word, ending, own))].some((form) =>
      said.includes(form),
    );
  const words = chore.ofWeight.filter((word) =>
    said.some((other) => isSameWord(frame, word, other)),
  );
  return words.every(isPlain);
}

function withEnding(word: string, ending: string, own: string): string {
  return word.endsWith(ending) ? word.slice(0, word.length - ending.length) + own : word;
}

/** `tie up the tomatoes on Friday`, `Olli ties up the tomatoes`: as the chore is called, and not as something done. */
export function isSaidAsNamed(frame: Frame, name: string, { from, to }: TermRange): boolean {
  const chore = frame.lexicon.chores.find((each) => each.name === name);
  const said = frame.terms.slice(from, to).flatMap(({ text }) => text.split(' '));
  const { endings } = frame.lexicon.own.vocabulary;
  const isForm = (form: string, word: string) =>
    form === word || stems(form, endings).includes(word);
  return chore?.ofWeight.every((word) => said.some((form) => isForm(form, word))) === true;
}

/** The one chore that any word of weight speaks of, beside what systems are called: enough to leave it open. */
export function choreHinted(frame: Frame, { from, to }: TermRange): string | null {
  const said = frame.terms.slice(from, to).filter(({ kind }) => kind === 'word');
  const names = new Set(frame.lexicon.names.flatMap(({ words }) => words));
  const found = frame.lexicon.chores.filter(({ ofWeight }) =>
    ofWeight.some(
      (word) => !names.has(word) && said.some(({ text }) => isSameWord(frame, word, text)),
    ),
  );
  return found.length === 1 ? found[0]!.name : null;
}

/** `tie` and `tied`, `tomatoes` and `tomato`: alike but for their endings. */
function isSameWord(frame: Frame, a: string, b: string): boolean {
  if (a === b) return true;
  const { endings } = frame.lexicon.own.vocabulary;
  if (stems(a, endings).some((stem) => stems(b, endings).includes(stem))) return true;
  if (isParticiple(frame, a, b) || isIrregular(frame, a, b)) return true;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (
    short.length >= shortestWordOfWeight &&
    long.startsWith(short) &&
    long.length - short.length <= 3
  )
    return true;
  return (
    short.length >= 4 &&
    long.startsWith(short.slice(0, -1)) &&
    long.length - short.length <= 2 &&
    edits(short, long, 3) <= 3
  );
}

/** `hochbinden` and `hochgebunden`: alike without the mark and the ending, but for a vowel. */
function isParticiple(frame: Frame, verb: string, said: string): boolean {
  return frame.lexicon.own.vocabulary.participleMarks.some((mark) => {
    for (let at = said.indexOf(mark); at >= 0; at = said.indexOf(mark, at + 1)) {
      const [a, b] = [root(verb), root(said.slice(0, at) + said.slice(at + mark.length))];
      if (a === b || (a.length >= lettersForAVowel && edits(a, b, 1) === 1)) return true;
    }
    return false;
  });
}

/** `shake` and `shook`. */
function isIrregular(frame: Frame, verb: string, said: string): boolean {
  return frame.lexicon.own.vocabulary.irregularForms[verb]?.includes(said) === true;
}

const lettersForAVowel = 6;

function root(verb: string): string {
  return verb.replace(/(en|et|n|t)$/, '');
}
