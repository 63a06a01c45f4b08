import type { Fact } from '../fact.ts';
import { noWaterAt } from '../moods/no-water.ts';
import type { Clause, Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { fact } from './level-fact.ts';

/**
 * `no water left in the jars`, `the bench ran dry`: nothing is in it. Where it may as well mean that
 * none was given (`no water in the jars`), how much is in it is asked.
 */
export function noneLeft(frame: Frame, clause: Clause): Fact[] {
  const at = noWaterAt(frame, clause);
  if (at === null || frame.taken[at]) return [];
  return [
    means(frame.terms[at], 'none-left')
      ? fact(frame, at, { kind: 'nothing-in-it' }, 'no water left')
      : fact(frame, at, { kind: 'missing' }, 'no water, in it or given'),
  ];
}
