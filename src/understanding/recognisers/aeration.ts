import type { Fact } from '../fact.ts';
import { isBare, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
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
    const turns = device === undefined ? null : turnsOf(frame, clause, device);
    if (device !== undefined && turns) {
      takeRange(frame, device, turns.to + 1);
      return [valued(frame, turns.minutesAnHour, device, turns.to)];
    }
    if (device === undefined) return rated === undefined ? [] : setting(frame, clause, rated, null);
    const at = rated ?? minutesFor(frame, clause);
    if (at !== undefined) return setting(frame, clause, at, device);
    const nonstop = inClause(frame, clause, (term) => means(term, 'nonstop'))[0];
    if (nonstop === undefined || clauseHas(frame, clause, 'broken', 'not')) return [];
    take(frame, device, nonstop);
    return [valued(frame, minutesOfAnHour, device, nonstop)];
  });
}

function valued(frame: Frame, minutesAnHour: number, device: number, to: number): Fact {
  const system = systemOfDevice(frame, frame.terms[device]);
  return {
    quantity: 'aeration',
    amount: { kind: 'value', value: minutesAnHour },
    at: to,
    from: device,
    to,
    ...(system ? { byDevice: system } : {}),
    because: 'aeration setting',
  };
}

/** `aerator 30 on 30 off`, `15 min on, 45 off`: its minutes an hour, and the last term that says so. */
function turnsOf(
  frame: Frame,
  clause: Clause,
  device: number,
): { readonly minutesAnHour: number; readonly to: number } | null {
  const { terms } = frame;
  for (let i = device + 1; i < clause.to - 1; i++) {
    const second = terms[i + 2]?.kind === 'stop' ? i + 3 : i + 2;
    const [on, off] = [terms[i], terms[second]];
    const isTurned =
      means(terms[i + 1], 'place') &&
      !means(terms[i + 1], 'from') &&
      means(terms[second + 1], 'broken') &&
      means(terms[second + 1], 'place');
    if (!isTurned || !isMeasure(on) || !isMeasure(off)) continue;
    if (![on, off].every(({ measure }) => isBare(measure) || unitIs(measure, 'minute'))) continue;
    const [onMin, offMin] = [on.measure.values[0]!, off.measure.values[0]!];
    if (onMin < 0 || offMin < 0 || onMin + offMin === 0) continue;
    return { minutesAnHour: (minutesOfAnHour * onMin) / (onMin + offMin), to: second + 1 };
  }
  return null;
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
