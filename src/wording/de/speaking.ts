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
  '%': ' %',
  'mg/L': ' mg/l',
  L: ' l',
  gal: ' gal',
  mL: ' ml',
  min: ' min',
  'min/h': ' min pro Stunde',
  g: ' g',
  kg: ' kg',
  cm: ' cm',
  in: ' Zoll',
};

export function speaking(reader: Reader): Speaker {
  return new Speaker(reader, 'de', { units: unitWords, you: 'du' });
}
