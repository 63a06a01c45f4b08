import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtStatement } from '../statement.ts';
import { doubt, soundDraft } from './doubt-of.ts';
import type { Settled } from './settled.ts';

export function whichTime(frame: Frame, one: Settled, system: System | null): DoubtStatement {
  const draft = soundDraft(frame, one, system);
  const { existsSinceMs, writtenAtMs } = frame.context;
  const options = [...(one.mark?.askFrom ?? []), writtenAtMs].filter(
    (atMs, n, all) => atMs >= existsSinceMs && atMs <= writtenAtMs && all.indexOf(atMs) === n,
  );
  const choices = draft
    ? options.map(
        (atMs): Choice => ({ label: { kind: 'time', atMs }, drafts: [{ ...draft, atMs }] }),
      )
    : [];
  const written = one.mark?.written ?? '';
  return doubt(
    frame,
    one,
    { kind: 'which-time', written },
    choices,
    draft ? { for: 'time', drafts: [draft] } : null,
  );
}

export function sinceWhen(frame: Frame, one: Settled, now: EntryDraft): DoubtStatement {
  const { mark } = one;
  const options = (mark?.askFrom ?? []).filter(
    (atMs) => atMs >= frame.context.existsSinceMs && atMs < frame.context.writtenAtMs,
  );
  const choices = options.map(
    (atMs): Choice => ({ label: { kind: 'time', atMs }, drafts: [{ ...now, atMs }] }),
  );
  return doubt(
    frame,
    one,
    { kind: 'since-when', of: now.of ?? 'power', written: mark?.written ?? '' },
    choices,
    { for: 'time', drafts: [now] },
  );
}
