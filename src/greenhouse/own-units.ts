import type { Greenhouse, SpokenUnits } from './greenhouse.ts';
import type { Member } from './member.ts';

/** The same greenhouse for each of its members, so that what is kept for a greenhouse is found again. */
const known = new WeakMap<Greenhouse, Map<string, Greenhouse>>();

/** The greenhouse in the units that a member speaks in; in the household's for a group. */
export function asSpokenBy(greenhouse: Greenhouse, handle: string): Greenhouse {
  const units = greenhouse.members.find((member) => member.handle === handle)?.units;
  if (!units) return greenhouse;
  const ofMembers = known.get(greenhouse) ?? new Map<string, Greenhouse>();
  known.set(greenhouse, ofMembers);
  const spoken = ofMembers.get(handle) ?? {
    ...greenhouse,
    units: { ...greenhouse.units, ...units },
  };
  ofMembers.set(handle, spoken);
  return spoken;
}

/** A member with units of their own, the rest as it was; those that are the household's are none. */
export function withOwnUnits(
  { units: before, ...member }: Member,
  wanted: Partial<SpokenUnits> | null,
  household: SpokenUnits,
): Member {
  if (!wanted) return member;
  const own = Object.entries({ ...before, ...wanted }).filter(
    ([which, unit]) => household[which as keyof SpokenUnits] !== unit,
  );
  return own.length === 0 ? member : { ...member, units: Object.fromEntries(own) };
}
