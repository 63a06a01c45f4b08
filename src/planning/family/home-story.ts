import type { Entry } from '../../greenhouse/entry.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Logbook } from '../../logbook/logbook.ts';
import type { PastRound } from '../../logbook/rounds.ts';
import { dutyMark } from '../duty-mark.ts';
import { allOutages } from '../outages.ts';
import { jumpedFrom } from '../reading-jump.ts';

/** What happened while somebody was away. */
export interface HomeStory {
  readonly fromMs: number;
  readonly untilMs: number;
  readonly people: readonly PersonStory[];
  readonly changed: readonly Changed[];
  readonly odd: readonly Odd[];
  /** What nobody looked at in all that time; empty after a short absence. */
  readonly unmeasured: readonly {
    readonly systems: readonly SystemId[];
    readonly quantities: readonly LookedAt[];
  }[];
}

type LookedAt = (typeof lookedAt)[number];

export interface PersonStory {
  readonly handle: string;
  /** Days on which they logged anything. */
  readonly visits: number;
  readonly toppedUp: readonly { readonly system: SystemId; readonly litres: number }[];
  /** Other things done, in order. */
  readonly others: readonly Entry[];
}

export interface Changed {
  readonly system: SystemId;
  readonly quantity: 'ph' | 'ec';
  readonly before: number;
  readonly after: number;
}

export type Odd =
  | {
      readonly kind: 'far-from-expected' | 'outside-range' | 'failed';
      readonly entry: Entry;
    }
  /** However often it was told. `untilMs` null: not back yet. */
  | { readonly kind: 'outage'; readonly entry: Entry; readonly untilMs: number | null }
  /** Asked for on so many mornings, and not done on those days. */
  | { readonly kind: 'missed'; readonly system: SystemId; readonly days: number };

interface StorySources {
  readonly greenhouse: Greenhouse;
  readonly logbook: Logbook;
  readonly rounds: readonly PastRound[];
}

/** The story of an absence, told from the logbook; `handle`: who was away. */
export function homeStory(
  { greenhouse, logbook, rounds }: StorySources,
  handle: string,
  fromMs: number,
  untilMs: number,
): HomeStory {
  const live = logbook.all.filter(
    ({ struck, atMs }) => struck === null && atMs >= fromMs && atMs <= untilMs,
  );
  return {
    fromMs,
    untilMs,
    people: greenhouse.members
      .filter((member) => member.handle !== handle)
      .flatMap((member) => personStory(member.handle, live)),
    changed: greenhouse.systems.flatMap(({ id }) =>
      (['ph', 'ec'] as const).flatMap((quantity) =>
        changedOf(id, quantity, logbook, fromMs, untilMs),
      ),
    ),
    odd: [
      ...inOrder([
        ...live.flatMap((entry) => oddOf(entry, greenhouse, logbook)),
        ...outagesOf(greenhouse, logbook, fromMs, untilMs),
      ]),
      ...missed(greenhouse, logbook, rounds, fromMs, untilMs),
    ],
    unmeasured: untilMs - fromMs < LEAST_UNMEASURED_MS ? [] : unmeasured(greenhouse, live),
  };
}

const told: readonly Quantity[] = [
  'dose',
  'reservoir-change',
  'calibration',
  'harvest',
  'aeration',
  'note',
];

function personStory(handle: string, live: readonly Entry[]): readonly PersonStory[] {
  const own = live.filter(({ source }) => source.kind === 'member' && source.handle === handle);
  if (own.length === 0) return [];
  const litres = new Map<SystemId, number>();
  for (const { quantity, system, value } of own) {
    if (quantity !== 'top-up' || system === null) continue;
    litres.set(system, (litres.get(system) ?? 0) + value);
  }
  return [
    {
      handle,
      visits: new Set(own.map(({ atMs }) => Math.floor(atMs / 86_400_000))).size,
      toppedUp: [...litres].map(([system, sum]) => ({ system, litres: sum })),
      others: own.filter(({ quantity }) => told.includes(quantity)).slice(0, 6),
    },
  ];
}

/** Hand meters repeat to about half of this; common practice. EC in mS/cm. */
const WORTH_TELLING = { ph: 0.2, ec: 0.2 } as const;

function changedOf(
  system: SystemId,
  quantity: 'ph' | 'ec',
  { all }: Logbook,
  fromMs: number,
  untilMs: number,
): readonly Changed[] {
  const readings = all.filter(
    (entry) => entry.struck === null && entry.system === system && entry.quantity === quantity,
  );
  const before = readings.findLast(({ atMs }) => atMs < fromMs);
  const after = readings.findLast(({ atMs }) => atMs >= fromMs && atMs <= untilMs);
  if (!before || !after || Math.abs(after.value - before.value) < WORTH_TELLING[quantity])
    return [];
  return [{ system, quantity, before: before.value, after: after.value }];
}

function oddOf(entry: Entry, greenhouse: Greenhouse, logbook: Logbook): readonly OddEntry[] {
  if (entry.quantity === 'duty-failed') return [{ kind: 'failed', entry }];
  if (jumpedFrom(entry, logbook)) return [{ kind: 'far-from-expected', entry }];
  const system = greenhouse.systems.find(({ id }) => id === entry.system);
  const range =
    entry.quantity === 'ph' ? system?.ph : entry.quantity === 'ec' ? system?.ecMsPerCm : undefined;
  const isOutside = range && (entry.value < range[0] || entry.value > range[1]);
  return isOutside ? [{ kind: 'outside-range', entry }] : [];
}

function outagesOf(
  { systems }: Greenhouse,
  logbook: Logbook,
  fromMs: number,
  untilMs: number,
): readonly OddEntry[] {
  const places = systems.map(({ id }) => id);
  return allOutages(logbook, places)
    .filter(({ sinceMs }) => sinceMs >= fromMs && sinceMs <= untilMs)
    .map(({ entry, untilMs: backMs }) => ({ kind: 'outage', entry, untilMs: backMs }));
}

type OddEntry = Extract<Odd, { readonly entry: Entry }>;

function inOrder(odd: readonly OddEntry[]): readonly OddEntry[] {
  return odd.toSorted((one, other) => one.entry.atMs - other.entry.atMs);
}

const lookedAt = ['ph', 'ec', 'level'] as const;
/** So long nothing needs measuring that was measured before leaving. */
const LEAST_UNMEASURED_MS = 3 * 86_400_000;

/** Systems of which the same is not known stand together. */
function unmeasured({ systems }: Greenhouse, live: readonly Entry[]): HomeStory['unmeasured'] {
  const alike = new Map<string, { systems: SystemId[]; quantities: readonly LookedAt[] }>();
  for (const { id } of systems) {
    const quantities = unseenOf(id, live);
    if (quantities.length === 0) continue;
    const group = alike.get(quantities.join()) ?? { systems: [], quantities };
    group.systems.push(id);
    alike.set(quantities.join(), group);
  }
  return [...alike.values()];
}

function unseenOf(id: SystemId, live: readonly Entry[]): readonly LookedAt[] {
  const seen = new Set(live.filter(({ system }) => system === id).map((each) => each.quantity));
  const wasWatered = seen.has('top-up') || seen.has('reservoir-change');
  return lookedAt.filter(
    (quantity) => !seen.has(quantity) && !(quantity === 'level' && wasWatered),
  );
}

/** Mornings whose top-up was not done before the next one. */
function missed(
  { systems }: Greenhouse,
  logbook: Logbook,
  rounds: readonly PastRound[],
  fromMs: number,
  untilMs: number,
): readonly Odd[] {
  return systems.flatMap(({ id }): readonly Odd[] => {
    const days = rounds.filter((round, i) => {
      const next = rounds[i + 1];
      if (round.sentAtMs < fromMs || !next || next.sentAtMs > untilMs) return false;
      const asked = round.duties.find(
        ({ kind, system, alongside }) => kind === 'top-up' && system === id && alongside !== true,
      );
      if (!asked) return false;
      const done = dutyMark(asked, logbook, round.sentAtMs);
      return (
        done?.state !== 'done' || !wasDoneBy(asked.system, logbook, round.sentAtMs, next.sentAtMs)
      );
    }).length;
    return days === 0 ? [] : [{ kind: 'missed', system: id, days }];
  });
}

function wasDoneBy(
  system: SystemId | null,
  { all }: Logbook,
  fromMs: number,
  untilMs: number,
): boolean {
  return all.some(
    (entry) =>
      entry.struck === null &&
      entry.system === system &&
      entry.atMs >= fromMs &&
      entry.atMs < untilMs &&
      (entry.quantity === 'top-up' ||
        entry.quantity === 'reservoir-change' ||
        (entry.quantity === 'duty-done' && entry.duty === 'top-up')),
  );
}
