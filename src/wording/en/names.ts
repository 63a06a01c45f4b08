import type { CleanPart, DutyKind, MixStrength } from '../../greenhouse/duty.ts';
import type { Supply } from '../../greenhouse/entry.ts';
import type { VolumeUnit } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';

/** Quantities as they stand in a sentence. */
export const quantityNames: Readonly<Record<Quantity, string>> = {
  ph: 'pH',
  ec: 'EC',
  'water-temperature': 'water temperature',
  'air-temperature': 'air temperature',
  humidity: 'humidity',
  'dissolved-oxygen': 'oxygen',
  level: 'water level',
  'top-up': 'top-up',
  'reservoir-change': 'change of solution',
  dose: 'dose',
  calibration: 'calibration',
  'fill-time': 'fill time',
  aeration: 'aeration',
  outage: 'outage',
  restored: 'end of the outage',
  harvest: 'harvest',
  'duty-done': 'finished duty',
  'duty-failed': 'duty that failed',
  note: 'note',
};

export const volumeNames: Readonly<Record<VolumeUnit, string>> = { L: 'litres', gal: 'gallons' };

export const dutyNames: Readonly<Record<DutyKind, string>> = {
  'top-up': 'top-up',
  check: 'check',
  dose: 'dose',
  'reservoir-change': 'change of solution',
  calibration: 'calibration',
  aeration: 'aeration',
  clean: 'cleaning',
  chore: 'chore',
};

export const failureNames: Readonly<Record<Supply, string>> = {
  power: 'power out',
  pump: 'pump stopped',
  'air-pump': 'air pump stopped',
};

export const recoveryNames: Readonly<Record<Supply, string>> = {
  power: 'power back',
  pump: 'pump running again',
  'air-pump': 'air pump running again',
};

export const strengthNames: Readonly<Record<MixStrength, string>> = {
  plain: 'plain water',
  half: 'half-strength solution',
  full: 'full-strength solution',
};

export const partNames: Readonly<Record<CleanPart, string>> = {
  'air-stones': 'the air stones',
  'pump-filter': 'the pump filter',
};

/** Products that every household has; any other goes by its own name. */
const knownProducts: ReadonlyMap<string, string> = new Map([
  ['nutrient-a', 'nutrient A'],
  ['nutrient-b', 'nutrient B'],
  ['ph-down', 'pH down'],
  ['ph-up', 'pH up'],
]);

export function productName(product: string): string {
  return knownProducts.get(product) ?? product;
}

const pluralOf = new Intl.PluralRules('en');

/** `1 can`, `4½ cans`, `2 boxes`. */
export function containerPlural(name: string, count: number): string {
  if (pluralOf.select(count) === 'one') return name;
  if (/(?:s|x|z|ch|sh)$/i.test(name)) return `${name}es`;
  if (/[^aeiou]y$/i.test(name)) return `${name.slice(0, -1)}ies`;
  return `${name}s`;
}
