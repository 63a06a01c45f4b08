import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Entry, EntryNo } from '../../../src/greenhouse/entry.ts';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import type { LocalDate } from '../../../src/greenhouse/local-time.ts';
import { emptyLogbook, type Logbook, withEntries } from '../../../src/logbook/logbook.ts';
import { emptyWaterFold, refolded, type WaterSources } from '../../../src/logbook/water-fold.ts';

/**
 * What it costs to know a system's water after a year of its log: from nothing, and from the last
 * checkpoint with one more entry. A level every other evening, a fill every fifth day, weather of
 * every day. Medians of many runs; the figures wanted are those of a common laptop.
 */
const YEAR_DAYS = 365;
const RUNS = 15;
const WANTED_MS = { 'from a checkpoint': 5, 'from nothing': 200 } as const;
const DAY_MS = 86_400_000;
const startMs = Date.UTC(2027, 0, 1, 8);
const nowMs = startMs + YEAR_DAYS * DAY_MS;

const demo = fileURLToPath(new URL('../../../greenhouses/quarry-lane.json', import.meta.url));
const read = parseGreenhouseText(readFileSync(demo, 'utf8'));
if (!read.ok) throw new Error(`the demo greenhouse is faulty: ${JSON.stringify(read.faults)}`);
const [system] = read.greenhouse.systems;
const greenhouse = { ...read.greenhouse, systems: [system!], chores: [] };

const year = withEntries(emptyLogbook, yearOfEntries());
const before = sourcesOf(year);
const folded = refolded(emptyWaterFold, before, nowMs);
const after = sourcesOf(
  withEntries(year, [entryOf(year.all.length + 1, 'level', 512, nowMs + 3_600_000)]),
);
const figures = {
  'from a checkpoint': medianMs(() => refolded(folded, after, nowMs + 2 * 3_600_000)),
  'from nothing': medianMs(() => refolded(emptyWaterFold, before, nowMs)),
};
for (const name of ['from a checkpoint', 'from nothing'] as const) {
  console.log(
    `a year's log of one system (${String(year.all.length)} entries) folded ${name}: ${figures[name].toFixed(1)} ms (under ${String(WANTED_MS[name])} ms is wanted)`,
  );
}

function yearOfEntries(): readonly Entry[] {
  const entries: Entry[] = [];
  let litres = 600;
  for (let day = 0; day < YEAR_DAYS; day += 1) {
    const atMs = startMs + day * DAY_MS;
    litres -= 20 + 6 * Math.sin(day * 1.7) + 15 * Math.sin((day / YEAR_DAYS) * Math.PI);
    if (day % 2 === 0) entries.push(entryOf(entries.length + 1, 'level', Math.round(litres), atMs));
    if (day % 5 === 4) {
      const added = Math.round(600 - litres);
      entries.push(entryOf(entries.length + 1, 'top-up', added, atMs + 3_600_000));
      litres = 600;
    }
  }
  return entries;
}

function entryOf(no: number, quantity: 'level' | 'top-up', value: number, atMs: number): Entry {
  const source = { kind: 'member', handle: 'ines', messageId: String(no) } as const;
  const at = { atMs, recordedAtMs: atMs, source, struck: null };
  return { no: no as EntryNo, system: system!.id, quantity, value, ...at };
}

function sourcesOf(logbook: Logbook): WaterSources {
  const days = Array.from({ length: YEAR_DAYS }, (_, day) => {
    const date = new Date(startMs + day * DAY_MS).toISOString().slice(0, 10) as LocalDate;
    const warmth = 10 + 10 * Math.sin((day / YEAR_DAYS) * Math.PI);
    return { date, tMinC: warmth - 4, tMaxC: warmth + 5, observed: true, toldOn: date };
  });
  const weather = new Map(days.map((day) => [day.date, day]));
  return { greenhouse, createdAtMs: startMs, logbook, rounds: [], weather };
}

function medianMs(work: () => unknown): number {
  const times = Array.from({ length: RUNS }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  });
  return times.toSorted((one, other) => one - other)[Math.floor(RUNS / 2)]!;
}
