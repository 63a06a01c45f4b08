import type { Duty } from '../greenhouse/duty.ts';
import type { EntryNo } from '../greenhouse/entry.ts';
import type { Logbook } from '../logbook/logbook.ts';
import { doneEntries, saidEntries } from './duty-done.ts';

/** What became of a duty since it was asked for. */
export interface DutyMark {
  readonly state: 'done' | 'cannot';
  /** The handle of who said so; null: a sensor. */
  readonly by: string | null;
  /** Why it could not be done. */
  readonly note?: string;
  /** The entry that says so, where it says nothing else: striking it opens the duty again. */
  readonly said: EntryNo | null;
}

/** The latest word on a duty since `sinceMs`; having done it outweighs not having been able to. */
export function dutyMark(duty: Duty, logbook: Logbook, sinceMs: number): DutyMark | null {
  const done = doneEntries(duty, logbook, sinceMs).at(-1);
  const entry = done ?? saidEntries('duty-failed', duty, logbook, sinceMs).at(-1);
  if (!entry) return null;
  const { source, note, quantity, no } = entry;
  return {
    state: done ? 'done' : 'cannot',
    by: source.kind === 'member' ? source.handle : null,
    ...(done || note === undefined ? {} : { note }),
    said: quantity === 'duty-done' || quantity === 'duty-failed' ? no : null,
  };
}
