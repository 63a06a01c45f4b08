import type { Speaker } from './speaker.ts';

/** The names of those who may change the set-up. */
export function growersOf({ greenhouse }: Speaker): readonly string[] {
  return greenhouse.members.filter(({ role }) => role === 'grower').map(({ name }) => name);
}
