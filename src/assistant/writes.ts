import type { Writes } from './ports/store.ts';

/** What a handling writes, where only some parts are filled. */
export function writesOf(clockMs: number, parts: Partial<Omit<Writes, 'clockMs'>>): Writes {
  return {
    clockMs,
    entries: [],
    strikes: [],
    weather: [],
    greenhouse: null,
    conversations: [],
    outgoing: [],
    morning: null,
    notices: [],
    ...parts,
  };
}
