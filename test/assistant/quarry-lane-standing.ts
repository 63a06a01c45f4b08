import { readFileSync } from 'node:fs';
import { emptyStanding, type Standing, withChanges } from '../../src/assistant/standing.ts';
import type { Entry, EntryDraft, EntryNo } from '../../src/greenhouse/entry.ts';
import { parseGreenhouseText } from '../../src/greenhouse/file/parse-greenhouse-text.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import { type SystemId, systemIdAt } from '../../src/greenhouse/system.ts';
import type { WeatherDay } from '../../src/greenhouse/weather.ts';

export const bench = systemIdAt(1);
export const buckets = systemIdAt(2);
export const gutters = systemIdAt(3);
export const jars = systemIdAt(4);

export const quarryLane: Greenhouse = (() => {
  const text = readFileSync(new URL('../../greenhouses/quarry-lane.json', import.meta.url), 'utf8');
  const read = parseGreenhouseText(text);
  if (!read.ok) throw new Error('the demo greenhouse does not read');
  return read.greenhouse;
})();

/** An entry as a test writes it: who, when and what; the rest is usual. */
export interface Said extends Partial<Omit<EntryDraft, 'atMs'>> {
  readonly quantity: Entry['quantity'];
  readonly at: string;
  readonly by?: string;
}

export interface World {
  readonly greenhouse?: Greenhouse;
  readonly createdAt?: string;
  readonly weather?: readonly WeatherDay[];
}

export const may = (day: number, time = '08:20'): string =>
  `2027-05-${String(day).padStart(2, '0')}T${time}:00+01:00`;

/** Quarry Lane with these entries logged, as it stands at `nowIso`. */
export function standingWith(
  said: readonly Said[],
  nowIso: string,
  { greenhouse = quarryLane, createdAt = may(1), weather = [] }: World = {},
): Standing {
  const entries = said.map(
    ({ at, by = 'ines', ...draft }, position): Entry => ({
      system: null,
      value: 1,
      ...draft,
      atMs: Date.parse(at),
      no: (position + 1) as EntryNo,
      source: { kind: 'member', handle: by, messageId: `m${position}` },
      recordedAtMs: Date.parse(at),
      struck: null,
    }),
  );
  return withChanges(
    emptyStanding(greenhouse, Date.parse(createdAt)),
    { entries, strikes: [], weather, mornings: [], greenhouse: null, arrangements: [] },
    0,
    Date.parse(nowIso),
  );
}

/** What makes a system's water known: its level, its EC, and its warmth. */
export function known(system: SystemId, litres: number, ec: number, at: string): readonly Said[] {
  return [
    { system, quantity: 'level', value: litres, at },
    { system, quantity: 'ec', value: ec, at },
    { system, quantity: 'water-temperature', value: 20, at },
  ];
}
