import { describe, expect, it } from 'vitest';
import type { WaterEvent } from '../../src/estimation/water-event.ts';
import type { LocalDate } from '../../src/greenhouse/local-time.ts';
import type { SystemId } from '../../src/greenhouse/system.ts';
import type { PastRound } from '../../src/logbook/rounds.ts';
import { unreportedTopUps } from '../../src/logbook/unreported-top-ups.ts';

const [tubs, jars, bench, rail] = ['s1', 's2', 's3', 's4'] as unknown as [
  SystemId,
  SystemId,
  SystemId,
  SystemId,
];
const dayMs = 86_400_000;
const hourMs = 3_600_000;

/** Rounds at 7 on these days, each asking for a top-up of the systems named. */
function rounds(asked: Readonly<Record<number, readonly SystemId[]>>, until = 40): PastRound[] {
  return Array.from({ length: until }, (_, day) => ({
    date: `day ${String(day)}` as LocalDate,
    sentAtMs: day * dayMs + 7 * hourMs,
    duties: (asked[day] ?? []).map((system) => ({ kind: 'top-up', system }) as never),
  }));
}

function fill(day: number, litres: number): WaterEvent {
  const atMs = day * dayMs + 9 * hourMs;
  return { kind: 'top-up', atMs, litres, approximate: false, askedL: null };
}

function evening(day: number): number {
  return day * dayMs + 19 * hourMs;
}

function chances(
  said: readonly (readonly [SystemId, readonly WaterEvent[]])[],
  asked: Readonly<Record<number, readonly SystemId[]>>,
  refused: readonly (readonly [SystemId, readonly number[]])[] = [],
  nowMs = evening(39),
): number[] {
  const found = unreportedTopUps(new Map(said), new Map(refused), rounds(asked), nowMs);
  return (found.get(tubs) ?? []).map((event) => ('chance' in event ? event.chance : -1));
}

describe('A top-up that was asked for and not reported', () => {
  it('is mostly done where another of the same round was reported, else mostly not', () => {
    const asked = { 10: [tubs, jars] };
    const [beside] = chances([[jars, [fill(10, 3)]]], asked);
    const [silence] = chances([[jars, []]], asked);
    expect(beside).toBeGreaterThan(0.9);
    expect(silence).toBeLessThan(0.3);
  });

  it('is as likely done as not where nothing else was asked', () => {
    const [chance] = chances([], { 10: [tubs] });
    expect(chance).toBeGreaterThan(0.3);
    expect(chance).toBeLessThan(0.7);
  });

  it('counts from the next morning on, before that morning sends its round', () => {
    const asked = { 39: [tubs, jars] };
    const said = [[jars, [fill(39, 3)]]] as const;
    expect(chances(said, asked, [], evening(39))).toEqual([]);
    expect(chances(said, asked, [], 40 * dayMs + 7 * hourMs)).toHaveLength(1);
  });

  it('is the less likely done the more of the round is missing', () => {
    const missing = (...others: SystemId[]) =>
      chances([[jars, [fill(10, 3)]]], { 10: [tubs, jars, ...others] })[0]!;
    expect(missing()).toBeGreaterThan(missing(bench));
    expect(missing(bench)).toBeGreaterThan(missing(bench, rail));
  });

  it('is none where it was reported, refused, or its day is not over', () => {
    expect(chances([[tubs, [fill(10, 20)]]], { 10: [tubs] })).toEqual([]);
    expect(chances([], { 10: [tubs] }, [[tubs, [10 * dayMs + 10 * hourMs]]])).toEqual([]);
    expect(chances([], { 39: [tubs] })).toEqual([]);
  });

  it('is believed more readily of a household whose next amounts showed that it had been done', () => {
    const steady = [fill(0, 20), fill(10, 20)];
    const asked = { 20: [tubs], 32: [tubs] };
    const done = chances([[tubs, [...steady, fill(21, 2)]]], asked);
    const undone = chances([[tubs, [...steady, fill(21, 22)]]], asked);
    expect(done[0]).toBe(undone[0]);
    expect(done[1]).toBeGreaterThan(done[0]! + 0.1);
    expect(undone[1]).toBeLessThan(undone[0]! - 0.1);
  });
});
