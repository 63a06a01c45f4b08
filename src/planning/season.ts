import type { Entry } from '../greenhouse/entry.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import {
  daysBetween,
  instantOf,
  type LocalDate,
  type LocalTime,
  localDateOf,
  plusDays,
} from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { System, SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** What a system took and gave since it was planted. */
export interface SeasonFigures {
  readonly system: SystemId;
  readonly crop: string | null;
  readonly plants: number;
  readonly from: LocalDate;
  /** Nobody said when it was planted: counted from the logbook's first day. */
  readonly isFromLogbook: boolean;
  readonly days: number;
  /** Litres put in: top-ups and changes of solution. */
  readonly litres: number;
  readonly nutrientMl: number;
  /** Days on which somebody logged something of it. */
  readonly visits: number;
  /** Minutes without power, pump or air. */
  readonly troubleMin: number;
  readonly harvestG: number;
  readonly firstHarvestOn: LocalDate | null;
  /** Told as such, or else the first that was picked. */
  readonly firstFruitOn: LocalDate | null;
  readonly gPerPlant: number | null;
  readonly gPerLitre: number | null;
}

/** Why a comparison is not fair. */
export type Unfairness = 'crops' | 'plants' | 'days';

export interface Season {
  readonly systems: readonly SeasonFigures[];
  /** null: fewer than two systems have given anything. */
  readonly bestPerPlant: SystemId | null;
  readonly bestPerLitre: SystemId | null;
  readonly unfair: readonly Unfairness[];
}

/** Plant counts and days are unlike from here on: the larger over the smaller. */
const unlikeFrom = 1.5;

export function seasonOf(
  greenhouse: Greenhouse,
  logbook: Logbook,
  createdAtMs: number,
  nowMs: number,
): Season {
  const systems = greenhouse.systems.map((system) =>
    figuresOf(system, greenhouse, logbook, createdAtMs, nowMs),
  );
  const giving = systems.filter(({ harvestG }) => harvestG > 0);
  return {
    systems,
    bestPerPlant: bestBy(giving, ({ gPerPlant }) => gPerPlant),
    bestPerLitre: bestBy(giving, ({ gPerLitre }) => gPerLitre),
    unfair: giving.length > 1 ? unfairnessOf(giving) : [],
  };
}

/** The crop that grows, or else the last that grew. */
function cropOf(system: System): {
  readonly crop: string | null;
  readonly plants: number;
  readonly from: LocalDate | null;
  readonly to: LocalDate | null;
} {
  const last = system.grown?.at(-1);
  if (system.plants === 0 && last) return last;
  const { crop, plants, plantedOn } = system;
  return { crop, plants, from: plantedOn ?? null, to: null };
}

function figuresOf(
  system: System,
  { timeZone }: Greenhouse,
  logbook: Logbook,
  createdAtMs: number,
  nowMs: number,
): SeasonFigures {
  const { crop, plants, from: plantedOn, to } = cropOf(system);
  const dateOf = (atMs: number): LocalDate => localDateOf(atMs, timeZone);
  const firstMs = Math.min(createdAtMs, logbook.all[0]?.atMs ?? createdAtMs);
  const from = plantedOn ?? dateOf(firstMs);
  const fromMs = instantOf(from, midnight, timeZone);
  const untilMs =
    to === null ? nowMs : Math.min(nowMs, instantOf(plusDays(to, 1), midnight, timeZone));
  const within = ({ atMs }: Entry): boolean => atMs >= fromMs && atMs <= untilMs;
  const shelf = (quantity: Quantity): readonly Entry[] =>
    liveEntries(logbook, system.id, quantity).filter(within);
  const sum = (entries: readonly Entry[]): number =>
    entries.reduce((total, { value }) => total + value, 0);
  const earliestOf = (entries: readonly Entry[]): LocalDate | null =>
    entries.length > 0 ? dateOf(Math.min(...entries.map(({ atMs }) => atMs))) : null;
  const harvests = shelf('harvest');
  const harvestG = sum(harvests);
  const litres = sum([...shelf('top-up'), ...shelf('reservoir-change')]);
  const visited = logbook.all.filter(
    (entry) =>
      entry.system === system.id &&
      !entry.struck &&
      entry.source.kind === 'member' &&
      within(entry),
  );
  return {
    system: system.id,
    crop,
    plants,
    from,
    isFromLogbook: plantedOn === null,
    days: Math.max(0, daysBetween(from, dateOf(untilMs))),
    litres,
    nutrientMl: sum(shelf('dose').filter(({ product = '' }) => !/ph/i.test(product))),
    visits: new Set(visited.map(({ atMs }) => dateOf(atMs))).size,
    troubleMin: troubleMin(system.id, logbook, fromMs, untilMs),
    harvestG,
    firstHarvestOn: earliestOf(harvests),
    firstFruitOn: earliestOf([
      ...harvests,
      ...shelf('note').filter(({ milestone }) => milestone === 'first-fruit'),
    ]),
    gPerPlant: plants > 0 && harvestG > 0 ? harvestG / plants : null,
    gPerLitre: litres > 0 && harvestG > 0 ? harvestG / litres : null,
  };
}

const midnight = '00:00' as LocalTime;

/** Minutes in which something was out for the system, each counted once. */
function troubleMin(system: SystemId, logbook: Logbook, fromMs: number, untilMs: number): number {
  const places = [system, null];
  const back = places.flatMap((place) => liveEntries(logbook, place, 'restored'));
  const spans = places
    .flatMap((place) => liveEntries(logbook, place, 'outage'))
    .map((outage) => {
      const ends = back
        .filter(({ atMs, of }) => (of ?? 'power') === (outage.of ?? 'power') && atMs >= outage.atMs)
        .map(({ atMs }) => atMs);
      return [
        Math.max(outage.atMs, fromMs),
        Math.min(untilMs, ends.length > 0 ? Math.min(...ends) : untilMs),
      ] as const;
    })
    .filter(([start, end]) => end > start)
    .toSorted(([one], [other]) => one - other);
  let totalMs = 0;
  let reachedMs = fromMs;
  for (const [start, end] of spans) {
    totalMs += Math.max(0, end - Math.max(start, reachedMs));
    reachedMs = Math.max(reachedMs, end);
  }
  return Math.round(totalMs / 60_000);
}

function bestBy(
  systems: readonly SeasonFigures[],
  measure: (figures: SeasonFigures) => number | null,
): SystemId | null {
  const measured = systems.filter((figures) => measure(figures) !== null);
  if (measured.length < 2) return null;
  return measured.reduce((best, each) => (measure(each)! > measure(best)! ? each : best)).system;
}

function unfairnessOf(systems: readonly SeasonFigures[]): readonly Unfairness[] {
  const unlike = (values: readonly number[]): boolean =>
    Math.max(...values) >= unlikeFrom * Math.max(1, Math.min(...values));
  return [
    ...(new Set(systems.map(({ crop }) => crop)).size > 1 ? (['crops'] as const) : []),
    ...(unlike(systems.map(({ plants }) => plants)) ? (['plants'] as const) : []),
    ...(unlike(systems.map(({ days }) => days)) ? (['days'] as const) : []),
  ];
}
