import type { Duty } from '../../greenhouse/duty.ts';
import type { Container, Greenhouse } from '../../greenhouse/greenhouse.ts';
import { doseTold } from '../../planning/dose-bounds.ts';
import { containersFor } from './containers-for.ts';

/** So much of each concentrate goes into one can or jug. */
interface ContainerShare {
  readonly container: Container;
  readonly mL: number;
}

/** From so many on a top-up is mixed one by one, and not all that is carried may be needed. */
const leastCounted = 1.5;

/**
 * What of the concentrates of a top-up goes into each container that it is carried in; null where
 * it is not counted in any, or the parts differ.
 */
export function shareOfContainer(
  { litres, concentrates = [] }: Duty,
  containers: Greenhouse['containers'],
): ContainerShare | null {
  const [first] = concentrates;
  if (!first || litres === undefined || concentrates.some(({ mL }) => mL !== first.mL)) return null;
  const told = containersFor(litres, containers, 'nearest');
  if (!told || told.count < leastCounted) return null;
  const { container } = told;
  return { container, mL: doseTold((first.mL * container.litres) / litres) };
}
