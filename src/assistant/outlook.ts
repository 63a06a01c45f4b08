import { type LocalDate, localDateOf } from '../greenhouse/local-time.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { DutyLine } from '../planning/duty-line.ts';
import { waterOutlooks } from '../planning/water-outlooks.ts';
import { boardOf } from './board-of.ts';
import type { Standing } from './standing.ts';

/** The figures behind a system's duties, for people who want to check them. */
export interface OutlookEntry {
  readonly system: SystemId;
  readonly litres: number;
  readonly litresSd: number;
  readonly usePerDay: number;
  readonly usePerDaySd: number;
  readonly lowOn: {
    readonly p5: LocalDate | null;
    readonly p50: LocalDate | null;
    readonly p95: LocalDate | null;
  };
  readonly useNext: readonly {
    readonly days: number;
    readonly p5: number;
    readonly p50: number;
    readonly p95: number;
  }[];
  readonly due: readonly DutyLine[];
}

export function outlookOf(standing: Standing, nowMs: number): readonly OutlookEntry[] {
  const { greenhouse, water } = standing;
  const { today, later } = boardOf(standing, nowMs);
  const dateOf = (atMs: number | null): LocalDate | null =>
    atMs === null ? null : localDateOf(atMs, greenhouse.timeZone);
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  return greenhouse.systems.map(({ id: system }) => {
    const foreseen = outlooks.get(system)!;
    return {
      system,
      litres: foreseen.litres,
      litresSd: foreseen.litresSd,
      usePerDay: foreseen.usePerDay,
      usePerDaySd: foreseen.usePerDaySd,
      lowOn: {
        p5: dateOf(foreseen.lowAtMs.p5),
        p50: dateOf(foreseen.lowAtMs.p50),
        p95: dateOf(foreseen.lowAtMs.p95),
      },
      useNext: foreseen.useNext,
      due: [...today, ...later].filter(({ duty }) => duty.system === system),
    };
  });
}
