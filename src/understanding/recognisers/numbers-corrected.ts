import type { LevelSaidAs } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Measure } from '../numbers/measure.ts';
import { cmFactor, round, unitIs } from '../numbers/quantity-of-measure.ts';
import { readablesOf } from '../numbers/readables-of.ts';
import { type Frame, measureOf } from '../reading/frame.ts';
import type { Readable, TakingBack } from '../statement.ts';

type NumbersOfCorrection = Pick<
  Extract<TakingBack, { kind: 'correct' }>,
  'said' | 'to' | 'from' | 'bare' | 'level'
>;

/**
 * What the number meant and the one given up can be read as, by their terms. `4 cans, not 3`: of both numbers one
 * unit is said; where none is, they are of the unit of what they put right. Null: the number meant is none.
 */
export function numbersCorrected(
  frame: Frame,
  [to, from]: readonly [number, number | null],
  quantity: Quantity | null,
): NumbersOfCorrection | null {
  const both = [to, ...(from === null ? [] : [from])].map((i) => measureOf(frame, i));
  const unit = both.map((measure) => measure.unit).find((said) => said !== null) ?? null;
  const readables = (i: number): readonly Readable[] => {
    const measure = measureOf(frame, i);
    const whole = { ...measure, unit: measure.unit ?? unit };
    return readablesOf(whole, frame.context.greenhouse.units, quantity);
  };
  const numberAt = (i: number): number => measureOf(frame, i).values[0]!;
  const readable = readables(to);
  const mayBeLevel = quantity === null || quantity === 'level';
  const level = mayBeLevel ? levelOf({ ...measureOf(frame, to), unit }) : null;
  const levelFrom = from === null ? null : levelOf({ ...measureOf(frame, from), unit });
  if (readable.length === 0 && level === null) return null;
  const isBare = unit === null && both.every(({ share }) => !share);
  return {
    said: numberAt(to),
    to: readable,
    from: from === null ? null : readables(from),
    ...(level ? { level: { to: level, from: levelFrom } } : {}),
    ...(isBare ? { bare: { to: numberAt(to), from: from === null ? null : numberAt(from) } } : {}),
  };
}

/** A share of the brim or a depth; null: neither. */
function levelOf(measure: Measure): LevelSaidAs | null {
  const number = measure.values[0]!;
  const cm = cmFactor(measure);
  if (cm !== null) return { kind: 'depth', cm: round(number * cm) };
  return unitIs(measure, 'percent') ? { kind: 'share', share: number / 100 } : null;
}
