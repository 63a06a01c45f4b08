import type { Token } from '../reading/token.ts';
import { wordsOf } from '../reading/word-list.ts';
import type { WishWorld } from './wish-world.ts';

/** What stands behind `wait, it's` and before `not 20`; null: the message begins with no such word, or ends with it. */
export function saidInstead({ tokens, words }: WishWorld): readonly Token[] | null {
  const { leads, instead } = words.mending;
  const said = withoutLeads(tokens, leads);
  if (said.length === tokens.length) return null;
  const wrong = said.findIndex((_, i) => i > 0 && leadAt(said.slice(i), instead) > 0);
  const meant = (wrong < 0 ? said : said.slice(0, wrong)).filter(
    ({ text: mark }, i, all) => mark !== ',' || (i > 0 && i < all.length - 1),
  );
  return meant.length === 0 ? null : meant;
}

/** How many tokens the longest of the phrases takes that these begin with. */
function leadAt(tokens: readonly Token[], phrases: readonly string[]): number {
  const fitting = phrases
    .map((phrase) => wordsOf(phrase))
    .filter((words) => words.every((word, i) => tokens[i]?.text === word));
  return Math.max(0, ...fitting.map(({ length }) => length));
}

export function withoutLead(
  tokens: readonly Token[],
  phrases: readonly string[],
): readonly Token[] {
  const length = leadAt(tokens, phrases);
  return length < tokens.length ? tokens.slice(length) : tokens;
}

function withoutLeads(tokens: readonly Token[], phrases: readonly string[]): readonly Token[] {
  const length = leadAt(tokens, phrases) || (tokens[0]?.kind === 'mark' ? 1 : 0);
  return length === 0 ? tokens : withoutLeads(tokens.slice(length), phrases);
}
