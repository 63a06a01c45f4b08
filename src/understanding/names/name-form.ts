import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { fold } from '../reading/fold.ts';
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
      forms.push({ system: id, words });
      if (words.length > 1 && articles.includes(words[0]!))
        forms.push({ system: id, words: words.slice(1) });
      const inOne = words.join('');
      if (words.length > 1 && /^\p{L}+$/u.test(inOne)) forms.push({ system: id, words: [inOne] });
    }
  }
  return forms;
}

/** The words and numbers of a name; hyphens and other marks do not matter. */
function nameWords(called: string): string[] {
  return tokenise(fold(called).text)
    .filter(({ kind }) => kind !== 'mark' && kind !== 'line')
    .map(({ text }) => text);
}
