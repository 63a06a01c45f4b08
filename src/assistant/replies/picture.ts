import type { LevelBand } from '../../estimation/level-band.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Reply } from './reply.ts';

/** What a picture shows, as data; it is drawn where a channel can show pictures, and told elsewhere. */
export type Picture = WaterPicture | ReadingsPicture;

/** A system's water over the last weeks and the days ahead, litres. */
export interface WaterPicture {
  readonly kind: 'water';
  readonly system: SystemId;
  readonly fromMs: number;
  readonly nowMs: number;
  readonly untilMs: number;
  readonly brimL: number;
  readonly lowL: number;
  /** As it was believed at each time. */
  readonly past: readonly LevelBand[];
  /** As it is expected if nobody tops up. */
  readonly ahead: readonly LevelBand[];
  readonly topUps: readonly Point[];
  /** Levels that were read off. */
  readonly told: readonly Point[];
}

/** Readings of a system over the last weeks, each beside what is wanted. */
export interface ReadingsPicture {
  readonly kind: 'readings';
  readonly system: SystemId;
  readonly fromMs: number;
  readonly nowMs: number;
  readonly panels: readonly ReadingsPanel[];
  /** When the solution was changed. */
  readonly changedAtMs: readonly number[];
}

export interface ReadingsPanel {
  readonly quantity: PicturedQuantity;
  /** Lowest and highest value wanted, in the quantity's unit, as the points are. */
  readonly wanted: readonly [number, number];
  readonly points: readonly Point[];
}

export interface Point {
  readonly atMs: number;
  readonly value: number;
}

export const picturedQuantities = ['ph', 'ec'] as const;
export type PicturedQuantity = (typeof picturedQuantities)[number];
export type PictureKind = Picture['kind'];

/** The picture that goes with a reply; null: it is words alone. */
export function pictureIn(reply: Reply): Picture | null {
  if (reply.kind !== 'answer') return null;
  const { answer } = reply;
  return answer.kind === 'picture' || answer.kind === 'show' ? (answer.picture ?? null) : null;
}
