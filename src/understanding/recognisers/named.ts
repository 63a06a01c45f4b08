import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';

/** What a message that takes something back names beside the value; worked out where it is wanted. */
export interface Named {
  /** null: none, or several. */
  readonly system: SystemId | null;
  readonly quantity: Quantity | null;
}
