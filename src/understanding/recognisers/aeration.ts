import type { Fact } from '../fact.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  measureOf,
  measuresIn,
  take,
  takeRange,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { systemOfDevice } from './devices.ts';

const minutesOfAnHour = 60;

/** `venturi to 10 min an hour`, `air stones non-stop`: a new setting. */
export function recogniseAeration(frame: Frame): Fact[] {
  return frame.clauses.flatMap((clause): Fact[] => {
    const device = inClause(frame, clause, (term) =>
      means(term, 'venturi', 'air-stones', 'air-pump', 'aeration'),
    )[0];
    const rated = measuresIn(frame, clause).find((i) =>
      unitIs(measureOf(frame, i), 'minute-an-hour'),
    );
    if (device === undefined) return rated === undefined ? [] : setting(frame, clause, rated, null);
    const at = rated ?? minutesFor(frame, clause);
    if (at !== undefined) return setting(frame, clause, at, device);
    const nonstop = inClause(frame, clause, (term) => means(term, 'nonstop'))[0];
    if (nonstop === undefined || clauseHas(frame, clause, 'broken', 'not')) return [];
    take(frame, device, nonstop);
    const system = systemOfDevice(frame, frame.terms[device]);
    return [
      {
        quantity: 'aeration',
        amount: { kind: 'value', value: minutesOfAnHour },
        at: nonstop,
        from: device,
        to: nonstop,
        ...(system ? { byDevice: system } : {}),
        because: 'aeration setting',
      },
    ];
  });
}

/** Minutes without `an hour`, where something was set to them. */
function minutesFor(frame: Frame, clause: Clause): number | undefined {
  if (
    clauseHas(frame, clause, 'broken', 'working', 'ago', 'no-bubbles') &&
    !clauseHas(frame, clause, 'set')
  )
    return undefined;
  return measuresIn(frame, clause).find(
    (i) =>
      unitIs(measureOf(frame, i), 'minute') &&
      clauseHas(frame, clause, 'set', 'to') &&
      !means(frame.terms[i + 1], 'ago') &&
      !means(frame.terms[i - 1], 'for-so-long'),
  );
}

function setting(frame: Frame, clause: Clause, at: number, device: number | null): Fact[] {
  const anchor = device ?? at;
  take(frame, at);
  for (let i = clause.from; i < clause.to; i++) {
    if (
      means(frame.terms[i], 'set', 'change', 'venturi', 'air-stones', 'air-pump', 'aeration', 'add')
    )
      takeRange(frame, i, i + 1);
  }
  const system = device === null ? null : systemOfDevice(frame, frame.terms[device]);
  return [
    {
      quantity: 'aeration',
      amount: { kind: 'measure', measure: measureOf(frame, at) },
      at,
      from: Math.min(anchor, at),
      to: Math.max(anchor, at),
      ...(system ? { byDevice: system } : {}),
      because: 'aeration setting',
    },
  ];
}
