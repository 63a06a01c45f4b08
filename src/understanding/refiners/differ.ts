import type { EntryDraft } from '../../greenhouse/entry.ts';
import { isReading } from '../../greenhouse/quantity.ts';
import { differing } from './conflicts.ts';

/** Whether two of them read the same thing at the same time, and not the same value. */
export function differ(drafts: readonly EntryDraft[]): boolean {
  return drafts.some((draft, n) => drafts.slice(0, n).some((other) => areAtOdds(draft, other)));
}

export function areAtOdds(one: EntryDraft, other: EntryDraft): boolean {
  return (
    isReading(one.quantity) &&
    one.quantity === other.quantity &&
    one.system === other.system &&
    one.atMs === other.atMs &&
    differing([one.value, other.value], one.quantity).length > 1
  );
}
