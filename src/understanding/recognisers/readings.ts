import type { Fact } from '../fact.ts';
import type { Frame } from '../reading/frame.ts';
import { readingsUnderClosing } from './closing-label.ts';
import { readingsUnderLabel } from './label-for-all.ts';
import { labelledReadings } from './label-pairs.ts';
import {
  earlierValue,
  type Heading,
  headingOf,
  laterThan,
  laterValue,
  readingAcrossComma,
  readingLikeBefore,
  readingUnderHeading,
} from './later-values.ts';
import { listedReadings } from './listed-readings.ts';
import { leftOutThere, readingsOfLeftOut } from './of-the-left-out.ts';
import { readingsByUnit } from './readings-by-unit.ts';
import { rowsOfSystems } from './row-of-systems.ts';
import { valuesThenSystems } from './values-then-systems.ts';

/** Readings that a word names, before or after their number, or that a unit says by itself. `told`: what was read already. */
export function recogniseReadings(frame: Frame, told: readonly Fact[]): Fact[] {
  const facts: Fact[] = [
    ...listedReadings(frame),
    ...rowsOfSystems(frame),
    ...valuesThenSystems(frame),
    ...readingsUnderClosing(frame),
  ];
  let heading: Heading | null = null;
  const saidBefore = (i: number) =>
    [...told, ...facts].filter(({ at }) => at < i).sort((a, b) => a.at - b.at);
  for (const [c, clause] of frame.clauses.entries()) {
    const there = leftOutThere(frame, clause);
    const read = labelledReadings(frame, clause);
    const found = there === null ? read : read.map((fact) => ({ ...fact, inTurn: there }));
    facts.push(...found);
    const more = [
      readingAcrossComma(frame, c),
      readingUnderHeading(frame, clause, heading) ?? readingLikeBefore(frame, c),
    ];
    facts.push(...more.filter((fact) => fact !== null));
    facts.push(...readingsOfLeftOut(frame, clause, saidBefore(clause.to)));
    const before = saidBefore(clause.to);
    const later = laterValue(frame, clause, before) ?? laterThan(frame, clause, before);
    const earlier = later && earlierValue(frame, later, before);
    facts.push(...[earlier, later].filter((fact) => fact !== null));
    facts.push(...readingsByUnit(frame, clause));
    heading = headingOf(frame, clause, found, heading);
    facts.push(...readingsUnderLabel(frame, clause, heading, found));
  }
  return facts;
}
