import type { Entry } from '../../greenhouse/entry.ts';
import type { Speaker } from './speaker.ts';

/** The name of the member who logged an entry; null: a sensor did. */
export function enteredBy({ source }: Entry, s: Speaker): string | null {
  return source.kind === 'member' ? s.member(source.handle) : null;
}

/** Those who logged the entries, each once. */
export function authorsOf(entries: readonly Entry[], s: Speaker): readonly (string | null)[] {
  return [...new Set(entries.map((entry) => enteredBy(entry, s)))];
}

export function growerNames(s: Speaker): readonly string[] {
  return s.greenhouse.members.filter(({ role }) => role === 'grower').map(({ name }) => name);
}

/** Those who may change all of the entries: the one who logged them, and every grower. */
export function mayChange(entries: readonly Entry[], s: Speaker): readonly string[] {
  const [author, another] = authorsOf(entries, s);
  const names = growerNames(s);
  return [...new Set(author && another === undefined ? [author, ...names] : names)];
}
