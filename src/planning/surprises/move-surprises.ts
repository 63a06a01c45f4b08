import type { Entry } from '../../greenhouse/entry.ts';
import type { Range, System } from '../../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../../logbook/logbook.ts';
import { spaced } from './spaced.ts';
import type { Surprise } from './surprise.ts';

type Moving = 'ph' | 'ec';

/** Common practice: what a healthy solution moves a day, and a move too small for a word. */
const USUAL: Readonly<Record<Moving, { readonly perDay: number; readonly least: number }>> = {
  ph: { perDay: 0.1, least: 0.45 },
  ec: { perDay: 0.07, least: 0.3 },
};
/** This many times faster than usual. */
const FASTER = 2;
/** A run of readings one way: at least so many, within so long. */
const LEAST_READINGS = 3;
const LONGEST_MS = 6 * 86_400_000;
const SHORTEST_MS = 18 * 3_600_000;
const APART_MS = 6 * 3_600_000;
const ENTRIES_USED = 40;
/** So many moves are needed before a system's own pace counts. */
const MOVES_KNOWN = 5;
/** The run ends in the outer part of the range, or beyond it. */
const OUTER_SHARE = 0.5;
/** Runs no further apart than this are one. */
const ONE_EVENT_MS = 7 * 86_400_000;
const DAY_MS = 86_400_000;

/** pH or EC running to the edge of its range by itself, faster than it ever did. */
export function moveSurprises(system: System, logbook: Logbook): readonly Surprise[] {
  return [
    ...moveOf(system, 'ph', system.ph, logbook),
    ...moveOf(system, 'ec', system.ecMsPerCm, logbook),
  ];
}

function moveOf(
  system: System,
  quantity: Moving,
  range: Range,
  logbook: Logbook,
): readonly Surprise[] {
  const entries = spaced(liveEntries(logbook, system.id, quantity), APART_MS, ENTRIES_USED);
  const moves = entries.flatMap((to, i): Move[] => {
    const from = entries[i - 1];
    return from && !isStirredBetween(system, logbook, from, to) ? [{ from, to, at: i }] : [];
  });
  const runAt = (at: number) => fastRun(moves, at, quantity, range);
  const run = runAt(entries.length - 1);
  if (!run) return [];
  const { from, to, usualPerDay } = run;
  return [
    {
      kind: 'move',
      key: `move:${system.id}:${quantity}:${beginning(entries, runAt).no}`,
      atMs: to.atMs,
      system: system.id,
      quantity,
      from: from.value,
      to: to.value,
      fromMs: from.atMs,
      usualPerDay,
    },
  ];
}

/** Where a run first was one: what goes on for days, or again after a pause, is one event. */
function beginning(entries: readonly Entry[], runAt: (at: number) => unknown): Entry {
  let first = entries.at(-1)!;
  for (let at = entries.length - 2; at >= 0; at -= 1) {
    const entry = entries[at]!;
    if (first.atMs - entry.atMs > ONE_EVENT_MS) break;
    if (runAt(at)) first = entry;
  }
  return first;
}

/** The run of moves that ends at an entry, where it is one to be told. */
function fastRun(
  moves: readonly Move[],
  at: number,
  quantity: Moving,
  range: Range,
): { readonly from: Entry; readonly to: Entry; readonly usualPerDay: number } | null {
  const run = lastRun(
    moves.filter((move) => move.at <= at),
    at,
  );
  const [from, to] = [run[0]?.from, run.at(-1)?.to];
  if (!from || !to || run.length + 1 < LEAST_READINGS) return null;
  const spanMs = to.atMs - from.atMs;
  const move = to.value - from.value;
  const { perDay, least } = USUAL[quantity];
  const usualPerDay = Math.max(perDay, paceOf(moves.filter((each) => each.at < run[0]!.at)));
  const isFast = Math.abs(move) >= FASTER * usualPerDay * (spanMs / DAY_MS);
  const isTold = spanMs >= SHORTEST_MS && isFast && Math.abs(move) >= least;
  return isTold && isOutward(move, to.value, range) ? { from, to, usualPerDay } : null;
}

interface Move {
  readonly from: Entry;
  readonly to: Entry;
  readonly at: number;
}

/** The moves up to the last reading that all went one way, one after the other. */
function lastRun(moves: readonly Move[], lastAt: number): readonly Move[] {
  const run: Move[] = [];
  let at = lastAt;
  for (const move of moves.toReversed()) {
    const way = Math.sign(move.to.value - move.from.value);
    const before = run[0];
    const isOn = move.at === at && way !== 0;
    const isSame = !before || way === Math.sign(before.to.value - before.from.value);
    const isNear = !before || run.at(-1)!.to.atMs - move.from.atMs <= LONGEST_MS;
    if (!isOn || !isSame || !isNear) break;
    run.unshift(move);
    at -= 1;
  }
  return run;
}

/** How far it mostly moves in a day, either way; 0 where that is not known. */
function paceOf(moves: readonly Move[]): number {
  if (moves.length < MOVES_KNOWN) return 0;
  const paces = moves
    .map(({ from, to }) => Math.abs(to.value - from.value) / ((to.atMs - from.atMs) / DAY_MS))
    .toSorted((one, other) => one - other);
  return paces[Math.floor(paces.length / 2)]!;
}

function isOutward(move: number, value: number, [lowest, highest]: Range): boolean {
  const middle = (lowest + highest) / 2;
  const half = (highest - lowest) / 2;
  return Math.sign(move) * (value - middle) >= OUTER_SHARE * half;
}

function isStirredBetween(system: System, logbook: Logbook, from: Entry, to: Entry): boolean {
  return (['dose', 'top-up', 'reservoir-change'] as const).some((quantity) =>
    liveEntries(logbook, system.id, quantity).some(
      ({ atMs }) => atMs >= from.atMs && atMs <= to.atMs,
    ),
  );
}
