import type { Fault } from '../../greenhouse/file/fault.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import { systemIdAt } from '../../greenhouse/system.ts';
import type { Standing } from '../standing.ts';

export type ReplacedSetUp =
  | { readonly ok: true; readonly greenhouse: Greenhouse }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * The set-up of a file in the place of the present one. A system is known again by its name and keeps
 * its entries; one that has entries cannot be left out, nor a member who wrote any.
 */
export function replacedSetUp(standing: Standing, file: Greenhouse): ReplacedSetUp {
  const present = standing.greenhouse;
  const idOfFile = new Map<SystemId, SystemId>();
  let lastId = Math.max(0, ...present.systems.map(({ id }) => Number(id.slice(1))));
  const systems = file.systems.map((system): System => {
    const known = present.systems.find(({ name }) => isSameName(name, system.name));
    if (!known) lastId += 1;
    const id = known?.id ?? systemIdAt(lastId);
    idOfFile.set(system.id, id);
    return { ...system, id };
  });
  const faults = [...missingSystems(standing, systems), ...missingMembers(standing, file)];
  if (faults.length > 0) return { ok: false, faults };
  const chores = file.chores.map((chore) => ({
    ...chore,
    system: chore.system === null ? null : idOfFile.get(chore.system)!,
  }));
  return { ok: true, greenhouse: { ...file, systems, chores } };
}

function missingSystems(standing: Standing, kept: readonly System[]): readonly Fault[] {
  return standing.greenhouse.systems
    .filter(({ id }) => !kept.some((system) => system.id === id))
    .filter(({ id }) => standing.logbook.all.some((entry) => entry.system === id))
    .map(({ name }) => ({
      path: 'systems',
      found: `no "${name}"`,
      expected: `"${name}" kept, since the logbook has entries of it`,
    }));
}

function missingMembers(standing: Standing, file: Greenhouse): readonly Fault[] {
  return standing.greenhouse.members
    .filter(({ handle }) => !file.members.some((member) => member.handle === handle))
    .filter(({ handle }) =>
      standing.logbook.all.some(
        ({ source }) => source.kind === 'member' && source.handle === handle,
      ),
    )
    .map(({ handle }) => ({
      path: 'members',
      found: `no "${handle}"`,
      expected: `"${handle}" kept, since the logbook has entries of theirs`,
    }));
}

function isSameName(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}
