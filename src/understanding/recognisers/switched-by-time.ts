import type { Supply } from '../../greenhouse/entry.ts';
import type { Fact } from '../fact.ts';
import { type Clause, clauseHas, type Frame, inClause, takeRange } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { systemOfDevice } from './devices.ts';

/**
 * `venturi off at night now`, `Pumpe läuft nachts nicht mehr`: when a device is switched off from now on, or that it
 * has failed? No setting of the log has times of day, and an outage is none: it is asked.
 */
export function recogniseSwitchedByTime(frame: Frame): Fact[] {
  return frame.clauses.flatMap((clause): Fact[] => {
    const device = inClause(frame, clause, (term) => deviceOf(term) !== null)[0];
    if (device === undefined || !isSwitched(frame, clause) || !isByTime(frame, clause)) return [];
    const of = deviceOf(frame.terms[device]!)!;
    const system = systemOfDevice(frame, frame.terms[device]);
    const { originAt, original } = frame.folded;
    const [first, last] = [frame.terms[clause.from]!, frame.terms[clause.to - 1]!];
    takeRange(frame, clause.from, clause.to);
    return [
      {
        quantity: 'note',
        amount: { kind: 'value', value: 1 },
        at: device,
        from: clause.from,
        to: clause.to - 1,
        note: original.slice(originAt(first.from), originAt(last.to)).trim(),
        of,
        ...(system ? { byDevice: system } : {}),
        doubt: { kind: 'switched-or-failed', of },
        because: 'switched by the time of day',
      },
    ];
  });
}

function deviceOf(term: Term): Supply | null {
  if (means(term, 'venturi', 'air-stones', 'air-pump', 'aeration')) return 'air-pump';
  return means(term, 'pump') ? 'pump' : null;
}

/** Off, or not running; what died or tripped was not switched, and what was off is over. */
function isSwitched(frame: Frame, clause: Clause): boolean {
  if (clauseHas(frame, clause, 'was')) return false;
  if (clauseHas(frame, clause, 'switched-off')) return true;
  const runs = inClause(frame, clause, (term) => means(term, 'runs', 'set'))[0];
  return runs !== undefined && clauseHas(frame, { from: runs, to: clause.to }, 'not', 'did-not');
}

/** A part of every day; or a stretch of the clock with a `now`, which holds from now on. */
function isByTime(frame: Frame, clause: Clause): boolean {
  if (clauseHas(frame, clause, 'part-of-every-day')) return true;
  const isEnd = (term: Term, i: number) => frame.timed[i] === true && means(term, 'until');
  return clauseHas(frame, clause, 'now') && inClause(frame, clause, isEnd).length > 0;
}
