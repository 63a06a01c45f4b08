import type { CleanPart, ProductAmount } from '../greenhouse/duty.ts';
import type { Quantity } from '../greenhouse/quantity.ts';

/** One step of a piece of work, in the order in which it is done. */
export type WorkStep =
  /** The reading is some hours old. */
  | { readonly kind: 'measure-first'; readonly quantity: Quantity }
  /** So little is measured out of a dilution: 1 mL into so much water, and so much of that is added. */
  | {
      readonly kind: 'thin-first';
      readonly product: string;
      readonly waterMl: number;
      readonly addMl: number;
    }
  | { readonly kind: 'add'; readonly product: string; readonly mL: number }
  /** One concentrate at a time into the full tank, never together. */
  | { readonly kind: 'add-one-by-one'; readonly amounts: readonly ProductAmount[] }
  | { readonly kind: 'stir' }
  | { readonly kind: 'flood-once' }
  | { readonly kind: 'wait'; readonly fromMin: number; readonly toMin: number }
  | { readonly kind: 'measure-again'; readonly quantities: readonly Quantity[] }
  /** The rest comes only after the new reading. */
  | { readonly kind: 'then-the-rest' }
  | { readonly kind: 'unplug' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'old-solution' }
  | { readonly kind: 'rinse' }
  | { readonly kind: 'fill-with-water'; readonly litres: number }
  | { readonly kind: 'set-ph'; readonly lowest: number; readonly highest: number }
  | { readonly kind: 'clean-part'; readonly part: CleanPart };
