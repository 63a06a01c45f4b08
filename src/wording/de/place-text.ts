import type { Doubt } from '../../understanding/doubt.ts';
import { doubtedSystem } from '../spoken/doubted.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** ` (Bucket row)`, or nothing: a name in brackets needs no article, whose gender nobody knows. */
export function inBrackets(doubt: Doubt, s: Speaker): string {
  const system = doubtedSystem(doubt, s);
  return system ? ` (${system.name})` : '';
}

/** ` bei Bucket row`, or nothing. */
export function atSystem(doubt: Doubt, s: Speaker): string {
  const system = doubtedSystem(doubt, s);
  return system ? ` bei ${system.name}` : '';
}
