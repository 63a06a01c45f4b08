import type { Container, Greenhouse } from '../../greenhouse/greenhouse.ts';

/** A volume counted in the household's own cans or jugs, to the half. */
interface ContainerCount {
  readonly container: Container;
  /** 1, 1.5, 2 and so on. */
  readonly count: number;
}

/** More than this nobody counts while carrying. */
const mostCounted = 40;
/** A count further off than this share of the volume is told in another container, or not at all. */
const closeShare = 0.12;

/**
 * Counts a volume in the largest container that it fills at least once and comes out nearly even in;
 * null where there is none.
 * Where more than asked for does harm, the count is rounded down.
 */
export function containersFor(
  litres: number,
  containers: Greenhouse['containers'],
  rounding: 'nearest' | 'down',
): ContainerCount | null {
  const round = rounding === 'down' ? Math.floor : Math.round;
  const [best] = containers
    .map((container) => ({ container, count: round((2 * litres) / container.litres) / 2 }))
    .filter(
      ({ container, count }) =>
        count >= 1 &&
        count <= mostCounted &&
        Math.abs(count * container.litres - litres) <= closeShare * litres,
    )
    .toSorted((one, other) => other.container.litres - one.container.litres);
  return best ?? null;
}

/** `4½`, `12`. */
export function halfText(count: number): string {
  return `${Math.floor(count)}${Number.isInteger(count) ? '' : '½'}`;
}
