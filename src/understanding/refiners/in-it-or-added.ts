import type { System } from '../../greenhouse/system.ts';
import type { Measure } from '../numbers/measure.ts';
import { litresFactor } from '../numbers/quantity-of-measure.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtStatement } from '../statement.ts';
import { doubt, doubtOf, soundDraft } from './doubt-of.ts';
import type { Settled } from './settled.ts';
import { valueOf } from './value-of.ts';

/**
 * `12 l in the dwc`: there now, or added. Of several systems that share one amount a button says `each`;
 * whatever else it was of them has to be said.
 */
export function inItOrAdded(frame: Frame, one: Settled, measure: Measure): DoubtStatement {
  const { fact } = one;
  const systems = one.systems ?? [];
  const ways = [{ ...one, fact: { ...fact, quantity: 'level' as const } }, one];
  const reason = {
    kind: 'in-it-or-added' as const,
    litres: measure.values[0]! * (litresFactor(measure) ?? 1),
  };
  const choices = ways.flatMap((way) => choiceOf(frame, way, systems));
  if (systems.length > 1 && fact.each) return doubt(frame, one, reason, choices);
  const [system] = systems;
  const value = valueOf(fact, system ?? null, frame.context.greenhouse.units);
  // More than it holds: it is neither.
  if (system && choices.length === 0 && value.kind === 'asked')
    return doubtOf(frame, one, value, systems);
  const named = systems.length > 0 ? systems : frame.context.greenhouse.systems;
  const drafts = named.flatMap((each) => ways.flatMap((way) => soundDraft(frame, way, each) ?? []));
  return doubt(frame, one, reason, choices, { for: 'quantity', drafts });
}

/** A button for one way of reading it, where that can be of every system named. */
function choiceOf(frame: Frame, way: Settled, systems: readonly System[]): Choice[] {
  const { quantity, each } = way.fact;
  const drafts = systems.flatMap((system) => soundDraft(frame, way, system) ?? []);
  if (drafts.length === 0 || drafts.length < systems.length) return [];
  const isPlain = systems.length === 1 || each === true;
  return [{ label: { kind: isPlain ? 'quantity' : 'quantity-of-each', quantity }, drafts }];
}
