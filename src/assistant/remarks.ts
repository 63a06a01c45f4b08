import { type Entry, isDanger } from '../greenhouse/entry.ts';
import type { Member } from '../greenhouse/member.ts';
import type { System } from '../greenhouse/system.ts';
import { jumpedFrom } from '../planning/reading-jump.ts';
import { adviceRemarks } from './advice-remarks.ts';
import type { Remark } from './replies/reply.ts';
import type { Standing } from './standing.ts';
import { wantedRange } from './wanted-range.ts';

/** What a receipt adds about what was just logged, for the member who said it. */
export function remarksOn(
  logged: readonly Entry[],
  standing: Standing,
  member: Member,
): readonly Remark[] {
  const onReadings = logged.flatMap((entry): Remark[] => {
    const system = standing.greenhouse.systems.find(({ id }) => id === entry.system);
    if (!system) return [];
    return [...outsideRange(entry, system), ...farFromExpected(entry, standing)];
  });
  return [
    ...onReadings,
    ...adviceRemarks(logged, standing, member),
    ...ofTrouble(logged, standing, member),
  ];
}

function ofTrouble(
  logged: readonly Entry[],
  { greenhouse }: Standing,
  member: Member,
): readonly Remark[] {
  const told = greenhouse.members.flatMap(({ role, handle }) =>
    role === 'grower' && handle !== member.handle ? [handle] : [],
  );
  const isTrouble = logged.some(({ trouble }) => trouble !== undefined && !isDanger(trouble));
  return isTrouble && told.length > 0 ? [{ kind: 'trouble', told }] : [];
}

function outsideRange(entry: Entry, system: System): Remark[] {
  const range = entry.quantity === 'level' ? null : wantedRange(system, entry.quantity);
  if (!range || (entry.value >= range[0] && entry.value <= range[1])) return [];
  return [{ kind: 'outside-range', entry, lowest: range[0], highest: range[1] }];
}

function farFromExpected(entry: Entry, { logbook }: Standing): Remark[] {
  const earlier = jumpedFrom(entry, logbook);
  return earlier ? [{ kind: 'far-from-expected', entry, expected: earlier.value }] : [];
}
