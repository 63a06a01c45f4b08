import { instantOf, localDateOf } from '../../greenhouse/local-time.ts';
import type { Roster } from '../../planning/roster.ts';
import type { Standing } from '../standing.ts';
import { type Notice, notice } from './notice.ts';
import { planOf } from './plan-of.ts';

/** Later in the day whoever leaves is gone. */
const LEAVING_HOLDS_MS = 4 * 3_600_000;

/** To a grower on the morning of departure, after the round: what is still to be done before. */
export function noticesOfLeaving(
  standing: Standing,
  roster: Roster,
  nowMs: number,
  told: ReadonlySet<string>,
): readonly Notice[] {
  const { greenhouse } = standing;
  const { morning, timeZone } = greenhouse;
  const today = localDateOf(nowMs, timeZone);
  const atMs = instantOf(today, morning, timeZone);
  if (nowMs < atMs || nowMs - atMs > LEAVING_HOLDS_MS) return [];
  return roster.absences.flatMap((absence): readonly Notice[] => {
    const { handle, from, until, toldAtMs } = absence;
    const key = `leaving:${handle}:${from}:${until}`;
    const isGrower = greenhouse.members.some(
      (member) => member.handle === handle && member.role === 'grower',
    );
    // Told today, it came with its plan.
    const isNews = localDateOf(toldAtMs, timeZone) < today;
    if (from !== today || until === from || !isGrower || !isNews || told.has(key)) return [];
    return [
      notice(key, atMs, handle, {
        kind: 'leaving',
        plan: planOf(standing, roster, absence, nowMs),
      }),
    ];
  });
}
