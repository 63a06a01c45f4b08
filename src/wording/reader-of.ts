import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { asSpokenBy } from '../greenhouse/own-units.ts';
import type { Reader } from './wording.ts';

/** Whoever a message is for, at the moment it was said: a member in units of their own, or a group. */
export function readerOf(to: string, greenhouse: Greenhouse, nowMs: number): Reader {
  return { greenhouse: asSpokenBy(greenhouse, to), nowMs, handle: to };
}
