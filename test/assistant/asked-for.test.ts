import { describe, expect, it } from 'vitest';
import { askedFor } from '../../src/assistant/use-cases/asked-for.ts';
import type { EntryDraft } from '../../src/greenhouse/entry.ts';
import { localDateOf } from '../../src/greenhouse/local-time.ts';
import { buckets, gutters, may, quarryLane, standingWith } from './quarry-lane-standing.ts';

const roundMs = Date.parse(may(4, '07:00'));
const topUp = (at: string): EntryDraft => ({
  system: buckets,
  quantity: 'top-up',
  value: 11,
  atMs: Date.parse(at),
});

function withRound(said: Parameters<typeof standingWith>[0], nowIso: string) {
  const date = localDateOf(roundMs, quarryLane.timeZone);
  const duties = [{ kind: 'top-up' as const, system: buckets, dueOn: date, litres: 14 }];
  return { ...standingWith(said, nowIso), rounds: [{ date, sentAtMs: roundMs, duties }] };
}

describe('A top-up', () => {
  it('remembers the litres that the round before it had asked for', () => {
    const [draft] = askedFor([topUp(may(4, '08:00'))], withRound([], may(4, '08:00')));
    expect(draft!.askedL).toBe(14);
  });

  it('does not, where nothing was asked of that system, or before the round', () => {
    const standing = withRound([], may(4, '08:00'));
    const other = { ...topUp(may(4, '08:00')), system: gutters };
    const [elsewhere, earlier] = askedFor([other, topUp(may(4, '06:00'))], standing);
    expect(elsewhere).not.toHaveProperty('askedL');
    expect(earlier).not.toHaveProperty('askedL');
  });

  it('does not, where another one answered the round already', () => {
    const said = [{ system: buckets, quantity: 'top-up' as const, value: 6, at: may(4, '07:30') }];
    const [second] = askedFor([topUp(may(4, '08:00'))], withRound(said, may(4, '08:00')));
    expect(second).not.toHaveProperty('askedL');
  });
});
