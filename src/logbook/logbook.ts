import type { Entry, EntryNo } from '../greenhouse/entry.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { SystemId } from '../greenhouse/system.ts';

/**
 * The entries of one greenhouse, append-only. A new logbook is given for every change, sharing what
 * is unchanged with the old one, so that a handling that fails leaves nothing behind.
 */
export interface Logbook {
  /** Number n stands at n - 1; struck entries stay, marked. */
  readonly all: readonly Entry[];
  /** Live entries of one system (or the greenhouse) and quantity, by time held, then number. */
  readonly shelves: ReadonlyMap<ShelfKey, readonly Entry[]>;
}

type ShelfKey = `${string}|${Quantity}`;

export const emptyLogbook: Logbook = { all: [], shelves: new Map() };

/** @throws RangeError where the numbers do not go on from the last one. */
export function withEntries(logbook: Logbook, entries: readonly Entry[]): Logbook {
  if (entries.length === 0) return logbook;
  const all = [...logbook.all];
  const shelves = new Map(logbook.shelves);
  for (const entry of entries) {
    if (entry.no !== all.length + 1) {
      throw new RangeError(`entry ${entry.no} does not follow entry ${all.length}`);
    }
    all.push(entry);
    if (!entry.struck) putOnShelf(shelves, entry);
  }
  return { all, shelves };
}

/** Marks entries as struck out; those struck before keep their first mark. */
export function withStrikes(
  logbook: Logbook,
  strikes: readonly { readonly entry: EntryNo; readonly byHandle: string; readonly atMs: number }[],
): Logbook {
  if (strikes.length === 0) return logbook;
  const all = [...logbook.all];
  const shelves = new Map(logbook.shelves);
  for (const { entry: no, byHandle, atMs } of strikes) {
    const entry = all[no - 1];
    if (!entry) throw new RangeError(`a strike names entry ${no}, which does not exist`);
    if (entry.struck) continue;
    all[no - 1] = { ...entry, struck: { byHandle, atMs } };
    const key = shelfKey(entry.system, entry.quantity);
    shelves.set(
      key,
      (shelves.get(key) ?? []).filter((other) => other.no !== no),
    );
  }
  return { all, shelves };
}

/** Live entries of a quantity, earliest first. */
export function liveEntries(
  logbook: Logbook,
  system: SystemId | null,
  quantity: Quantity,
): readonly Entry[] {
  return logbook.shelves.get(shelfKey(system, quantity)) ?? [];
}

export function latestEntry(
  logbook: Logbook,
  system: SystemId | null,
  quantity: Quantity,
): Entry | null {
  return liveEntries(logbook, system, quantity).at(-1) ?? null;
}

/** All that a message caused, struck ones included. */
export function entriesOfMessage(logbook: Logbook, messageId: string): readonly Entry[] {
  return logbook.all.filter((entry) => entry.source.messageId === messageId);
}

/** What stands or stood in the place of these entries, however often they were corrected. */
export function successorsOf(logbook: Logbook, entries: readonly Entry[]): readonly Entry[] {
  const nos = new Set(entries.map(({ no }) => no));
  return logbook.all.filter((entry) => {
    const succeeds = !nos.has(entry.no) && entry.inPlaceOf?.some((no) => nos.has(no)) === true;
    if (succeeds) nos.add(entry.no);
    return succeeds;
  });
}

function shelfKey(system: SystemId | null, quantity: Quantity): ShelfKey {
  return `${system ?? ''}|${quantity}`;
}

function putOnShelf(shelves: Map<ShelfKey, readonly Entry[]>, entry: Entry): void {
  const key = shelfKey(entry.system, entry.quantity);
  const shelf = shelves.get(key) ?? [];
  let place = shelf.length;
  while (place > 0 && isLater(shelf[place - 1]!, entry)) place -= 1;
  shelves.set(key, [...shelf.slice(0, place), entry, ...shelf.slice(place)]);
}

function isLater(one: Entry, other: Entry): boolean {
  return one.atMs > other.atMs || (one.atMs === other.atMs && one.no > other.no);
}
