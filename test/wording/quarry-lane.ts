import { readFileSync } from 'node:fs';
import type { Entry, EntryDraft, EntryNo } from '../../src/greenhouse/entry.ts';
import { parseGreenhouseText } from '../../src/greenhouse/file/parse-greenhouse-text.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import type { LocalDate } from '../../src/greenhouse/local-time.ts';
import type { Quantity } from '../../src/greenhouse/quantity.ts';
import { systemIdAt } from '../../src/greenhouse/system.ts';
import type { DutyLine } from '../../src/planning/duty-line.ts';
import type { Reader } from '../../src/wording/wording.ts';

function readDemo(): Greenhouse {
  const read = parseGreenhouseText(readFileSync('greenhouses/quarry-lane.json', 'utf8'));
  if (!read.ok) throw new Error(`the demo greenhouse has faults: ${JSON.stringify(read.faults)}`);
  return read.greenhouse;
}

export const quarryLane = readDemo();

/** The same household, speaking in gallons, Fahrenheit and ppm. */
export const americanLane: Greenhouse = {
  ...quarryLane,
  timeZone: 'America/Chicago',
  units: { volume: 'gal', temperature: 'F', conductivity: 'ppm', tdsFactor: 700 },
  containers: [{ name: 'bucket', litres: 18.92705892 }],
};

export const bench = systemIdAt(1);
export const buckets = systemIdAt(2);
export const gutters = systemIdAt(3);
export const jars = systemIdAt(4);

/** Tuesday 4 May 2027, 08:20 in Dublin. */
export const nowMs = Date.parse('2027-05-04T08:20:00+01:00');
export const today = '2027-05-04' as LocalDate;
export const date = (text: string): LocalDate => text as LocalDate;

export const reader: Reader = { greenhouse: quarryLane, nowMs };

/** An entry of Tomas's, of now unless said otherwise. */
export function entry(
  quantity: Quantity,
  value: number,
  more: Partial<Omit<EntryDraft, 'quantity' | 'value'>> = {},
): Entry {
  return {
    system: buckets,
    quantity,
    value,
    atMs: nowMs,
    ...more,
    no: 1 as EntryNo,
    source: { kind: 'member', handle: 'tomas', messageId: 'm1' },
    recordedAtMs: nowMs,
    struck: null,
  };
}

/** 43 litres for the bench, due today. */
export const benchTopUp: DutyLine = {
  duty: { kind: 'top-up', system: bench, dueOn: today, litres: 43 },
  ridesFrom: null,
  reason: {
    kind: 'water',
    isLevelKnown: true,
    litresNow: 180.4,
    litresSd: 5.2,
    usePerDayL: 24.3,
    lowL: 150,
    lowOnEarly: date('2027-05-06'),
    lowOnLikely: date('2027-05-07'),
    fillToL: 600,
    wantsLevel: false,
  },
};

export const jarTopUp: DutyLine = {
  duty: { kind: 'top-up', system: jars, dueOn: date('2027-05-08'), litres: 2.5, alongside: true },
  ridesFrom: null,
  reason: {
    kind: 'water',
    isLevelKnown: true,
    litresNow: 12.5,
    litresSd: 0.6,
    usePerDayL: 0.64,
    lowL: 4,
    lowOnEarly: date('2027-05-14'),
    lowOnLikely: date('2027-05-17'),
    fillToL: 15,
    wantsLevel: false,
  },
};

export function check(system: typeof bench, more: Partial<DutyLine['duty']> = {}): DutyLine {
  return {
    duty: { kind: 'check', system, dueOn: today, ...more },
    ridesFrom: today,
    reason: {
      kind: 'not-measured',
      quantities: ['ph', 'ec'],
      lastOn: date('2027-05-03'),
      drift: null,
      rhythm: {
        quantity: 'ph',
        everyDays: 4,
        lowest: 5.5,
        highest: 6.2,
        foreseen: { perDay: -0.06, expected: 5.62, chanceOut: 0.27 },
        worthALookChance: 0.25,
      },
    },
  };
}

export const benchCheck: DutyLine = check(bench);

export const tieUp: DutyLine = {
  duty: {
    kind: 'chore',
    system: bench,
    chore: 'tie up the tomatoes',
    dueOn: date('2027-05-05'),
    alongside: true,
  },
  ridesFrom: today,
  reason: { kind: 'chore', everyDays: 5, lastDoneOn: date('2027-04-30') },
};
