/**
 * The words of the domain.
 *
 * - **greenhouse**: one household's growing place, with one clock, one climate and one mains supply.
 * - **system**: one hydroponic set-up with a solution of its own: a flood bench, a row of tubs, a film run, a shelf of jars.
 * - **reservoir**: the volume of solution a system draws on; full at its **brim**, in trouble at its **low mark**.
 * - **member**: a person in the chat; a **grower** owns the greenhouse, a **helper** steps in.
 * - **entry**: one fact in the logbook, append-only; it is struck out, never erased.
 * - **duty**: something that needs doing, on a date, with a reason.
 * - **trip**: one visit to the greenhouse, on which several duties ride together.
 * - **round**: the morning message with the day's duties.
 * - **probe**: a hand meter or fixed sensor, calibrated in buffers or standards.
 * - **stock**: what the household keeps in bottles.
 */

import type { LocalDate, LocalTime } from './local-time.ts';
import type { Member } from './member.ts';
import type { ReferenceQuantity } from './quantity.ts';
import type { System, SystemId } from './system.ts';

export const riskSettings = ['careful', 'normal', 'relaxed'] as const;
/** How much running low may be risked to save a trip; it holds for the whole greenhouse. */
export type RiskSetting = (typeof riskSettings)[number];

export type VolumeUnit = 'L' | 'gal';
export type TemperatureUnit = 'C' | 'F';
export type ConductivityUnit = 'mS/cm' | 'uS/cm' | 'ppm' | 'CF';

/** The units people of this greenhouse speak in; everything stored is in litres, °C and mS/cm. */
export interface SpokenUnits {
  readonly volume: VolumeUnit;
  readonly temperature: TemperatureUnit;
  readonly conductivity: ConductivityUnit;
  /** ppm on the household's meters for 1 mS/cm: 500, 640 or 700. */
  readonly tdsFactor: number;
}

/** The water that top-ups are made with. */
export interface SourceWater {
  readonly name: string;
  readonly ecMsPerCm: number;
  readonly alkalinityMeqL: number;
}

export interface Container {
  readonly name: string;
  readonly litres: number;
}

/** Rain water kept in a butt, barrel or tank of a known size. */
export interface RainButt {
  readonly litres: number;
  /** What it held at `asOfMs`; null: nobody has said. */
  readonly heldL: number | null;
  readonly asOfMs: number;
  /** Water that nobody names comes from it. */
  readonly isUsual: boolean;
}

export interface Probe {
  readonly name: string;
  readonly measures: readonly ReferenceQuantity[];
  readonly calibratedOn: LocalDate | null;
}

export interface StockItem {
  readonly product: string;
  readonly mL: number;
  /** A pH product, from its label: acid or alkali in it, meq/mL (the same as mol/L of a strong one). */
  readonly meqPerMl?: number;
  /** A concentrate, from its label: mS/cm that 1 mL/L of it and of its partner together add. */
  readonly riseMsPerCmByMlPerL?: number;
}

export interface Chore {
  readonly name: string;
  readonly system: SystemId | null;
  readonly everyDays: number;
  readonly lastDoneOn: LocalDate | null;
}

/** A greenhouse as it is set up; what happens in it is in the logbook. */
export interface Greenhouse {
  readonly name: string;
  readonly timeZone: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly elevationM: number;
  /** Local time of the morning round. */
  readonly morning: LocalTime;
  readonly risk: RiskSetting;
  readonly units: SpokenUnits;
  readonly water: SourceWater;
  readonly containers: readonly Container[];
  /** Absent: there is none, or its size is not known. */
  readonly rainButt?: RainButt;
  readonly members: readonly Member[];
  readonly systems: readonly System[];
  /** Systems that were given up: hidden, but what the logbook says of them keeps its place. */
  readonly formerSystems?: readonly System[];
  readonly probes: readonly Probe[];
  readonly stock: readonly StockItem[];
  readonly chores: readonly Chore[];
}
