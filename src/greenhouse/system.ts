import type { LocalDate } from './local-time.ts';

export type SystemId = string & { readonly __brand: 'SystemId' };

/** The id that the n-th system of a greenhouse file gets (counted from 1). */
export function systemIdAt(position: number): SystemId {
  return `s${position}` as SystemId;
}

export const methods = [
  'flood-and-drain',
  'deep-water-culture',
  'nutrient-film',
  'non-circulating',
  'drip',
  'aeroponic',
] as const;
export type Method = (typeof methods)[number];

export const aerationKinds = ['air-stones', 'venturi', 'air-pump'] as const;
export type AerationKind = (typeof aerationKinds)[number];

/** A closed range, lowest and highest value wanted. */
export type Range = readonly [number, number];

export interface Aeration {
  readonly kind: AerationKind;
  readonly minutesPerHour: number;
}

export interface Floods {
  readonly everyMin: number;
  readonly fillMin: number;
}

export interface GrownCrop {
  readonly crop: string;
  readonly plants: number;
  /** null: nobody said. */
  readonly from: LocalDate | null;
  readonly to: LocalDate;
}

export interface System {
  readonly id: SystemId;
  readonly name: string;
  readonly aliases: readonly string[];
  readonly method: Method;
  readonly brimL: number;
  readonly lowL: number;
  /** Depth of solution at the brim; the walls are straight. */
  readonly depthCm: number;
  readonly crop: string | null;
  readonly plants: number;
  /** When what grows in it was planted; absent: nobody said. */
  readonly plantedOn?: LocalDate;
  /** What grew in it before, the latest last. */
  readonly grown?: readonly GrownCrop[];
  readonly ph: Range;
  readonly ecMsPerCm: Range;
  readonly waterTemperatureC: Range;
  readonly aeration: Aeration | null;
  readonly floods: Floods | null;
}

/** Litres in a straight-sided reservoir filled to a depth: litres = brim × depth / depth at the brim. */
export function litresAtDepth(system: System, cm: number): number {
  return (system.brimL * cm) / system.depthCm;
}
