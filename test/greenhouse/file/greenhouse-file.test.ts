import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import { readGreenhouseFile } from '../../../src/greenhouse/file/read-greenhouse-file.ts';
import { writeGreenhouseFile } from '../../../src/greenhouse/file/write-greenhouse-file.ts';
import { greenhouses } from '../greenhouse-arbitrary.ts';

const text = readFileSync(
  new URL('../../../greenhouses/quarry-lane.json', import.meta.url),
  'utf8',
);

type Loose = Record<string, unknown>;

/** The demo file with some of its fields changed: a path like `systems.2.lowL`. */
function demoWith(changes: Readonly<Record<string, unknown>>): unknown {
  const file = JSON.parse(text) as Loose;
  for (const [path, value] of Object.entries(changes)) {
    const steps = path.split('.');
    const last = steps.pop()!;
    let place: Loose = file;
    for (const step of steps) place = place[step] as Loose;
    if (value === undefined) Reflect.deleteProperty(place, last);
    else place[last] = value;
  }
  return file;
}

function faultsOf(json: unknown) {
  const read = readGreenhouseFile(json);
  return read.ok ? [] : read.faults;
}

describe('the greenhouse file', () => {
  it('reads the demo greenhouse without a notice', () => {
    const read = parseGreenhouseText(text);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(read.notices).toEqual([]);
    expect(read.greenhouse.systems.map((system) => [system.id, system.name])).toEqual([
      ['s1', 'North bench'],
      ['s2', 'Bucket row'],
      ['s3', 'Gutter run'],
      ['s4', 'Jar shelf'],
    ]);
    expect(read.greenhouse.systems[0]).toMatchObject({
      ecMsPerCm: [2, 2.8],
      floods: { everyMin: 240, fillMin: 7 },
      aeration: null,
    });
    expect(read.greenhouse.water).toEqual({
      name: 'rain barrel',
      ecMsPerCm: 0.05,
      alkalinityMeqL: 0.1,
    });
    expect(read.greenhouse.containers).toEqual([
      { name: 'can', litres: 10 },
      { name: 'jug', litres: 2 },
    ]);
    expect(read.greenhouse.chores[0]?.system).toBe('s1');
  });

  it('reads back what it wrote as an equal greenhouse', () => {
    fc.assert(
      fc.property(greenhouses, (greenhouse) => {
        const written = JSON.stringify(writeGreenhouseFile(greenhouse));
        expect(parseGreenhouseText(written)).toEqual({ ok: true, greenhouse, notices: [] });
      }),
    );
  });

  it('takes what a small household would leave out as given', () => {
    const read = readGreenhouseFile({
      format: 1,
      greenhouse: {
        name: 'Sill',
        timeZone: 'Europe/Berlin',
        latitude: 51,
        longitude: 7,
        morning: '07:00',
      },
      members: [{ handle: 'kim', name: 'Kim', role: 'grower' }],
      systems: [
        {
          name: 'Jars',
          method: 'non-circulating',
          brimL: 24,
          lowL: 4,
          depthCm: 18,
          ph: [5.5, 6.5],
          ec: [1, 1.6],
          waterTemperatureC: [14, 24],
        },
      ],
    });
    expect(read).toMatchObject({
      ok: true,
      greenhouse: {
        elevationM: 0,
        units: { volume: 'L', temperature: 'C', conductivity: 'mS/cm', tdsFactor: 500 },
        water: { name: 'water', ecMsPerCm: 0, alkalinityMeqL: 0 },
        containers: [],
        members: [{ language: 'en' }],
        systems: [{ aliases: [], crop: null, plants: 0, aeration: null, floods: null }],
        probes: [],
        stock: [],
        chores: [],
      },
    });
  });

  it.each([
    ['US gal', 'F', 'ppm', { volume: 'gal', temperature: 'F', conductivity: 'ppm' }],
    ['gal', '°C', 'µS/cm', { volume: 'gal', temperature: 'C', conductivity: 'uS/cm' }],
    ['l', 'c', 'μS/cm', { volume: 'L', temperature: 'C', conductivity: 'uS/cm' }],
    ['L', 'C', 'cf', { volume: 'L', temperature: 'C', conductivity: 'CF' }],
  ])('takes the units %s, %s and %s', (volume, temperature, conductivity, units) => {
    const read = readGreenhouseFile(
      demoWith({ 'greenhouse.units': { volume, temperature, conductivity, tdsFactor: 700 } }),
    );
    expect(read).toMatchObject({ ok: true, greenhouse: { units: { ...units, tdsFactor: 700 } } });
  });

  it('ignores what it does not know, and says so', () => {
    const read = readGreenhouseFile(
      demoWith({ shade: 1, 'greenhouse.glass': 'double', 'systems.2.pump': { watts: 20 } }),
    );
    expect(read).toMatchObject({
      ok: true,
      notices: [
        'greenhouse.glass: not known here, ignored',
        'systems[2].pump: not known here, ignored',
        'shade: not known here, ignored',
      ],
    });
  });

  it('tells every fault at once, those between parts as well', () => {
    const faults = faultsOf(
      demoWith({
        'greenhouse.timeZone': 'Europe/Dubln',
        'greenhouse.morning': '7:00',
        'greenhouse.containers': { can: 0, CAN: 3 },
        'members.0.role': 'owner',
        'members.1.handle': 'Ines',
        'members.2.language': 'fr',
        'systems.1.aliases': ['north', 4],
        'systems.1.ph': [6.2, 5.5],
        'systems.2.lowL': 120,
        'systems.3.method': 'wick',
        'systems.3.brimL': undefined,
        'probes.0.measures': ['humidity'],
        'probes.1.calibratedOn': '2027-02-30',
        'chores.0.system': 'South bench',
      }),
    );
    expect(Object.fromEntries(faults.map(({ path, ...rest }) => [path, rest]))).toEqual({
      'greenhouse.timeZone': {
        found: '"Europe/Dubln"',
        expected: 'a time zone of the IANA database, like Europe/Dublin',
      },
      'greenhouse.morning': {
        found: '"7:00"',
        expected: 'when the morning round goes out, a time of day like 07:00',
      },
      'greenhouse.containers.can': {
        found: '0',
        expected: 'litres that it holds, above 0 and at most 10000',
      },
      'greenhouse.containers.CAN': {
        found: '"CAN"',
        expected:
          'something other than greenhouse.containers.can, in capital and small letters alike',
      },
      members: { found: 'a list of 4', expected: 'at least one member with the role grower' },
      'members[0].role': { found: '"owner"', expected: 'a role: grower or helper' },
      'members[1].handle': {
        found: '"Ines"',
        expected: 'something other than members[0].handle, in capital and small letters alike',
      },
      'members[2].language': { found: '"fr"', expected: 'a language: en or de' },
      'systems[1].aliases[0]': {
        found: '"north"',
        expected: 'something other than systems[0].aliases[2], in capital and small letters alike',
      },
      'systems[1].aliases[1]': {
        found: '4',
        expected: 'another name for it, one line of 1 to 80 characters',
      },
      'systems[1].ph': {
        found: '[6.2,5.5]',
        expected: 'two numbers, the lower first: the pH wanted',
      },
      'systems[2].lowL': { found: '120', expected: 'less than brimL, which is 120' },
      'systems[3].method': {
        found: '"wick"',
        expected:
          'how it grows: flood-and-drain, deep-water-culture, nutrient-film, non-circulating, drip or aeroponic',
      },
      'systems[3].brimL': {
        found: 'nothing',
        expected: 'litres when full to the brim, above 0 and at most 1000000',
      },
      'probes[0].measures[0]': {
        found: '"humidity"',
        expected: 'what it measures: ph, ec or dissolved-oxygen',
      },
      'probes[1].calibratedOn': {
        found: '"2027-02-30"',
        expected: 'when it was last calibrated, a date like 2027-05-04',
      },
      'chores[0].system': {
        found: '"South bench"',
        expected: "a system's name: North bench, Bucket row, Gutter run, Jar shelf",
      },
    });
  });

  it('never fails on any JSON value, and finds a fault in each that is not a greenhouse', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (json) => {
        expect(faultsOf(json).length).toBeGreaterThan(0);
      }),
    );
  });

  it('finds the fault when any one field of the demo is replaced by nonsense', () => {
    const paths = fieldsOf(JSON.parse(text), '');
    expect(paths.length).toBeGreaterThan(80);
    for (const path of paths) {
      expect(faultsOf(demoWith({ [path]: ['nonsense', {}] })).length, path).toBeGreaterThan(0);
    }
  });

  it('asks for a format that it knows', () => {
    expect(faultsOf(demoWith({ format: 2 }))).toEqual([
      { path: 'format', found: '2', expected: '1, the only format that this version reads' },
    ]);
  });

  it('lets a system repeat its own name, and a chore of one name stand for two systems', () => {
    const chore = { name: 'wipe', everyDays: 3 };
    const read = readGreenhouseFile(
      demoWith({
        'systems.0.aliases': ['north bench', 'bench'],
        chores: [
          { ...chore, system: 'north bench' },
          { ...chore, system: 'Jar shelf' },
        ],
      }),
    );
    expect(read).toMatchObject({
      ok: true,
      greenhouse: { chores: [{ system: 's1' }, { system: 's4' }] },
    });
  });

  it('says where a text stops being JSON', () => {
    expect(parseGreenhouseText('{\n  "format": 1,\n  "members": [}\n')).toMatchObject({
      ok: false,
      faults: [{ path: 'line 3, column 15', found: '"}"', expected: 'JSON' }],
    });
    expect(parseGreenhouseText('{ "format": 1')).toMatchObject({
      faults: [{ path: 'line 1, column 14', found: 'the end of the file' }],
    });
    expect(parseGreenhouseText('{"a": tru}')).toMatchObject({
      faults: [{ path: 'line 1, column 10' }],
    });
    expect(parseGreenhouseText('{"a": 1} x')).toMatchObject({
      faults: [{ path: 'line 1, column 10' }],
    });
    expect(parseGreenhouseText('')).toMatchObject({ faults: [{ found: 'the end of the file' }] });
  });
});

function fieldsOf(value: unknown, path: string): readonly string[] {
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, item]) =>
    fieldsOf(item, path ? `${path}.${key}` : key),
  );
}
