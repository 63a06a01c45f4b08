import type { CleanPart, DutyKind, MixStrength } from '../../greenhouse/duty.ts';
import type { Supply } from '../../greenhouse/entry.ts';
import type { VolumeUnit } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';

/** Quantities as they stand in a sentence. */
export const quantityNames: Readonly<Record<Quantity, string>> = {
  ph: 'pH',
  ec: 'EC',
  'water-temperature': 'Wassertemperatur',
  'air-temperature': 'Lufttemperatur',
  humidity: 'Luftfeuchte',
  'dissolved-oxygen': 'Sauerstoff',
  level: 'Wasserstand',
  'top-up': 'Nachfüllen',
  'reservoir-change': 'Lösungswechsel',
  dose: 'Zugabe',
  calibration: 'Kalibrierung',
  'fill-time': 'Füllzeit',
  aeration: 'Belüftung',
  outage: 'Ausfall',
  restored: 'Ende des Ausfalls',
  harvest: 'Ernte',
  'duty-done': 'erledigte Aufgabe',
  'duty-failed': 'Aufgabe, die nicht ging',
  note: 'Notiz',
};

/** The same with the article, the subject of a sentence. */
export const quantitiesWithArticle: Readonly<Record<Quantity, string>> = {
  ph: 'der pH',
  ec: 'der EC',
  'water-temperature': 'die Wassertemperatur',
  'air-temperature': 'die Lufttemperatur',
  humidity: 'die Luftfeuchte',
  'dissolved-oxygen': 'der Sauerstoff',
  level: 'der Wasserstand',
  'top-up': 'das Nachfüllen',
  'reservoir-change': 'der Lösungswechsel',
  dose: 'die Zugabe',
  calibration: 'die Kalibrierung',
  'fill-time': 'die Füllzeit',
  aeration: 'die Belüftung',
  outage: 'der Ausfall',
  restored: 'das Ende des Ausfalls',
  harvest: 'die Ernte',
  'duty-done': 'die erledigte Aufgabe',
  'duty-failed': 'die Aufgabe, die nicht ging',
  note: 'die Notiz',
};

export const volumeNames: Readonly<Record<VolumeUnit, string>> = { L: 'Liter', gal: 'Gallonen' };

export const dutyNames: Readonly<Record<DutyKind, string>> = {
  'top-up': 'Nachfüllen',
  check: 'Messen',
  dose: 'Zugabe',
  'reservoir-change': 'Lösungswechsel',
  calibration: 'Kalibrieren',
  aeration: 'Belüftung',
  clean: 'Reinigen',
  chore: 'Aufgabe',
};

export const failureNames: Readonly<Record<Supply, string>> = {
  power: 'Strom weg',
  pump: 'Pumpe steht',
  'air-pump': 'Luftpumpe steht',
};

export const recoveryNames: Readonly<Record<Supply, string>> = {
  power: 'Strom wieder da',
  pump: 'Pumpe läuft wieder',
  'air-pump': 'Luftpumpe läuft wieder',
};

export const strengthNames: Readonly<Record<MixStrength, string>> = {
  plain: 'reines Wasser',
  half: 'Lösung in halber Stärke',
  full: 'Lösung in voller Stärke',
};

export const partNames: Readonly<Record<CleanPart, string>> = {
  'air-stones': 'Luftsteine',
  'pump-filter': 'Pumpenfilter',
};

/** Products that every household has; any other goes by its own name. */
const knownProducts: ReadonlyMap<string, string> = new Map([
  ['nutrient-a', 'Dünger A'],
  ['nutrient-b', 'Dünger B'],
  ['ph-down', 'pH-Minus'],
  ['ph-up', 'pH-Plus'],
]);

export function productName(product: string): string {
  return knownProducts.get(product) ?? product;
}
