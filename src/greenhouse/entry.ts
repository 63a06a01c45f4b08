import type { DutyKind } from './duty.ts';
import type { PhotoRef } from './photo.ts';
import type { Quantity } from './quantity.ts';
import type { SystemId } from './system.ts';

/** What can fail: the mains, a circulation or flood pump, an air pump. */
export type Supply = 'power' | 'pump' | 'air-pump';

/** A level as a depth, as a distance below the brim, or as a share of the brim volume (0 to 1). */
export type LevelSaidAs =
  | { readonly kind: 'depth'; readonly cm: number }
  | { readonly kind: 'below-brim'; readonly cm: number }
  | { readonly kind: 'share'; readonly share: number };

/** A unit by what it makes of a number that is said in it: value = (number - zeroAt) × perUnit. */
export interface SaidIn {
  readonly perUnit: number;
  readonly zeroAt: number;
}

/** What an entry says, before it has a place in the logbook. */
export interface EntryDraft {
  /** null: the whole greenhouse. */
  readonly system: SystemId | null;
  readonly quantity: Quantity;
  /** In the quantity's unit. */
  readonly value: number;
  /** When it held. */
  readonly atMs: number;
  readonly approximate?: boolean;
  /** dose: the product, as named in the stock. */
  readonly product?: string;
  /** top-up: the litres that the round had asked for, where it had. */
  readonly askedL?: number;
  /** level, change: how it was said, where not in litres, so that it can be read again for another system. */
  readonly saidAs?: LevelSaidAs;
  /** The unit or container it was said in, where not in the quantity's own, so that a bare number can put it right. */
  readonly saidIn?: SaidIn;
  /** calibration: the probe, and what it showed; `value` is the reference's value. */
  readonly probe?: string;
  readonly read?: number;
  /** outage, restored. */
  readonly of?: Supply;
  /** duty-done, duty-failed: the duty's kind, and the chore's name where it is a chore. */
  readonly duty?: DutyKind;
  readonly chore?: string;
  /** note, or why a duty failed. */
  readonly note?: string;
  /** note: kept with its system, or with the duty named, and shown with the steps of the work. */
  readonly isAttached?: true;
  /** note: what it shows. */
  readonly photo?: PhotoRef;
  /** note: something is wrong that somebody should see to. */
  readonly trouble?: Trouble;
  /** note: what it marks in the season. */
  readonly milestone?: Milestone;
  /** top-up, reservoir-change: the water it was made with, where that was said. */
  readonly water?: WaterKind;
  /** The struck entries in whose place it stands: a correction, or what was put back. */
  readonly inPlaceOf?: readonly EntryNo[];
}

/** What can be wrong: plants that ail, a pump that labours, or what may hurt somebody. */
export type Trouble = 'plants' | 'solution' | 'air' | 'noise' | Danger;

/** What may hurt somebody: water where none should be, smoke or sparks, a shock, acid or alkali out of its bottle. */
export type Danger = 'leak' | 'fire' | 'shock' | 'spill';

export function isDanger(trouble: Trouble | undefined): trouble is Danger {
  return trouble === 'leak' || trouble === 'fire' || trouble === 'shock' || trouble === 'spill';
}

export type Milestone = 'first-fruit';

export type WaterKind = 'rain' | 'mains';

export type EntryNo = number & { readonly __brand: 'EntryNo' };

/** Where an entry came from: a member's message, or a sensor. */
export type EntrySource =
  | { readonly kind: 'member'; readonly handle: string; readonly messageId: string }
  | { readonly kind: 'sensor'; readonly messageId: string };

/** One fact in the logbook. It is never changed; a strike-out stands beside it. */
export interface Entry extends EntryDraft {
  readonly no: EntryNo;
  readonly source: EntrySource;
  readonly recordedAtMs: number;
  readonly struck: StrikeOut | null;
}

export interface StrikeOut {
  readonly byHandle: string;
  readonly atMs: number;
}
