import { seasonOf } from '../../planning/season.ts';
import type { KeepingAnswer } from '../replies/keeping.ts';
import type { Standing } from '../standing.ts';

/** How the systems have done since they were planted. */
export function seasonAnswer(
  { greenhouse, logbook, createdAtMs }: Standing,
  nowMs: number,
  asksBest: boolean,
): KeepingAnswer {
  return { kind: 'season', season: seasonOf(greenhouse, logbook, createdAtMs, nowMs), asksBest };
}
