import { Speaker, type UnitWords } from '../spoken/speaker.ts';
import type { Reader } from '../wording.ts';

const unitWords: UnitWords = {
  none: '',
  pH: '',
  'mS/cm': ' mS/cm',
  'µS/cm': ' µS/cm',
  ppm: ' ppm',
  CF: ' CF',
  '°C': ' °C',
  '°F': ' °F',
  '%': '%',
  'mg/L': ' mg/L',
  L: ' L',
  gal: ' gal',
  mL: ' mL',
  min: ' min',
  'min/h': ' min an hour',
  g: ' g',
  kg: ' kg',
  cm: ' cm',
  in: ' in',
};

/** Whoever counts in US gallons also writes dates and clock times the American way. */
export function speaking(reader: Reader): Speaker {
  return new Speaker(reader, reader.greenhouse.units.volume === 'gal' ? 'en-US' : 'en-GB', {
    units: unitWords,
    you: 'you',
  });
}
