import type { Entry } from '../../greenhouse/entry.ts';
import type { Logbook } from '../../logbook/logbook.ts';

/** The notes that are kept with systems and kinds of work, the earliest first. */
export function attachedNotes({ all }: Logbook): readonly Entry[] {
  return all.filter(
    ({ quantity, isAttached, struck }) => quantity === 'note' && isAttached === true && !struck,
  );
}
