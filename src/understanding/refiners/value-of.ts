import type { LevelSaidAs } from '../../greenhouse/entry.ts';
import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import { believable, type Quantity } from '../../greenhouse/quantity.ts';
import { litresAtDepth, type System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import {
  cmFactor,
  convert,
  isBare,
  isBelievable,
  litresFactor,
  litresPerUsGallon,
  round,
  unitIs,
  valuesOf,
} from '../numbers/quantity-of-measure.ts';
import type { Assumption, DoubtReason } from '../statement.ts';

/** A fact's value for one system, or what must be asked before there is one. */
export type Valued =
  | {
      readonly kind: 'value';
      readonly value: number;
      readonly saidAs?: LevelSaidAs;
      readonly assumptions: readonly Assumption[];
    }
  | { readonly kind: 'asked'; readonly reason: DoubtReason; readonly options: readonly number[] };

export function valueOf(fact: Fact, system: System | null, units: SpokenUnits): Valued {
  const { quantity, amount } = fact;
  switch (amount.kind) {
    case 'value':
      return checked(quantity, [amount.value], system, []);
    case 'brim':
      return {
        kind: 'value',
        value: system?.brimL ?? 0,
        // Of another system it is another volume.
        ...(quantity === 'level' || quantity === 'reservoir-change'
          ? { saidAs: { kind: 'share', share: 1 } }
          : {}),
        assumptions: quantity === 'level' ? [] : [{ kind: 'brim-volume' }],
      };
    case 'nothing-in-it':
      return { kind: 'value', value: 0, assumptions: [] };
    case 'missing':
      return { kind: 'asked', reason: missing(fact), options: [] };
    case 'below-brim':
      return belowBrim(amount.measure, system);
    case 'measure':
      return quantity === 'level'
        ? levelOf(amount.measure, system)
        : measured(fact, amount.measure, system, units);
  }
}

function missing({ quantity, product }: Fact): DoubtReason {
  return { kind: 'missing-amount', quantity, ...(product === undefined ? {} : { product }) };
}

function measured(fact: Fact, measure: Measure, system: System | null, units: SpokenUnits): Valued {
  const { quantity } = fact;
  if (fact.bareVolume && isBare(measure)) {
    const factor = units.volume === 'L' ? 1 : litresPerUsGallon;
    return checked(
      quantity,
      measure.values.map((value) => round(value * factor)),
      system,
      [{ kind: 'bare-volume', unit: units.volume }],
    );
  }
  const conversion = convert(quantity, measure, units);
  if (!conversion)
    return {
      kind: 'asked',
      reason: whichUnit(quantity, measure),
      options: guesses(quantity, measure, system),
    };
  if (!conversion.unitOpen)
    return checked(quantity, conversion.values, system, conversion.assumptions);
  const options = conversion.values.filter((value) => isBelievable(quantity, value, system));
  const value = measure.values[0]!;
  if (options.length === 0) return outOfRange(quantity, value, system);
  return { kind: 'asked', reason: whichUnit(quantity, measure), options };
}

function whichUnit(quantity: Quantity, measure: Measure): DoubtReason {
  return { kind: 'which-unit', quantity, value: measure.written };
}

/** What a number with no unit, or with one that does not fit, is likeliest to be. */
function guesses(quantity: Quantity, measure: Measure, system: System | null): number[] {
  if (!isBare(measure)) return [];
  const [value] = measure.values;
  const options = quantity === 'harvest' ? [value! * 1000, value!] : [value!];
  return options.filter((option) => isBelievable(quantity, option, system));
}

/** One of the readings of the number that can be believed; a question where none or several can. */
function checked(
  quantity: Quantity,
  values: readonly number[],
  system: System | null,
  assumptions: readonly Assumption[],
): Valued {
  const believed = [...new Set(values.filter((value) => isBelievable(quantity, value, system)))];
  if (believed.length === 1) return { kind: 'value', value: believed[0]!, assumptions };
  if (believed.length > 1) {
    return {
      kind: 'asked',
      reason: { kind: 'which-unit', quantity, value: String(values[0]) },
      options: believed,
    };
  }
  return outOfRange(quantity, values[0]!, system);
}

/** What people leave out or press twice: the decimal point, the thousandth. */
const slips: Partial<Record<Quantity, readonly number[]>> = {
  ph: [0.1, 0.01, 10, -1],
  ec: [0.1, 0.01, 0.001, 0.0001],
  'water-temperature': [0.1, -1],
  'air-temperature': [0.1],
  'top-up': [0.001, 0.1],
  'reservoir-change': [0.1, 0.001],
  level: [0.1, 0.001],
  harvest: [0.001, 0.1],
};
const usualSlips: readonly number[] = [0.1, 0.01];
const choicesOffered = 2;

export function outOfRange(quantity: Quantity, value: number, system: System | null): Valued {
  const range = bounds(quantity, system);
  const options = (slips[quantity] ?? usualSlips)
    .map((factor) => round(value * factor))
    .filter((option) => option !== 0 && isBelievable(quantity, option, system));
  return {
    kind: 'asked',
    reason: { kind: 'out-of-range', quantity, value, ...range },
    options: options.slice(0, choicesOffered),
  };
}

function bounds(quantity: Quantity, system: System | null): { lowest: number; highest: number } {
  const range = believable(quantity, system) ?? [
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ];
  return { lowest: range[0], highest: range[1] };
}

function levelOf(measure: Measure, system: System | null): Valued {
  if (!system)
    return { kind: 'asked', reason: { kind: 'which-system', quantity: 'level' }, options: [] };
  const litres = litresFactor(measure);
  if (litres !== null)
    return checked(
      'level',
      valuesOf(measure).map((value) => round(value * litres)),
      system,
      [],
    );
  const cm = cmFactor(measure);
  const value = measure.values[0]!;
  if (cm !== null)
    return said(
      round(litresAtDepth(system, value * cm)),
      { kind: 'depth', cm: round(value * cm) },
      system,
    );
  if (unitIs(measure, 'percent'))
    return said(round((system.brimL * value) / 100), { kind: 'share', share: value / 100 }, system);
  if (measure.share)
    return said(round(system.brimL * value), { kind: 'share', share: value }, system);
  const options = [value, (system.brimL * value) / 100, litresAtDepth(system, value)]
    .map(round)
    .filter((option) => isBelievable('level', option, system));
  return { kind: 'asked', reason: whichUnit('level', measure), options };
}

function belowBrim(measure: Measure, system: System | null): Valued {
  if (!system)
    return { kind: 'asked', reason: { kind: 'which-system', quantity: 'level' }, options: [] };
  const value = measure.values[0]!;
  const cm = cmFactor(measure);
  const { brimL } = system;
  if (cm !== null)
    return said(
      round(brimL - litresAtDepth(system, value * cm)),
      { kind: 'below-brim', cm: round(value * cm) },
      system,
    );
  const litres = litresFactor(measure);
  if (litres !== null) return checked('level', [round(brimL - value * litres)], system, []);
  const share = measure.share ? value : value / 100;
  return said(round(brimL * (1 - share)), { kind: 'share', share: 1 - share }, system);
}

function said(litres: number, saidAs: LevelSaidAs, system: System): Valued {
  if (!isBelievable('level', litres, system)) return outOfRange('level', litres, system);
  return { kind: 'value', value: litres, saidAs, assumptions: [] };
}
