import type { Entry, EntryNo } from '../../greenhouse/entry.ts';
import { believable, isReading, type Quantity, unitOf } from '../../greenhouse/quantity.ts';
import type { Standing } from '../standing.ts';

/** One reading of a fixed sensor, as it reports it. */
export interface SensorReading {
  /** A system's full name, or null for the greenhouse. */
  readonly system: string | null;
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
}

export type SensorOutcome =
  | { readonly ok: true; readonly entry: Entry }
  | {
      readonly ok: false;
      readonly field: string;
      readonly found: string;
      readonly expected: string;
    };

/** Other units that sensors speak, and how they become ours. */
const conversions: Readonly<Record<string, (value: number) => number>> = {
  '°F>°C': (value) => ((value - 32) * 5) / 9,
  'µS/cm>mS/cm': (value) => value / 1000,
  'uS/cm>mS/cm': (value) => value / 1000,
  'dS/m>mS/cm': (value) => value,
  'C>°C': (value) => value,
  'ph>pH': (value) => value,
};

/** A reading becomes an entry, or says what is wrong with it. */
export function readSensor(
  standing: Standing,
  reading: SensorReading,
  nowMs: number,
  messageId: string,
): SensorOutcome {
  const { greenhouse, logbook } = standing;
  const system = greenhouse.systems.find(({ name }) => name === reading.system) ?? null;
  if (reading.system !== null && !system) {
    const names = greenhouse.systems.map(({ name }) => name).join(', ');
    return fault('sensor.system', reading.system, `null or one of: ${names}`);
  }
  const quantity = reading.quantity as Quantity;
  if (!(reading.quantity in unitOf) || !isReading(quantity)) {
    return fault('sensor.quantity', reading.quantity, 'a reading, such as ph, ec or level');
  }
  const unit = unitOf[quantity];
  const convert =
    reading.unit === unit ? (value: number) => value : conversions[`${reading.unit}>${unit}`];
  if (!convert) return fault('sensor.unit', reading.unit, unit);
  const value = convert(reading.value);
  const bounds = believable(quantity, system);
  if (bounds && (value < bounds[0] || value > bounds[1])) {
    return fault('sensor.value', `${value} ${unit}`, `${bounds[0]} to ${bounds[1]} ${unit}`);
  }
  return {
    ok: true,
    entry: {
      no: (logbook.all.length + 1) as EntryNo,
      system: system?.id ?? null,
      quantity,
      value,
      atMs: nowMs,
      source: { kind: 'sensor', messageId },
      recordedAtMs: nowMs,
      struck: null,
    },
  };
}

function fault(field: string, found: string, expected: string): SensorOutcome {
  return { ok: false, field, found, expected };
}
