import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { fold } from '../reading/fold.ts';
import { spellingsOf } from '../reading/letters.ts';
import { tokenise } from '../reading/tokenise.ts';

/** One way to call a system, word by word. */
export interface NameForm {
  readonly system: SystemId;
  readonly words: readonly string[];
}

export function nameFormsOf(greenhouse: Greenhouse, articles: readonly string[]): NameForm[] {
  const forms: NameForm[] = [];
  for (const { id, name, aliases } of greenhouse.systems) {
    for (const called of [name, ...aliases]) {
      const words = nameWords(called);
      if (words.length === 0) continue;
      for (const form of waysToSay(words, articles)) forms.push({ system: id, words: form });
    }
  }
  return [...forms, ...sharedLastWords(forms)];
}

function waysToSay(words: readonly string[], articles: readonly string[]): string[][] {
  return spellingsOf(words.join(' ')).flatMap((spelling) => {
    const spelled = spelling.split(' ');
    // An article is no part of a name: `the` alone must not call The Tank.
    const isLed = spelled.length > 1 && articles.includes(spelled[0]!);
    const ways = [isLed ? spelled.slice(1) : spelled];
    const inOne = spelled.join('');
    if (spelled.length > 1 && /^\p{L}+$/u.test(inOne)) ways.push([inOne]);
    return ways;
  });
}

/** `the tubs` where one is the left tub and one the right: a word that fits all whose name it ends. */
function sharedLastWords(forms: readonly NameForm[]): NameForm[] {
  const tails = forms.flatMap(({ system, words }): NameForm[] => {
    const last = words.at(-1)!;
    return words.length > 1 && /^\p{L}{3,}$/u.test(last) ? [{ system, words: [last] }] : [];
  });
  return tails.filter(({ system, words: [word] }) =>
    tails.some((other) => other.words[0] === word && other.system !== system),
  );
}

/** The words and numbers of a name; hyphens and other marks do not matter. */
function nameWords(called: string): string[] {
  return tokenise(fold(called).text)
    .filter(({ kind }) => kind !== 'mark' && kind !== 'line')
    .map(({ text }) => text);
}
