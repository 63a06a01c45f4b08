import { seasonOf } from '../../planning/season.ts';
import type { SeasonAsked } from '../../understanding/wishes/wish.ts';
import type { KeepingAnswer } from '../replies/keeping.ts';
import type { Standing } from '../standing.ts';

/** How the systems have done since they were planted. */
export function seasonAnswer(
  { greenhouse, logbook, createdAtMs }: Standing,
  nowMs: number,
  asks: SeasonAsked,
): KeepingAnswer {
  return { kind: 'season', season: seasonOf(greenhouse, logbook, createdAtMs, nowMs), asks };
}
