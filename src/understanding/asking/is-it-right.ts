import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { convert, isBare, isBelievable, isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import type { Ask } from '../statement.ts';

/** `is 5.4 too low`: of which quantity the number is, by its word, its unit, or what it can be. */
export function isItRight(
  frame: Frame,
  at: number,
  system: SystemId | null,
  named: Quantity | null,
): Ask {
  const term = frame.terms[at]!;
  if (!isMeasure(term)) return { kind: 'unknown' };
  const { measure } = term;
  if (isVolume(measure)) return { kind: 'unknown' };
  const { units } = frame.context.greenhouse;
  const order: readonly Quantity[] = named
    ? [named]
    : ['ph', 'ec', 'water-temperature', 'dissolved-oxygen', 'humidity'];
  for (const quantity of order) {
    if (
      quantity === 'ec' &&
      isBare(measure) &&
      measure.values[0]! >= 10 &&
      measure.values[0]! < 100
    )
      continue;
    const conversion = convert(quantity, measure, units);
    if (conversion && isBelievable(quantity, conversion.values[0]!, null))
      return { kind: 'is-it-right', system, quantity, value: conversion.values[0]! };
  }
  // `can we go away for a week`: a number of something else.
  if (named === null && measure.unit !== null) return { kind: 'unknown' };
  return { kind: 'is-it-right', system, quantity: named ?? 'ph', value: measure.values[0]! };
}
