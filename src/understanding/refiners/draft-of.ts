import type { EntryDraft } from '../../greenhouse/entry.ts';
import { belongsToGreenhouse } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';

/** Power, the air and calibrations are the greenhouse's; so is a note that names no system, or a chore of none. */
export function isOfGreenhouse({ quantity, of, duty, byDevice }: Fact): boolean {
  return (
    belongsToGreenhouse(quantity) ||
    quantity === 'calibration' ||
    (quantity === 'duty-failed' && duty === 'calibration') ||
    (quantity === 'duty-failed' && duty === 'chore' && byDevice === undefined) ||
    ((quantity === 'outage' || quantity === 'restored') && of === 'power')
  );
}

export function draftOf(
  fact: Fact,
  system: System | null,
  value: number,
  atMs: number,
  approximate: boolean,
): EntryDraft {
  return {
    system: system?.id ?? null,
    quantity: fact.quantity,
    value,
    atMs,
    ...(approximate ? { approximate: true } : {}),
    ...(fact.product === undefined ? {} : { product: fact.product }),
    ...(fact.probe === undefined ? {} : { probe: fact.probe }),
    ...(fact.read === undefined ? {} : { read: fact.read }),
    ...(fact.of === undefined ? {} : { of: fact.of }),
    ...(fact.duty === undefined ? {} : { duty: fact.duty }),
    ...(fact.chore === undefined ? {} : { chore: fact.chore }),
    ...(fact.note === undefined ? {} : { note: fact.note }),
    ...(fact.trouble === undefined ? {} : { trouble: fact.trouble }),
  };
}

export function isApproximate(fact: Fact): boolean {
  if (fact.approximate) return true;
  const { amount } = fact;
  return (amount.kind === 'measure' || amount.kind === 'below-brim') && amount.measure.approximate;
}
