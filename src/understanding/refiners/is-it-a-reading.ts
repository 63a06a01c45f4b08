import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtStatement } from '../statement.ts';
import { doubt, soundDraft } from './doubt-of.ts';
import type { Settled } from './settled.ts';
import { isShared } from './shared-amount.ts';

export function isItAReading(frame: Frame, queried: readonly Settled[]): DoubtStatement[] {
  return queried.length === 0 ? [] : [isItAReadingOf(frame, queried)];
}

export function isItAReadingOf(frame: Frame, queried: readonly Settled[]): DoubtStatement {
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
