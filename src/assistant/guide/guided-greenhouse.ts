import type { Greenhouse, Probe } from '../../greenhouse/greenhouse.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import type { GuideDraft } from './guide.ts';
import { suggestedFor, suggestedLowL, usualDepthCm, usualRunning } from './suggestions.ts';

/** How the meters of a household without names for them are called. */
export type MeterNames = Readonly<Record<'ph' | 'ec', string>>;

/**
 * The greenhouse that the answers make: members, units, water and cans stay as they are, the systems
 * that were there before are hidden with their entries.
 */
export function guidedGreenhouse(
  draft: GuideDraft,
  present: Greenhouse,
  meterNames: MeterNames,
): Greenhouse {
  const { town } = draft;
  const past = [...present.systems, ...(present.formerSystems ?? [])];
  return {
    ...present,
    name: draft.name ?? present.name,
    ...(town
      ? {
          latitude: town.latitude,
          longitude: town.longitude,
          timeZone: town.timeZone,
          elevationM: 0,
        }
      : {}),
    morning: draft.morning ?? present.morning,
    systems: draft.systems,
    formerSystems: past,
    probes: draft.measures.map(
      (measure): Probe => ({ name: meterNames[measure], measures: [measure], calibratedOn: null }),
    ),
    stock: [],
    chores: [],
  };
}

/** The system that the answers make, with what is usual where nothing was answered. */
export function guidedSystem(
  { system }: GuideDraft,
  id: SystemId,
  crop: string | null,
  plants: number,
): System {
  const method = system.method!;
  const brimL = system.brimL!;
  return {
    id,
    name: system.name!,
    aliases: [],
    method,
    brimL,
    lowL: system.lowL ?? suggestedLowL(method, brimL),
    depthCm: system.depthCm ?? usualDepthCm[method],
    crop,
    plants,
    ...suggestedFor(crop),
    ...usualRunning(method),
  };
}
