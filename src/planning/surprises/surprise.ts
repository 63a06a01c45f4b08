import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';

/** Something that does not fit what was learned, told once. */
export type Surprise = { readonly key: string; readonly atMs: number } & (
  | UseSurprise
  | MoveSurprise
  | StillSurprise
);

/** Far more or far less water used than was to be expected. */
export interface UseSurprise {
  readonly kind: 'use';
  readonly way: 'above' | 'below';
  readonly system: SystemId;
  readonly fromMs: number;
  readonly usedL: number;
  readonly expectedL: number;
  /** When it is more likely low than not, going on as now; null: not in sight. */
  readonly lowAtMs: number | null;
}

/** pH or strength that went the wrong way, faster than it ever does. */
export interface MoveSurprise {
  readonly kind: 'move';
  readonly system: SystemId;
  readonly quantity: 'ph' | 'ec';
  readonly from: number;
  readonly to: number;
  readonly fromMs: number;
  readonly usualPerDay: number;
}

/** A figure that stands still where it should not. */
export interface StillSurprise {
  readonly kind: 'still';
  readonly system: SystemId | null;
  /** Where else the same meter shows the same. */
  readonly elsewhere: readonly SystemId[];
  readonly quantity: Quantity;
  readonly by: 'sensor' | 'hand';
  readonly value: number;
  readonly times: number;
  readonly fromMs: number;
}
