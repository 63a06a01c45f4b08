import { describe, expect, it } from 'vitest';
import type { Entry, EntryNo } from '../../src/greenhouse/entry.ts';
import { levelTrack } from '../../src/logbook/level-track.ts';
import { emptyLogbook, withEntries } from '../../src/logbook/logbook.ts';
import { emptyWaterFold, refolded } from '../../src/logbook/water-fold.ts';
import { gutters, quarryLane } from '../wording/quarry-lane.ts';

const dayMs = 86_400_000;
const hourMs = 3_600_000;
const startMs = Date.parse('2027-05-01T08:00:00+01:00');
const system = quarryLane.systems.find(({ id }) => id === gutters)!;

function fillEvery(days: number, count: number): readonly Entry[] {
  return Array.from({ length: count }, (_, n) => ({
    no: (n + 1) as EntryNo,
    system: gutters,
    quantity: 'top-up' as const,
    value: 12,
    atMs: startMs + n * days * dayMs,
    source: { kind: 'member' as const, handle: 'ines', messageId: `m${n}` },
    recordedAtMs: startMs,
    struck: null,
  }));
}

function foldAt(entries: readonly Entry[], nowMs: number) {
  return refolded(
    emptyWaterFold,
    {
      greenhouse: quarryLane,
      createdAtMs: startMs - 30 * dayMs,
      logbook: withEntries(emptyLogbook, entries),
      rounds: [],
      weather: new Map(),
    },
    nowMs,
  );
}

const nowMs = startMs + 20 * dayMs;
const spanOf = (fromMs: number) => ({ fromMs, nowMs, untilMs: nowMs + 7 * dayMs });

describe('the track of a level', () => {
  const track = levelTrack(foldAt(fillEvery(3, 7), nowMs), system, spanOf(startMs - 20 * dayMs));

  it('begins with the first thing known, not with a guess', () => {
    expect(track.past[0]!.atMs).toBe(startMs);
    expect(levelTrack(foldAt([], nowMs), system, spanOf(startMs))).toEqual({ past: [], ahead: [] });
  });

  it('jumps up at a top-up, and falls between', () => {
    const at = startMs + 9 * dayMs;
    const [before, after] = track.past.filter(({ atMs }) => atMs === at);
    expect(after!.likelyL).toBeGreaterThan(before!.likelyL + 5);
    const later = track.past.filter(({ atMs }) => atMs > at && atMs < at + 3 * dayMs);
    expect(later.length).toBeGreaterThan(10);
    expect(later.at(-1)!.likelyL).toBeLessThan(after!.likelyL - 3);
  });

  it('is in order of time, between empty and the brim, and goes on from now', () => {
    const all = [...track.past, ...track.ahead];
    expect(all.map(({ atMs }) => atMs)).toEqual(
      all.map(({ atMs }) => atMs).toSorted((a, b) => a - b),
    );
    for (const { lowL, likelyL, highL } of all) {
      expect(lowL).toBeLessThanOrEqual(likelyL);
      expect(likelyL).toBeLessThanOrEqual(highL);
      expect(lowL).toBeGreaterThanOrEqual(0);
      expect(highL).toBeLessThanOrEqual(system.brimL);
    }
    expect(track.ahead[0]).toEqual(track.past.at(-1));
    expect(track.ahead.at(-1)!.atMs).toBe(nowMs + 7 * dayMs);
  });

  it('grows less sure with the days ahead', () => {
    const width = (point: (typeof track.ahead)[number]) => point.highL - point.lowL;
    expect(width(track.ahead.at(-1)!)).toBeGreaterThan(width(track.ahead[0]!));
  });

  it('is the same whether it is asked for from the beginning or from later on', () => {
    const fromMs = startMs + 10 * dayMs + hourMs;
    const late = levelTrack(foldAt(fillEvery(3, 7), nowMs), system, spanOf(fromMs));
    expect(late.past).toEqual(track.past.filter(({ atMs }) => atMs > fromMs));
  });
});
