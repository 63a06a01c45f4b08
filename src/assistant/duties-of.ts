import type { DutyKind } from '../greenhouse/duty.ts';
import type { Quantity } from '../greenhouse/quantity.ts';

/** The duty behind what is logged with a figure, and is ticked off without one as well. */
export const DUTIES_OF: Readonly<Partial<Record<Quantity, DutyKind>>> = {
  'top-up': 'top-up',
  dose: 'dose',
  'reservoir-change': 'reservoir-change',
  calibration: 'calibration',
};
