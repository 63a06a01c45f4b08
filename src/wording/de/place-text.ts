import type { Doubt } from '../../understanding/doubt.ts';
import { doubtedSystem, sharingSystems } from '../spoken/doubted.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** ` (Bucket row)`, or nothing: a name in brackets needs no article, whose gender nobody knows. */
export function inBrackets(doubt: Doubt, s: Speaker): string {
  const system = doubtedSystem(doubt, s);
  return system ? ` (${system.name})` : '';
}

/** ` (North bench und Jar shelf)`, or nothing. */
export function allInBrackets(doubt: Doubt, s: Speaker): string {
  const names = sharingSystems(doubt, s).map(({ name }) => name);
  return names.length > 0 ? ` (${s.and(names)})` : '';
}

/** ` bei Bucket row`, or nothing. */
export function atSystem(doubt: Doubt, s: Speaker): string {
  const system = doubtedSystem(doubt, s);
  return system ? ` bei ${system.name}` : '';
}
