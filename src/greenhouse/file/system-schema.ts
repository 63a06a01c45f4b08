import { aerationKinds, methods } from '../system.ts';
import {
  listOf,
  localDate,
  name,
  numberFrom,
  objectOf,
  oneOf,
  positiveUpTo,
  range,
  wholeFrom,
} from './fields.ts';

const mostLitres = 1_000_000;
const mostMinutes = 7 * 24 * 60;

const aeration = objectOf(
  {
    kind: oneOf(aerationKinds, 'how it is aerated'),
    minutesPerHour: numberFrom(0, 60, 'minutes of every hour'),
  },
  'an object with kind and minutesPerHour, or null',
);

const floods = objectOf(
  {
    everyMin: positiveUpTo(mostMinutes, 'minutes from one flood to the next'),
    fillMin: positiveUpTo(mostMinutes, 'minutes that a flood takes to fill'),
  },
  'an object with everyMin and fillMin, or null',
);

const grownCrop = objectOf(
  {
    crop: name('what grew'),
    plants: wholeFrom(0, 1_000_000, 'how many plants'),
    from: localDate('when it was planted').nullable().default(null),
    to: localDate('when it was taken out'),
  },
  'an object with crop, plants, from and to',
);

/** One item of `systems` in a greenhouse file. */
export const systemSchema = objectOf(
  {
    name: name('the name of the system'),
    aliases: listOf(name('another name for it'), 'other names').default([]),
    method: oneOf(methods, 'how it grows'),
    brimL: positiveUpTo(mostLitres, 'litres when full to the brim'),
    lowL: numberFrom(0, mostLitres, 'litres at the low mark'),
    depthCm: positiveUpTo(10_000, 'depth in cm when full to the brim'),
    crop: name('what grows in it').nullable().default(null),
    plants: wholeFrom(0, 1_000_000, 'how many plants').default(0),
    plantedOn: localDate('when they were planted').exactOptional(),
    grown: listOf(grownCrop, 'what grew in it before').exactOptional(),
    ph: range(0, 14, 'the pH wanted'),
    ec: range(0, 20, 'the EC wanted, in mS/cm'),
    waterTemperatureC: range(-5, 60, 'the water temperature wanted, in °C'),
    aeration: aeration.nullable().default(null),
    floods: floods.nullable().default(null),
  },
  'an object, one system',
);
