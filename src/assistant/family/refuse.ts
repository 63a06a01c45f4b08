import type { Handling } from '../handling.ts';

/** That is for the grower, or for whoever it is about. */
export function refuse(handling: Handling): void {
  handling.say({ kind: 'refusal', because: { kind: 'not-for-you' } });
}
