import { z } from 'zod';
import {
  type ConductivityUnit,
  riskSettings,
  type TemperatureUnit,
  type VolumeUnit,
} from '../greenhouse.ts';
import { languages } from '../member.ts';
import type { ReferenceQuantity } from '../quantity.ts';
import {
  listOf,
  localDate,
  localTime,
  name,
  numberFrom,
  objectOf,
  oneOf,
  oneWord,
  positiveUpTo,
  spelling,
  timeZone,
  wholeFrom,
} from './fields.ts';
import { systemSchema } from './system-schema.ts';

const volumeSpellings: Readonly<Record<string, VolumeUnit>> = {
  L: 'L',
  gal: 'gal',
  'US gal': 'gal',
};
const temperatureSpellings: Readonly<Record<string, TemperatureUnit>> = {
  C: 'C',
  F: 'F',
  '°C': 'C',
  '°F': 'F',
};
/** Both letters that stand for micro: the sign U+00B5 and the Greek U+03BC. */
const conductivitySpellings: Readonly<Record<string, ConductivityUnit>> = {
  'mS/cm': 'mS/cm',
  'uS/cm': 'uS/cm',
  '\u00b5S/cm': 'uS/cm',
  '\u03bcS/cm': 'uS/cm',
  ppm: 'ppm',
  CF: 'CF',
};
const calibrated: readonly ReferenceQuantity[] = ['ph', 'ec', 'dissolved-oxygen'];

const unitFields = {
  volume: spelling(volumeSpellings, 'the unit of volume'),
  temperature: spelling(temperatureSpellings, 'the unit of temperature'),
  conductivity: spelling(conductivitySpellings, 'the unit of conductivity'),
  tdsFactor: numberFrom(400, 1000, 'ppm for 1 mS/cm, mostly 500, 640 or 700'),
};
const unitsExpected = 'an object with volume, temperature, conductivity and tdsFactor';

const unitsSchema = objectOf(
  {
    volume: unitFields.volume.default('L'),
    temperature: unitFields.temperature.default('C'),
    conductivity: unitFields.conductivity.default('mS/cm'),
    tdsFactor: unitFields.tdsFactor.default(500),
  },
  unitsExpected,
);

const ownUnitsSchema = objectOf(
  {
    volume: unitFields.volume.exactOptional(),
    temperature: unitFields.temperature.exactOptional(),
    conductivity: unitFields.conductivity.exactOptional(),
    tdsFactor: unitFields.tdsFactor.exactOptional(),
  },
  unitsExpected,
);

const waterSchema = objectOf(
  {
    name: name('what the water is called').default('water'),
    ec: numberFrom(0, 20, 'EC of the water in mS/cm').default(0),
    alkalinityMeqL: numberFrom(0, 50, 'alkalinity of the water in meq/L').default(0),
  },
  'an object with name, ec and alkalinityMeqL',
);

const rainButtSchema = objectOf(
  {
    litres: positiveUpTo(1_000_000, 'litres that it holds'),
    heldL: numberFrom(0, 1_000_000, 'litres in it').nullable().default(null),
    asOfMs: numberFrom(0, 8.64e15, 'when that was, in ms since 1970').default(0),
    isUsual: z
      .boolean({ error: 'true or false: water that nobody names comes from it' })
      .default(true),
  },
  'an object with litres',
);

const placeSchema = objectOf(
  {
    name: name('the name of the greenhouse'),
    timeZone: timeZone(),
    latitude: numberFrom(-90, 90, 'degrees north'),
    longitude: numberFrom(-180, 180, 'degrees east'),
    elevationM: numberFrom(-500, 9000, 'metres above the sea').default(0),
    morning: localTime('when the morning round goes out'),
    risk: oneOf(riskSettings, 'how much running low may be risked to save a trip').default(
      'normal',
    ),
    units: unitsSchema.prefault({}),
    water: waterSchema.prefault({}),
    containers: z
      .record(name('a name'), positiveUpTo(10_000, 'litres that it holds'), {
        error: 'an object of names and litres',
      })
      .default({}),
    rainButt: rainButtSchema.exactOptional(),
  },
  'an object with name, timeZone, latitude, longitude and morning',
);

const memberSchema = objectOf(
  {
    handle: oneWord('a handle'),
    name: name('what the member is called'),
    role: oneOf(['grower', 'helper'], 'a role'),
    language: oneOf(languages as readonly ['en', 'de'], 'a language').default('en'),
    handlesAcids: z
      .boolean({ error: 'true or false: shown how to handle acid and alkali' })
      .exactOptional(),
    units: ownUnitsSchema.exactOptional(),
  },
  'an object with handle, name and role',
);

const probeSchema = objectOf(
  {
    name: name('the name of the probe'),
    measures: listOf(oneOf(calibrated, 'what it measures'), 'what it measures, at least one').min(
      1,
      { error: 'a list of what it measures, at least one' },
    ),
    calibratedOn: localDate('when it was last calibrated').nullable().default(null),
  },
  'an object with name and measures',
);

const stockSchema = objectOf(
  {
    product: name('the name of the product'),
    mL: numberFrom(0, 10_000_000, 'mL in the bottles'),
    meqPerMl: positiveUpTo(40, 'acid or alkali in it, meq/mL').exactOptional(),
    riseMsPerCmByMlPerL: positiveUpTo(
      5,
      'mS/cm that 1 mL/L of both concentrates adds',
    ).exactOptional(),
  },
  'an object with product and mL',
);

const choreSchema = objectOf(
  {
    name: name('what is to be done'),
    system: name('the name of a system').nullable().default(null),
    everyDays: wholeFrom(1, 3660, 'days from one time to the next'),
    lastDoneOn: localDate('when it was last done').nullable().default(null),
  },
  'an object with name and everyDays',
);

/** The greenhouse file, format 1. */
export const greenhouseFileSchema = objectOf(
  {
    format: z.literal(1, { error: '1, the only format that this version reads' }),
    greenhouse: placeSchema,
    members: listOf(memberSchema, 'members'),
    systems: listOf(systemSchema, 'systems, at least one').min(1, {
      error: 'a list of systems, at least one',
    }),
    probes: listOf(probeSchema, 'probes').default([]),
    stock: listOf(stockSchema, 'products').default([]),
    chores: listOf(choreSchema, 'chores').default([]),
  },
  'an object with format, greenhouse, members and systems',
);

export type GreenhouseFile = z.output<typeof greenhouseFileSchema>;
