import { normalCdf } from '../../estimation/normal.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import type { Reading } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../../logbook/logbook.ts';
import { spaced } from './spaced.ts';
import type { StillSurprise, Surprise } from './surprise.ts';

/**
 * Common practice: by how much two readings of a thing at rest differ, and how far the thing itself
 * wanders in a day, sd in the quantity's unit. A sensor repeats better than a hand.
 */
const MOVES: Readonly<
  Partial<Record<Reading, { readonly hand: number; readonly sensor: number; readonly day: number }>>
> = {
  ph: { hand: 0.07, sensor: 0.02, day: 0.06 },
  ec: { hand: 0.05, sensor: 0.015, day: 0.04 },
  'water-temperature': { hand: 0.3, sensor: 0.1, day: 0.7 },
  'air-temperature': { hand: 0.5, sensor: 0.2, day: 2 },
  humidity: { hand: 3, sensor: 1, day: 8 },
  'dissolved-oxygen': { hand: 0.3, sensor: 0.1, day: 0.4 },
};
/** Common practice: a reservoir in use falls by some hundredths of its brim a day. */
const LEVEL_SHARE_A_DAY = 0.01;
/** Told where a thing alive would stand still so long less than once in so many. */
const LEAST_CHANCE = 1e-4;
const APART_MS = 6 * 3_600_000;
const SHORTEST_MS = 24 * 3_600_000;
const LEAST_TIMES = 4;
const ENTRIES_USED = 60;
const DAY_MS = 86_400_000;

type Still = Surprise & StillSurprise;

/** What shows the same figure in several systems is one meter, carried from one to the next. */
export function oneForEachMeter(
  found: readonly Surprise[],
  systems: readonly SystemId[],
  logbook: Logbook,
): readonly Surprise[] {
  const meters = new Map<string, Still[]>();
  for (const each of found.filter(isOfHandMeter)) {
    const meter = `${each.quantity} ${each.value}`;
    meters.set(meter, [...(meters.get(meter) ?? []), each]);
  }
  const others = found.filter((each) => !isOfHandMeter(each));
  return [...others, ...[...meters.values()].map((stills) => together(stills, systems, logbook))];
}

function isOfHandMeter(surprise: Surprise): surprise is Still {
  return surprise.kind === 'still' && surprise.by === 'hand';
}

/** The key is that of the reading which the meter first stood still at, so that a system more is no news. */
function together(stills: readonly Still[], systems: readonly SystemId[], logbook: Logbook): Still {
  const [last] = stills.toSorted((one, other) => other.atMs - one.atMs);
  const { quantity, value, system } = last!;
  const firstNos = systems.flatMap((each) => {
    const readings = readingsOf(each, quantity as Reading, 'member', logbook);
    return readings.at(-1)?.value === value ? [runAtEnd(readings)[0]!.no] : [];
  });
  return {
    ...last!,
    key: `still:hand:${quantity}:${Math.min(...firstNos)}`,
    fromMs: Math.min(...stills.map(({ fromMs }) => fromMs)),
    times: stills.reduce((sum, { times }) => sum + times, 0),
    elsewhere: stills.flatMap((still) =>
      still.system === null || still.system === system ? [] : [still.system],
    ),
  };
}

function readingsOf(
  of: SystemId | null,
  quantity: Reading,
  source: Entry['source']['kind'],
  logbook: Logbook,
): readonly Entry[] {
  return liveEntries(logbook, of, quantity).filter((entry) => entry.source.kind === source);
}

/** The last readings that are all alike; there is a reading. */
function runAtEnd(readings: readonly Entry[]): readonly Entry[] {
  const { value } = readings.at(-1)!;
  return readings.slice(readings.findLastIndex((entry) => entry.value !== value) + 1);
}

/** A sensor that is stuck, dry or cut off; a hand meter that no longer answers. */
export function stillSurprises(
  system: { readonly id: SystemId; readonly brimL: number } | null,
  logbook: Logbook,
): readonly Surprise[] {
  const quantities: readonly Reading[] = system
    ? ['ph', 'ec', 'water-temperature', 'dissolved-oxygen', 'level']
    : ['air-temperature', 'humidity'];
  return quantities.flatMap((quantity) =>
    (['sensor', 'member'] as const).flatMap((source) => stillOf(system, quantity, source, logbook)),
  );
}

function stillOf(
  system: { readonly id: SystemId; readonly brimL: number } | null,
  quantity: Reading,
  source: Entry['source']['kind'],
  logbook: Logbook,
): readonly Surprise[] {
  const of = system?.id ?? null;
  const all = readingsOf(of, quantity, source, logbook);
  const last = all.at(-1);
  if (!last) return [];
  const alike = runAtEnd(all);
  const first = alike[0]!;
  const run = spaced(alike, APART_MS, ENTRIES_USED);
  if (run.length < LEAST_TIMES || last.atMs - first.atMs < SHORTEST_MS) return [];
  if (quantity === 'level' && wasFilledSince(of, logbook, first.atMs)) return [];
  const step = stepOf(all.slice(-ENTRIES_USED * 4));
  const chance = run.slice(1).reduce((product, { atMs }, i) => {
    const days = (atMs - run[i]!.atMs) / DAY_MS;
    return product * chanceOfSame(quantity, source, days, step, system?.brimL ?? 0);
  }, 1);
  if (chance > LEAST_CHANCE) return [];
  return [
    {
      kind: 'still',
      key: `still:${of ?? ''}:${quantity}:${source}:${first.no}`,
      atMs: last.atMs,
      system: of,
      elsewhere: [],
      quantity,
      by: source === 'sensor' ? 'sensor' : 'hand',
      value: last.value,
      times: alike.length,
      fromMs: first.atMs,
    },
  ];
}

/** The chance that a thing alive reads the same again after some days. */
function chanceOfSame(
  quantity: Reading,
  source: Entry['source']['kind'],
  days: number,
  step: number,
  brimL: number,
): number {
  if (quantity === 'level') {
    const fallL = LEVEL_SHARE_A_DAY * brimL * days;
    const sd = Math.max(step / 2, fallL / 2);
    return normalCdf((step / 2 - fallL) / sd) - normalCdf((-step / 2 - fallL) / sd);
  }
  const moves = MOVES[quantity];
  if (!moves) return 1;
  const error = source === 'sensor' ? moves.sensor : moves.hand;
  const sd = Math.hypot(Math.SQRT2 * error, moves.day * Math.sqrt(days));
  return 2 * normalCdf(step / 2 / sd) - 1;
}

/** What figures are rounded to, by the decimals that were ever said. */
function stepOf(entries: readonly Entry[]): number {
  const decimals = entries.map(({ value }) => /\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0);
  return 10 ** -Math.min(3, Math.max(...decimals));
}

function wasFilledSince(system: SystemId | null, logbook: Logbook, sinceMs: number): boolean {
  return (['top-up', 'reservoir-change'] as const).some((quantity) =>
    liveEntries(logbook, system, quantity).some(({ atMs }) => atMs >= sinceMs),
  );
}
