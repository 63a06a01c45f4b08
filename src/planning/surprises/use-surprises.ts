import type { WaterBelief } from '../../estimation/water-belief.ts';
import type { WaterEvent } from '../../estimation/water-event.ts';
import { type WaterEvidence, waterEvidence, waterFindings } from '../../estimation/water-watch.ts';
import type { System } from '../../greenhouse/system.ts';
import { latestSteps, type WaterFold, waterSystemOf } from '../../logbook/water-fold.ts';
import type { WaterOutlooks } from '../water-outlooks.ts';
import type { Surprise } from './surprise.ts';

/** Leaks, stuck valves, clogged pumps, roots that no longer drink: use that no longer fits. */
export function useSurprises(
  system: System,
  water: WaterFold,
  outlooks: WaterOutlooks,
): readonly Surprise[] {
  return waterFindings(waterSystemOf(system), evidenceOf(system, water)).map((finding) => ({
    kind: 'use',
    key: `use-${finding.way}:${system.id}:${finding.atMs}`,
    system: system.id,
    ...finding,
    lowAtMs: outlooks.get(system.id)?.lowAtMs.p50 ?? null,
  }));
}

/** What was believed before an event does not change, nor what the event says of it. */
const known = new WeakMap<WaterBelief, WaterEvidence | null>();

function evidenceOf(system: System, water: WaterFold): readonly WaterEvidence[] {
  const waterSystem = waterSystemOf(system);
  const steps = latestSteps(water, system.id);
  return steps.flatMap(({ before, event }, i) => {
    if (!isAnchoredBy(steps[i - 1]?.event)) return [];
    let evidence = known.get(before);
    if (evidence?.atMs !== event.atMs) {
      evidence = waterEvidence(waterSystem, before, event, water.drivers);
      known.set(before, evidence);
    }
    return evidence ? [evidence] : [];
  });
}

/**
 * Whether the level before was told in figures. After a change of solution, or a fill nobody gave the
 * litres of, it is taken for granted, and the next figure puts that right before it tells of any loss.
 */
function isAnchoredBy(event: WaterEvent | undefined): boolean {
  if (!event || event.kind === 'reservoir-change') return false;
  return event.kind !== 'top-up' || event.litres !== null;
}
