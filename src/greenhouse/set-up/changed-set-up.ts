import { sameName } from '../file/cross-checks.ts';
import { readGreenhouseFile } from '../file/read-greenhouse-file.ts';
import { writeGreenhouseFile } from '../file/write-greenhouse-file.ts';
import type { Greenhouse } from '../greenhouse.ts';
import type { LocalDate } from '../local-time.ts';
import { mayHandleAcids } from '../member.ts';
import { withOwnUnits } from '../own-units.ts';
import { type System, type SystemId, systemIdAt } from '../system.ts';
import { sameData } from './same-data.ts';
import type { SetUpChange, UnfitChange, WantedQuantity } from './set-up-change.ts';

export type ChangedSetUp =
  | { readonly ok: true; readonly greenhouse: Greenhouse }
  | { readonly ok: false; readonly because: UnfitChange };

/**
 * The set-up with a change made. `usedMl`: mL of a product in all the doses logged, since the set-up
 * says what there was before them.
 */
export function changedSetUp(
  greenhouse: Greenhouse,
  change: SetUpChange,
  usedMl: (product: string) => number,
): ChangedSetUp {
  const unfit = unfitFor(greenhouse, change);
  if (unfit) return { ok: false, because: unfit };
  const next = made(greenhouse, change, usedMl);
  if (sameData(next, greenhouse)) return { ok: false, because: { kind: 'same-already' } };
  const read = readGreenhouseFile(writeGreenhouseFile(next));
  if (!read.ok) return { ok: false, because: { kind: 'out-of-bounds' } };
  return { ok: true, greenhouse: next };
}

/** A new system's id: one that no system has or had. */
export function nextSystemId({
  systems,
  formerSystems = [],
}: Pick<Greenhouse, 'systems' | 'formerSystems'>): SystemId {
  const numbers = [...systems, ...formerSystems].map(({ id }) => Number(id.slice(1)));
  return systemIdAt(Math.max(0, ...numbers) + 1);
}

function unfitFor(greenhouse: Greenhouse, change: SetUpChange): UnfitChange | null {
  const { systems, chores, containers, members } = greenhouse;
  switch (change.kind) {
    case 'chore-added': {
      const isThere = chores.some(({ name }) => sameName(name) === sameName(change.chore.name));
      return isThere ? { kind: 'chore-there' } : null;
    }
    case 'chore-moved':
    case 'chore-dropped':
      return chores.some(({ name }) => name === change.name) ? null : { kind: 'no-such-chore' };
    case 'system-added':
      return takenBy(systems, change.system.name, null);
    case 'system-renamed':
      return takenBy(systems, change.name, change.system);
    case 'alias-added':
      return takenBy(systems, change.alias, change.system);
    case 'system-dropped': {
      if (systems.length < 2) return { kind: 'only-system' };
      const its = chores.filter(({ system }) => system === change.system);
      return its.length > 0 ? { kind: 'has-chores', chores: its.map(({ name }) => name) } : null;
    }
    case 'figure-set': {
      const system = systems.find(({ id }) => id === change.system);
      const { brimL, lowL } = { ...system, [change.figure]: change.value } as System;
      return lowL >= brimL ? { kind: 'low-above-brim' } : null;
    }
    case 'butt-counted': {
      const { rainButt } = greenhouse;
      if (!rainButt) return { kind: 'no-butt' };
      const { litres } = rainButt;
      return heldL(change.held, litres) > litres ? { kind: 'more-than-butt', litres } : null;
    }
    case 'acids-shown': {
      const member = members.find(({ handle }) => handle === change.handle);
      return member && mayHandleAcids(member) === change.isShown ? { kind: 'same-already' } : null;
    }
    case 'container-dropped': {
      const isThere = containers.some(({ name }) => sameName(name) === sameName(change.name));
      return isThere ? null : { kind: 'no-such-container' };
    }
    default:
      return null;
  }
}

function takenBy(
  systems: readonly System[],
  name: string,
  self: SystemId | null,
): UnfitChange | null {
  const other = systems.find(
    (system) =>
      system.id !== self &&
      [system.name, ...system.aliases].some((known) => sameName(known) === sameName(name)),
  );
  return other ? { kind: 'name-taken', by: other.name } : null;
}

function made(
  greenhouse: Greenhouse,
  change: SetUpChange,
  usedMl: (product: string) => number,
): Greenhouse {
  const { systems, chores, containers, members, stock, formerSystems = [] } = greenhouse;
  const withSystem = (id: SystemId, what: (system: System) => System): Greenhouse => ({
    ...greenhouse,
    systems: systems.map((system) => (system.id === id ? what(system) : system)),
  });
  switch (change.kind) {
    case 'chore-added':
      return { ...greenhouse, chores: [...chores, change.chore] };
    case 'chore-moved':
      return {
        ...greenhouse,
        chores: chores.map((chore) =>
          chore.name === change.name ? { ...chore, everyDays: change.everyDays } : chore,
        ),
      };
    case 'chore-dropped':
      return { ...greenhouse, chores: chores.filter(({ name }) => name !== change.name) };
    case 'system-added':
      return { ...greenhouse, systems: [...systems, change.system] };
    case 'system-renamed':
      return withSystem(change.system, (system) => ({ ...system, name: change.name }));
    case 'system-dropped':
      return {
        ...greenhouse,
        systems: systems.filter(({ id }) => id !== change.system),
        formerSystems: [...formerSystems, ...systems.filter(({ id }) => id === change.system)],
      };
    case 'figure-set':
      return withSystem(change.system, (system) => ({ ...system, [change.figure]: change.value }));
    case 'range-set':
      return withSystem(change.system, (system) => ({
        ...system,
        [rangeFields[change.quantity]]: change.range,
      }));
    case 'alias-added':
      return withSystem(change.system, (system) => ({
        ...system,
        aliases: [...system.aliases, change.alias],
      }));
    case 'alias-dropped':
      return withSystem(change.system, (system) => ({
        ...system,
        aliases: system.aliases.filter((alias) => sameName(alias) !== sameName(change.alias)),
      }));
    case 'planted': {
      const { crop, plants, on } = change;
      return withSystem(change.system, (system) => ({
        ...emptied(system, on),
        crop,
        plants,
        plantedOn: on,
      }));
    }
    case 'cleared':
      return withSystem(change.system, (system) => emptied(system, change.on));
    case 'language-set':
      return {
        ...greenhouse,
        members: members.map((member) =>
          member.handle === change.handle ? { ...member, language: change.language } : member,
        ),
      };
    case 'units-set':
      return {
        ...greenhouse,
        members: members.map((member) =>
          member.handle === change.handle
            ? withOwnUnits(member, change.units, greenhouse.units)
            : member,
        ),
      };
    case 'container-set':
    case 'container-dropped': {
      const kept = containers.filter(({ name }) => sameName(name) !== sameName(change.name));
      if (change.kind === 'container-dropped') return { ...greenhouse, containers: kept };
      const { name, litres } = change;
      return { ...greenhouse, containers: [...kept, { name, litres }] };
    }
    case 'morning-set':
      return { ...greenhouse, morning: change.morning };
    case 'risk-set':
      return { ...greenhouse, risk: change.risk };
    case 'stock-added':
    case 'stock-counted': {
      const item = stock.find(({ product }) => product === change.product);
      const { product } = change;
      const used = usedMl(product);
      // More was logged as given than there was said to be: what is bought is all there is.
      const before = change.kind === 'stock-added' ? Math.max(used, item?.mL ?? 0) : used;
      const changed = { ...item, product, mL: before + change.mL };
      return {
        ...greenhouse,
        stock: item ? stock.map((each) => (each === item ? changed : each)) : [...stock, changed],
      };
    }
    case 'butt-set': {
      const { litres, isUsual } = change;
      const { heldL: held = null, asOfMs = 0 } = greenhouse.rainButt ?? {};
      const fitting = held === null ? null : Math.min(held, litres);
      return { ...greenhouse, rainButt: { litres, heldL: fitting, asOfMs, isUsual } };
    }
    case 'butt-counted': {
      const { rainButt } = greenhouse;
      if (!rainButt) return greenhouse;
      const held = heldL(change.held, rainButt.litres);
      return { ...greenhouse, rainButt: { ...rainButt, heldL: held, asOfMs: change.atMs } };
    }
    case 'acids-shown':
      return {
        ...greenhouse,
        members: members.map((member) =>
          member.handle === change.handle ? { ...member, handlesAcids: change.isShown } : member,
        ),
      };
    case 'set-up-anew':
      return change.greenhouse;
  }
}

/** Litres of a share of the butt, or as they were said. */
function heldL(
  held: Extract<SetUpChange, { kind: 'butt-counted' }>['held'],
  brimL: number,
): number {
  return 'share' in held ? held.share * brimL : held.litres;
}

/** A system without its plants; what grew in it is remembered. */
function emptied({ plantedOn, ...system }: System, on: LocalDate): System {
  const { crop, plants, grown = [] } = system;
  if (crop === null || plants === 0) return { ...system, crop: null, plants: 0 };
  const past = { crop, plants, from: plantedOn ?? null, to: on };
  return { ...system, crop: null, plants: 0, grown: [...grown, past] };
}

const rangeFields = {
  ph: 'ph',
  ec: 'ecMsPerCm',
  'water-temperature': 'waterTemperatureC',
} as const satisfies Readonly<Record<WantedQuantity, keyof System>>;
