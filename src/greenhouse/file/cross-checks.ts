import { type Fault, foundText, type Path, pathText } from './fault.ts';
import type { Glimpse } from './glimpse.ts';

/** What the parts of a greenhouse file say of each other. */
export function crossCheck(file: Glimpse): readonly Fault[] {
  return [
    ...oneGrower(file),
    ...repeats(file.members.map((member, i) => said(['members', i, 'handle'], member.handle))),
    ...systemNames(file),
    ...file.systems.flatMap((system, i) => waterMarks(system, i)),
    ...repeats(
      Object.keys(file.greenhouse.containers).map((name) =>
        said(['greenhouse', 'containers', name], name),
      ),
    ),
    ...repeats(file.probes.map((probe, i) => said(['probes', i, 'name'], probe.name))),
    ...file.probes.flatMap(({ measures }, i) =>
      repeats(measures.map((quantity, j) => said(['probes', i, 'measures', j], quantity))),
    ),
    ...repeats(file.stock.map((item, i) => said(['stock', i, 'product'], item.product))),
    ...choreSystems(file),
    ...repeatedChores(file),
  ];
}

/** Letters of any case and any way of composing an accent make one name. */
export function sameName(name: string): string {
  return name.normalize('NFC').toLowerCase();
}

interface Said {
  readonly path: Path;
  readonly text: string | undefined;
}

function said(path: Path, text: string | undefined): Said {
  return { path, text };
}

function fault(path: Path, found: unknown, expected: string): Fault {
  return { path: pathText(path), found: foundText(found), expected };
}

function repeats(names: readonly Said[]): readonly Fault[] {
  const first = new Map<string, Path>();
  const faults: Fault[] = [];
  for (const { path, text } of names) {
    if (text === undefined) continue;
    const earlier = first.get(sameName(text));
    if (earlier) faults.push(fault(path, text, notThatOf(earlier)));
    else first.set(sameName(text), path);
  }
  return faults;
}

function notThatOf(path: Path): string {
  return `something other than ${pathText(path)}, in capital and small letters alike`;
}

function oneGrower({ members }: Glimpse): readonly Fault[] {
  if (members.some((member) => member.role === 'grower')) return [];
  return [fault(['members'], members, 'at least one member with the role grower')];
}

/** A system may repeat its own name as an alias; another's would make a message ambiguous. */
function systemNames({ systems }: Glimpse): readonly Fault[] {
  const owner = new Map<string, { readonly system: number; readonly path: Path }>();
  const faults: Fault[] = [];
  const claim = (system: number, { path, text }: Said) => {
    if (text === undefined) return;
    const taken = owner.get(sameName(text));
    if (taken && taken.system !== system) faults.push(fault(path, text, notThatOf(taken.path)));
    else if (!taken) owner.set(sameName(text), { system, path });
  };
  for (const [i, { name }] of systems.entries()) claim(i, said(['systems', i, 'name'], name));
  for (const [i, { aliases }] of systems.entries()) {
    for (const [j, alias] of aliases.entries()) {
      claim(i, said(['systems', i, 'aliases', j], alias));
    }
  }
  return faults;
}

function waterMarks(system: Glimpse['systems'][number], i: number): readonly Fault[] {
  const { brimL, lowL, floods } = system;
  const faults: Fault[] = [];
  if (brimL !== undefined && lowL !== undefined && brimL > 0 && lowL >= brimL) {
    faults.push(fault(['systems', i, 'lowL'], lowL, `less than brimL, which is ${brimL}`));
  }
  const { everyMin, fillMin } = floods ?? {};
  if (everyMin !== undefined && fillMin !== undefined && everyMin > 0 && fillMin >= everyMin) {
    const expected = `less than everyMin, which is ${everyMin}`;
    faults.push(fault(['systems', i, 'floods', 'fillMin'], fillMin, expected));
  }
  return faults;
}

/** Says nothing while a system's name cannot be read: it may be the one meant. */
function choreSystems({ systems, chores }: Glimpse): readonly Fault[] {
  const names = systems.map((system) => system.name);
  if (names.length === 0 || names.includes(undefined)) return [];
  const known = new Set(names.map((name) => sameName(name ?? '')));
  return chores.flatMap(({ system }, i) => {
    if (system === undefined || known.has(sameName(system))) return [];
    return [fault(['chores', i, 'system'], system, `a system's name: ${names.join(', ')}`)];
  });
}

function repeatedChores({ chores }: Glimpse): readonly Fault[] {
  const bySystem = new Map<string, Said[]>();
  for (const [i, { name, system }] of chores.entries()) {
    const key = sameName(system ?? '');
    const one = said(['chores', i, 'name'], name);
    bySystem.set(key, [...(bySystem.get(key) ?? []), one]);
  }
  return [...bySystem.values()].flatMap(repeats);
}
