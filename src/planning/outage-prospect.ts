import type { SystemId } from '../greenhouse/system.ts';

/** What anybody can do by hand while the power or a pump is off. */
export type HandMeasure =
  | 'scoop-and-pour'
  | 'battery-air'
  | 'pour-over-roots'
  | 'dam-the-channel'
  | 'water-the-pots'
  | 'mist-the-roots'
  | 'shade';

/** How long one system lasts without what has failed, from `sinceMs` on. */
export interface OutageProspect {
  readonly system: SystemId;
  readonly by: 'oxygen' | 'drying';
  readonly lowHours: number;
  readonly likelyHours: number;
  readonly highHours: number;
  readonly lowAtMs: number;
  readonly likelyAtMs: number;
  readonly highAtMs: number;
  readonly byHand: readonly HandMeasure[];
}
