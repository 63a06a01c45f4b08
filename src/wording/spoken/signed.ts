import type { Measure } from './measure.ts';
import type { Speaker } from './speaker.ts';

/** `+0.08` or `−0.08`: a change, with its sign and its unit, to one digit more than a value is told with. */
export function signed(told: Measure, s: Speaker): string {
  const fine = { ...told, mostDecimals: told.mostDecimals + 1 };
  const sign = told.value < 0 ? '−' : '+';
  return `${sign}${s.amount({ ...fine, value: Math.abs(told.value) })}`;
}
