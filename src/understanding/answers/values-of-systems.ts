import type { EntryDraft } from '../../greenhouse/entry.ts';
import { fitsSystem, movedTo } from '../../greenhouse/moved-draft.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Doubt } from '../doubt.ts';
import type { Frame } from '../reading/frame.ts';
import { areAtOdds } from '../refiners/differ.ts';
import type { Choice, DoubtStatement, Statement } from '../statement.ts';
import type { Answered } from './fill-value.ts';
import type { Said } from './what-is-said.ts';
import { again } from './without-system.ts';

/**
 * `gutters and jars`, where `ec 1.3 and 1.2` had no system: each its value, in their order. Of one system alone it is
 * asked which of the values is its own; whatever else is said, it is asked again.
 */
export function valuesOfSystems(
  frame: Frame,
  doubt: Doubt,
  said: Said,
  answered: Answered,
): readonly Statement[] {
  const drafts = doubt.waiting?.drafts ?? [];
  const { systems } = frame.context.greenhouse;
  const named = said.systems.flatMap((id) => systems.find((system) => system.id === id) ?? []);
  const [only] = named;
  if (said.measure !== null || !only) return [again(frame, doubt)];
  if (named.length === 1) return ofOne(frame, drafts, only, answered);
  const isOfOneKind = drafts.every(({ quantity }) => quantity === drafts[0]!.quantity);
  const own = drafts.map((draft, i) => (named[i] ? movedTo(draft, named[i]) : draft));
  const isWhole = isOfOneKind && named.length === drafts.length;
  return isWhole && own.every((draft, i) => fitsSystem(draft, named[i]!))
    ? [answered(own)]
    : [again(frame, doubt)];
}

/** What is told once is its own; of values that differ, which one is asked. */
function ofOne(
  frame: Frame,
  drafts: readonly EntryDraft[],
  system: System,
  answered: Answered,
): readonly Statement[] {
  const own = drafts.map((draft) => movedTo(draft, system));
  const differing = own.filter((draft) => own.some((other) => areAtOdds(draft, other)));
  const sure = own.filter((draft) => !differing.includes(draft));
  const asked = conflict(frame, differing);
  return sure.length > 0 ? [answered(sure), asked] : [asked];
}

function conflict(frame: Frame, drafts: readonly EntryDraft[]): DoubtStatement {
  const [first] = drafts;
  const { quantity } = first!;
  return again(frame, {
    reason: { kind: 'conflict', quantity, values: drafts.map(({ value }) => value) },
    choices: drafts.map((draft): Choice => {
      return { label: { kind: 'value', quantity, value: draft.value }, drafts: [draft] };
    }),
    waiting: { for: 'value', drafts: [first!] },
  });
}
