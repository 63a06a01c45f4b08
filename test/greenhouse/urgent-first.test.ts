import { describe, expect, it } from 'vitest';
import type { Duty } from '../../src/greenhouse/duty.ts';
import type { LocalDate } from '../../src/greenhouse/local-time.ts';
import type { SystemId } from '../../src/greenhouse/system.ts';
import { urgentFirst } from '../../src/greenhouse/urgent-first.ts';

const on = (day: number): LocalDate => `2027-05-0${day}` as LocalDate;
const duty = (system: string, latest?: number): Duty => ({
  kind: 'check',
  system: system as SystemId,
  dueOn: on(1),
  ...(latest === undefined ? {} : { latestOn: on(latest) }),
});

describe('Open duties named in one sentence', () => {
  it('are all named where they are few, in the order of the trip', () => {
    const few = ['a', 'b', 'c', 'd', 'e'].map((system, place) => duty(system, 9 - place));
    expect(urgentFirst(few)).toEqual({ named: few, more: 0 });
  });

  it('are the ones that turn urgent first where they are many, and a count of the others', () => {
    const many = [
      duty('a'),
      duty('b', 7),
      duty('c', 3),
      duty('d', 2),
      duty('e'),
      duty('f', 5),
      duty('g', 9),
    ];
    const { named, more } = urgentFirst(many);
    expect(named.map(({ system }) => system)).toEqual(['d', 'c', 'f']);
    expect(more).toBe(4);
  });
});
