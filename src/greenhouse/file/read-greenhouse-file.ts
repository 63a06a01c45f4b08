import type { Greenhouse } from '../greenhouse.ts';
import { type SystemId, systemIdAt } from '../system.ts';
import { crossCheck, sameName } from './cross-checks.ts';
import { type Fault, foundText, pathText, valueAt } from './fault.ts';
import { glimpseSchema } from './glimpse.ts';
import { type GreenhouseFile, greenhouseFileSchema } from './greenhouse-schema.ts';
import { unknownKeys } from './unknown-keys.ts';

export type ReadGreenhouse =
  | {
      readonly ok: true;
      readonly greenhouse: Greenhouse;
      /** What stands in the file but is not known here; a newer file still loads. */
      readonly notices: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A greenhouse from the JSON value of a greenhouse file, or every fault of it at once. */
export function readGreenhouseFile(json: unknown): ReadGreenhouse {
  const parsed = greenhouseFileSchema.safeParse(json);
  const own = (parsed.error?.issues ?? []).map((issue) => ({
    path: pathText(issue.path),
    found: foundText(valueAt(json, issue.path)),
    expected: issue.message,
  }));
  const crossing = isObject(json) ? crossCheck(glimpseSchema.parse(json)) : [];
  const faults = firstOfEachPath([...own, ...crossing]);
  if (!parsed.success || faults.length > 0) return { ok: false, faults };
  const notices = unknownKeys(json, greenhouseFileSchema).map(
    (path) => `${path}: not known here, ignored`,
  );
  return { ok: true, greenhouse: toGreenhouse(parsed.data), notices };
}

function isObject(json: unknown): boolean {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}

/** A field that is wrong in two ways is told once: what is expected covers both. */
function firstOfEachPath(faults: readonly Fault[]): readonly Fault[] {
  return [
    ...new Map(faults.toReversed().map((fault) => [fault.path, fault])).values(),
  ].toReversed();
}

function toGreenhouse(file: GreenhouseFile): Greenhouse {
  const { water, containers, ...place } = file.greenhouse;
  const systems = file.systems.map(({ ec, ...system }, i) => ({
    ...system,
    id: systemIdAt(i + 1),
    ecMsPerCm: ec,
  }));
  const idOf = new Map(systems.map((system) => [sameName(system.name), system.id]));
  return {
    ...place,
    water: { name: water.name, ecMsPerCm: water.ec, alkalinityMeqL: water.alkalinityMeqL },
    containers: Object.entries(containers).map(([name, litres]) => ({ name, litres })),
    members: file.members,
    systems,
    probes: file.probes,
    stock: file.stock,
    chores: file.chores.map((chore) => ({
      ...chore,
      system: systemNamed(chore.system, idOf),
    })),
  };
}

function systemNamed(name: string | null, idOf: ReadonlyMap<string, SystemId>): SystemId | null {
  return name === null ? null : (idOf.get(sameName(name)) ?? null);
}
