import type { Doubt } from '../../understanding/doubt.ts';
import { doubtedSystem, sharingSystems } from '../spoken/doubted.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** ` for Bucket row`, or nothing where the system is not known. */
export function forSystem(doubt: Doubt, s: Speaker): string {
  const system = doubtedSystem(doubt, s);
  return system ? ` for ${system.name}` : '';
}

/** ` in Bucket row`, or nothing. */
export function inSystem(doubt: Doubt, s: Speaker): string {
  const system = doubtedSystem(doubt, s);
  return system ? ` in ${system.name}` : '';
}

/** ` in Bucket row`, ` in North bench and Jar shelf`, or nothing. */
export function inSystems(doubt: Doubt, s: Speaker): string {
  const names = sharingSystems(doubt, s).map(({ name }) => name);
  return names.length > 0 ? ` in ${s.and(names)}` : '';
}

/** ` from Bucket row`, or nothing. */
export function fromSystem(doubt: Doubt, s: Speaker): string {
  const system = doubtedSystem(doubt, s);
  return system ? ` from ${system.name}` : '';
}
