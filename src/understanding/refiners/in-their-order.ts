import { isReading } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import { type Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Settled } from './settled.ts';

/** `topped up the jars and the buckets, 2 l and 8 l`: as many amounts as systems, side by side; each in its turn. */
export function inTheirOrder(frame: Frame, settled: readonly Settled[]): Settled[] {
  const found: Settled[] = [];
  for (let i = 0; i < settled.length; ) {
    const run = runFrom(frame, settled, i);
    const order = run.length > 1 ? orderOf(frame, run) : null;
    found.push(...(order ? run.map((one, n) => ({ ...one, systems: [order[n]!] })) : run));
    i += run.length;
  }
  return found;
}

/** Facts of one quantity, said of the same systems, with nothing between them but what joins a list; two readings may as well be of one. */
function runFrom(frame: Frame, settled: readonly Settled[], from: number): readonly Settled[] {
  const run = [settled[from]!];
  for (const next of settled.slice(from + 1)) {
    const last = run.at(-1)!;
    const between = frame.terms.slice(last.fact.at + 1, next.fact.at);
    if (!isAlike(last, next) || !between.every(isJoint)) break;
    run.push(next);
  }
  return run;
}

function isAlike(one: Settled, other: Settled): boolean {
  return (
    one.fact.quantity === other.fact.quantity &&
    !isReading(one.fact.quantity) &&
    isOpen(one) &&
    isOpen(other) &&
    idsOf(one) === idsOf(other)
  );
}

function isOpen({ fact, systems }: Settled): boolean {
  return (
    (systems?.length ?? 0) > 1 &&
    fact.amount.kind === 'measure' &&
    fact.phase === undefined &&
    !fact.each
  );
}

function idsOf({ systems }: Settled): string {
  return (systems ?? []).map(({ id }) => id).join();
}

function isJoint(term: Term): boolean {
  return (
    (term.kind === 'stop' && (term.cut === 'and' || term.cut === 'comma')) ||
    (term.kind === 'mark' && term.text === '/') ||
    means(term, 'filler', 'about')
  );
}

/** The systems as they are named, where that is once each and there are as many as facts. */
function orderOf({ terms }: Frame, run: readonly Settled[]): readonly System[] | null {
  const systems = run[0]!.systems ?? [];
  if (systems.length !== run.length) return null;
  const named = terms.flatMap((term) => (term.kind === 'name' ? term.systems : []));
  const order = named.filter((id) => systems.some((system) => system.id === id));
  if (order.length !== systems.length || new Set(order).size !== order.length) return null;
  return order.map((id) => systems.find((system) => system.id === id)!);
}
