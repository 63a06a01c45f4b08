import fc from 'fast-check';
import type {
  Chore,
  Greenhouse,
  Probe,
  SpokenUnits,
  StockItem,
} from '../../src/greenhouse/greenhouse.ts';
import { riskSettings } from '../../src/greenhouse/greenhouse.ts';
import type { LocalDate, LocalTime } from '../../src/greenhouse/local-time.ts';
import type { Member } from '../../src/greenhouse/member.ts';
import {
  aerationKinds,
  methods,
  type Range,
  type System,
  systemIdAt,
} from '../../src/greenhouse/system.ts';

const letters = Array.from('abcdeghinorstuäößéñ漢字жшΩ\'"-');

/** Names as a household may write them: several words, accents, other alphabets, quotes. */
const word = fc
  .oneof(
    fc.string({
      unit: fc.constantFrom(...letters),
      minLength: 1,
      maxLength: 10,
    }),
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 8 }),
  )
  .filter((text) => !/[\p{Cc}\s]/u.test(text) && text.trim() === text && text !== '__proto__');
const words = fc.array(word, { minLength: 1, maxLength: 3 }).map((parts) => parts.join(' '));

function folded(text: string): string {
  return text.normalize('NFC').toLowerCase();
}

const localDate = fc
  .integer({ min: 0, max: 36_500 })
  .map((days) => new Date(days * 86_400_000).toISOString().slice(0, 10) as LocalDate);
const morning = fc
  .integer({ min: 0, max: 24 * 60 - 1 })
  .map((minute) => new Date(minute * 60_000).toISOString().slice(11, 16) as LocalTime);

function between(min: number, max: number) {
  return fc.double({ min, max, noNaN: true }).map((value) => (value === 0 ? 0 : value));
}

function range(min: number, max: number): fc.Arbitrary<Range> {
  return fc
    .tuple(between(min, max), between(min, max))
    .filter(([one, other]) => one !== other)
    .map(([one, other]) => [Math.min(one, other), Math.max(one, other)]);
}

const units: fc.Arbitrary<SpokenUnits> = fc.record({
  volume: fc.constantFrom('L', 'gal'),
  temperature: fc.constantFrom('C', 'F'),
  conductivity: fc.constantFrom('mS/cm', 'uS/cm', 'ppm', 'CF'),
  tdsFactor: fc.constantFrom(500, 640, 700),
});

const unnamedSystem = fc
  .record({
    method: fc.constantFrom(...methods),
    lowL: between(0, 500),
    airGapL: between(0.5, 500),
    depthCm: between(1, 200),
    crop: fc.option(words),
    plants: fc.nat({ max: 500 }),
    ph: range(0, 14),
    ecMsPerCm: range(0, 20),
    waterTemperatureC: range(-5, 60),
    aeration: fc.option(
      fc.record({ kind: fc.constantFrom(...aerationKinds), minutesPerHour: between(0, 60) }),
    ),
    floods: fc.option(fc.record({ everyMin: between(61, 600), fillMin: between(1, 60) })),
  })
  .map(({ airGapL, ...system }) => ({ ...system, brimL: system.lowL + airGapL }));

/** Systems share out a pool of names that differ, two or three to each: its name and its aliases. */
const systems: fc.Arbitrary<readonly System[]> = fc
  .array(unnamedSystem, { minLength: 1, maxLength: 5 })
  .chain((bare) =>
    fc
      .uniqueArray(words, { selector: folded, minLength: bare.length, maxLength: 3 * bare.length })
      .map((names) =>
        bare.map(
          (system, i): System => ({
            ...system,
            id: systemIdAt(i + 1),
            name: names[i]!,
            aliases: names.filter((_, j) => j >= bare.length && j % bare.length === i),
          }),
        ),
      ),
  );

const helper: fc.Arbitrary<Member> = fc.record(
  {
    handle: word,
    name: words,
    role: fc.constantFrom('grower', 'helper'),
    language: fc.constantFrom('en', 'de'),
    handlesAcids: fc.boolean(),
    units: fc.constantFrom<NonNullable<Member['units']>>(
      { volume: 'gal' },
      { temperature: 'F', conductivity: 'ppm', tdsFactor: 700 },
    ),
  },
  { requiredKeys: ['handle', 'name', 'role', 'language'] },
);

const bottle: fc.Arbitrary<StockItem> = fc.record(
  {
    product: words,
    mL: between(0, 10_000),
    meqPerMl: between(0.5, 40),
    riseMsPerCmByMlPerL: between(0.05, 5),
  },
  { requiredKeys: ['product', 'mL'] },
);
const members = fc
  .uniqueArray(helper, { selector: ({ handle }) => folded(handle), minLength: 1, maxLength: 5 })
  .map(([first, ...others]): readonly Member[] => [{ ...first!, role: 'grower' }, ...others]);

const probe: fc.Arbitrary<Probe> = fc.record({
  name: words,
  measures: fc.uniqueArray(fc.constantFrom('ph', 'ec', 'dissolved-oxygen'), { minLength: 1 }),
  calibratedOn: fc.option(localDate),
});

// A JSON object lists names that look like whole numbers first, so an order among them is not kept.
const containers = fc
  .uniqueArray(fc.record({ name: words, litres: between(0.1, 200) }), {
    selector: ({ name }) => folded(name),
    maxLength: 4,
  })
  .map((list) => list.filter(({ name }) => !/^\d+$/.test(name)));

function chores(all: readonly System[]): fc.Arbitrary<readonly Chore[]> {
  const chore = fc.record({
    name: words,
    system: fc.option(fc.constantFrom(...all.map((system) => system.id))),
    everyDays: fc.integer({ min: 1, max: 400 }),
    lastDoneOn: fc.option(localDate),
  });
  return fc.uniqueArray(chore, { selector: ({ name }) => folded(name), maxLength: 4 });
}

/** Any greenhouse that a greenhouse file can hold. */
export const greenhouses: fc.Arbitrary<Greenhouse> = systems.chain((all) =>
  fc.record({
    name: words,
    timeZone: fc.constantFrom('Europe/Dublin', 'America/Chicago', 'Pacific/Auckland', 'UTC'),
    latitude: between(-90, 90),
    longitude: between(-180, 180),
    elevationM: between(-500, 9000),
    morning,
    risk: fc.constantFrom(...riskSettings),
    units,
    water: fc.record({
      name: words,
      ecMsPerCm: between(0, 20),
      alkalinityMeqL: between(0, 50),
    }),
    containers,
    members,
    systems: fc.constant(all),
    probes: fc.uniqueArray(probe, { selector: ({ name }) => folded(name), maxLength: 3 }),
    stock: fc.uniqueArray(bottle, {
      selector: ({ product }) => folded(product),
      maxLength: 4,
    }),
    chores: chores(all),
  }),
);
