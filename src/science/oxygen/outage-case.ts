import type { Litre } from '../units/amount.ts';
import type { Kilopascal } from '../units/pressure.ts';
import type { Celsius } from '../units/temperature.ts';
import type { Assumption } from './outage-assumptions.ts';

/** The ways of growing, as the trade names them. */
export type GrowingMethod =
  | 'deep-water-culture'
  | 'nutrient-film'
  | 'flood-and-drain'
  | 'drip'
  | 'aeroponic'
  | 'non-circulating';

/** What has stopped: everything with a plug, the pump that moves the solution, or the air. */
export type Failure = 'power' | 'circulation' | 'aeration';

export interface OutageCase {
  readonly method: GrowingMethod;
  readonly failure: Failure;
  readonly sky: 'sun' | 'dull';
  readonly waterL: Litre;
  /** Depth of the water that the roots hang in. */
  readonly waterDepthM: number;
  readonly waterCelsius: Celsius;
  readonly airPressureKpa: Kilopascal;
  readonly plants: number;
  /** Null when it is not known. */
  readonly crop: string | null;
}

/** Hours until harm with their bounds, and what they rest on; or that nothing is lost by waiting. */
export type Survival =
  | { readonly kind: 'not-affected' }
  | {
      readonly kind: 'limited';
      readonly by: 'oxygen' | 'drying';
      readonly lowHours: number;
      readonly likelyHours: number;
      readonly highHours: number;
      readonly assumptions: readonly Assumption[];
    };
