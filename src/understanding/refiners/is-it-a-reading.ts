import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtStatement } from '../statement.ts';
import { doubt, soundDraft } from './doubt-of.ts';
import { inItOrAdded } from './in-it-or-added.ts';
import type { Settled } from './settled.ts';
import { isShared } from './shared-amount.ts';

export function isItAReading(frame: Frame, queried: readonly Settled[]): DoubtStatement[] {
  const byOthers = queried.flatMap((one) => howFullNow(frame, one));
  const rest = queried.filter((one) => howFullNow(frame, one).length === 0);
  return [...byOthers, ...(rest.length === 0 ? [] : [isItAReadingOf(frame, rest)])];
}

/** Somebody else topped it up, and the teller need not know with how much: what can be seen is how full it is now. */
function howFullNow(frame: Frame, one: Settled): DoubtStatement[] {
  const { mood, fact, systems } = one;
  const isUntold =
    mood === 'others' && fact.quantity === 'top-up' && fact.amount.kind === 'missing';
  if (!isUntold || one.askSystem) return [];
  return (systems ?? []).map((system) => {
    const { id } = system;
    const draft: EntryDraft = { system: id, quantity: 'level', value: 0, atMs: one.atMs };
    const waiting = { for: 'value' as const, drafts: [draft] };
    return doubt(frame, one, { kind: 'missing-amount', quantity: 'level' }, [], waiting);
  });
}

export function isItAReadingOf(frame: Frame, queried: readonly Settled[]): DoubtStatement {
  const [only, ...others] = queried;
  // `Ines asked for 10 l in the bench so I put it in`: whether it is there or was added says as much.
  const isOpen = only?.fact.doubt?.kind === 'in-it-or-added' && others.length === 0;
  if (isOpen && only.fact.amount.kind === 'measure')
    return inItOrAdded(frame, only, only.fact.amount.measure);
  const drafts = queried.flatMap((one): EntryDraft[] => {
    if (one.askSystem || one.fact.doubt || one.fact.shared || one.fact.amount.kind === 'missing')
      return [];
    const targets: (System | null)[] = one.systems === null ? [null] : [...one.systems];
    if (one.systems && one.systems.length > 1 && isShared(one.fact)) return [];
    return targets
      .map((system) => soundDraft(frame, one, system))
      .filter((draft) => draft !== null);
  });
  const choices: Choice[] =
    drafts.length > 0
      ? [
          { label: { kind: 'yes' }, drafts },
          { label: { kind: 'no' }, drafts: [] },
        ]
      : [];
  return doubt(frame, queried[0]!, { kind: 'is-it-a-reading' }, choices);
}
