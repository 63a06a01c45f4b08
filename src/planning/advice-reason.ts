import type { MixStrength } from '../greenhouse/duty.ts';
import type { Supply } from '../greenhouse/entry.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { ProbeVerdict } from '../science/ph/probe-calibration.ts';
import type { DoseRefusal } from './dose-refusal.ts';

/** What an amount rests on. */
export type DoseBasis =
  /** Nothing is known of the product's strength but what such products mostly have. */
  | { readonly kind: 'usual-strength'; readonly strength: number }
  | { readonly kind: 'label'; readonly strength: number }
  /** What earlier doses did here: so many of them. */
  | { readonly kind: 'learned'; readonly doses: number };

/** A pH or strength out of range, and the dose for it. */
export interface DoseReason {
  readonly kind: 'out-of-range';
  readonly quantity: 'ph' | 'ec';
  readonly value: number;
  readonly measuredAtMs: number;
  readonly lowest: number;
  readonly highest: number;
  /** Where the dose aims. */
  readonly aim: number;
  /** All that it may take, of which the duty's mL are the first part. */
  readonly wholeMl: number;
  readonly isFirstPart: boolean;
  readonly litres: number;
  readonly basis: DoseBasis;
  /** Carbon dioxide leaves after acid: the pH will climb again within a day. */
  readonly climbsBack: boolean;
}

/** Something has to be done before a dose can be told. */
export interface BeforeDoseReason {
  readonly kind: 'before-dose';
  readonly quantity: 'ph' | 'ec';
  readonly value: number;
  readonly quantities: readonly Quantity[];
  readonly because: DoseRefusal;
}

export interface AfterOutageReason {
  readonly kind: 'after-outage';
  readonly of: Supply;
  readonly restoredAtMs: number;
  readonly quantities: readonly Quantity[];
}

export interface CalibrationReason {
  readonly kind: 'calibration';
  readonly lastOn: LocalDate | null;
  readonly everyDays: number;
  readonly verdict: ProbeVerdict | null;
  /** The interval comes from how this probe drifted. */
  readonly isLearned: boolean;
}

export interface ChangeReason {
  readonly kind: 'change';
  readonly because: 'top-ups' | 'salts' | 'drift' | 'age';
  readonly lastOn: LocalDate | null;
  readonly ageDays: number;
  /** The age at which it is due. */
  readonly dueAgeDays: number;
  readonly toppedUpL: number;
  readonly brimL: number;
}

export interface AerationReason {
  readonly kind: 'aeration';
  readonly presentMinPerHour: number;
  readonly waterC: number;
  /** A hot spell is forecast; it is not that warm yet. */
  readonly isForecast: boolean;
}

export interface CleanReason {
  readonly kind: 'clean';
  readonly because:
    | { readonly kind: 'fill-time'; readonly minutes: number; readonly usualMinutes: number }
    | { readonly kind: 'low-oxygen'; readonly mgPerL: number }
    | { readonly kind: 'interval'; readonly everyDays: number; readonly lastOn: LocalDate | null };
}

/** How strong a top-up is to be, and why. */
export interface MixReason {
  readonly strength: MixStrength;
  readonly ecMsPerCm: number;
  readonly lowest: number;
  readonly highest: number;
  /** How the strength moves by itself, mS/cm a day; null: not known yet. */
  readonly driftPerDay: number | null;
  readonly basis: DoseBasis;
  /** There is not as much left in stock as it takes. */
  readonly isShort?: true;
}

export type AdviceReason =
  | DoseReason
  | BeforeDoseReason
  | AfterOutageReason
  | CalibrationReason
  | ChangeReason
  | AerationReason
  | CleanReason;
