import type { CleanPart } from './duty.ts';
import type { System } from './system.ts';

/** What can clog in a system. */
export function partsToClean(system: System): readonly CleanPart[] {
  const pumped = system.method !== 'deep-water-culture' && system.method !== 'non-circulating';
  const hasStones = system.aeration?.kind === 'air-stones' || system.aeration?.kind === 'air-pump';
  return [
    ...(pumped ? (['pump-filter'] as const) : []),
    ...(hasStones ? (['air-stones'] as const) : []),
  ];
}
