import type { Amount, Fact } from '../fact.ts';
import { type Frame, take } from '../reading/frame.ts';

export function fact(
  frame: Frame,
  at: number,
  amount: Amount,
  because: string,
  from = at,
  to = at,
): Fact {
  take(frame, at);
  return { quantity: 'level', amount, at, from, to, because };
}
