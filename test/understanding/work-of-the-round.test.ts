import { describe, expect, test } from 'vitest';
import type { Duty } from '../../src/greenhouse/duty.ts';
import type { LocalDate } from '../../src/greenhouse/local-time.ts';
import { understand } from '../../src/understanding/understand.ts';
import { inShort } from './in-short.ts';
import { greenhouseNamed } from './understanding-talk.ts';

const greenhouse = greenhouseNamed();
const writtenAtMs = Date.parse('2027-05-04T08:20:00+01:00');

function read(text: string, asked: Duty['kind'], more: Partial<Duty> = {}): string {
  const [bench] = greenhouse.systems;
  const dueOn = '2027-05-04' as LocalDate;
  const duty: Duty = { kind: asked, system: bench!.id, dueOn, ...more };
  const { statements } = understand(text, {
    greenhouse,
    member: greenhouse.members[1]!,
    writtenAtMs,
    repliedTo: null,
    recentSystem: null,
    openQuestions: [],
    roundDuties: [duty],
    existsSinceMs: 0,
  });
  return inShort(statements, greenhouse, writtenAtMs);
}

describe('A part that was cleaned', () => {
  test.each([
    ['cleaned the pump filter in the bench', 'North bench duty-done 1 clean'],
    ['rinsed the air stones in the buckets', 'Bucket row duty-done 1 clean'],
    [
      'cleaned the filter and topped up 40 l bench',
      'North bench duty-done 1 clean; North bench top-up 40',
    ],
  ])('is done where the round has asked for a clean: %s', (text, expected) => {
    expect(read(text, 'clean')).toBe(expected);
  });

  test.each(["didn't clean the filter in the bench", 'need to clean the bench filter'])(
    'is not done where it is not said so: %s',
    (text) => {
      expect(read(text, 'clean')).not.toContain('duty-done');
    },
  );

  test('is talk where nobody has asked for it', () => {
    expect(read('cleaned the filter and topped up 40 l bench', 'check')).toBe(
      'North bench top-up 40',
    );
  });
});

describe('Air that was set as the round has asked', () => {
  const gutters = greenhouse.systems[2]!.id;

  test('is asked for its minutes, with those asked for as a button', () => {
    expect(read('venturi is set', 'aeration', { system: gutters, minutesPerHour: 10 })).toBe(
      '? missing-amount (10, keep-as-note)',
    );
  });

  test('has no such button where they are of another system', () => {
    expect(read('venturi is set', 'aeration', { minutesPerHour: 10 })).toBe(
      '? missing-amount (keep-as-note)',
    );
  });
});
