import type { Entry } from '../../greenhouse/entry.ts';
import type { Speaker } from './speaker.ts';

/** The name of the member who logged an entry; null: a sensor did. */
export function enteredBy({ source }: Entry, s: Speaker): string | null {
  return source.kind === 'member' ? s.member(source.handle) : null;
}
