import type { SystemId } from '../../greenhouse/system.ts';
import type { Side } from '../../understanding/asking/plain-ask.ts';
import type { PlainAnswer } from '../replies/plain.ts';
import type { Standing } from '../standing.ts';
import { howFull } from './how-full.ts';

/** Which holds least of what it could hold, or most; those of which nobody has told a level are left out. */
export function fullest(
  standing: Standing,
  systems: readonly SystemId[],
  side: Side,
  nowMs: number,
): Extract<PlainAnswer, { kind: 'fullest' }> {
  const { greenhouse } = standing;
  const shares = howFull(standing, systems, nowMs).flatMap(({ system, now }) => {
    const { brimL } = greenhouse.systems.find(({ id }) => id === system)!;
    return now === null ? [] : [{ system, litres: now.litres, share: now.litres / brimL }];
  });
  const rising = shares.toSorted((one, other) => one.share - other.share);
  return { kind: 'fullest', side, systems: side === 'low' ? rising : rising.toReversed() };
}
