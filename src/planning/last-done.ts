import type { DutyKind } from '../greenhouse/duty.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** When a duty of a kind was last said to be done, optionally that of one probe; null: never. */
export function lastSaidDoneMs(
  logbook: Logbook,
  system: SystemId | null,
  kind: DutyKind,
  probe?: string,
): number | null {
  const said = liveEntries(logbook, system, 'duty-done').findLast(
    (entry) => entry.duty === kind && (probe === undefined || entry.probe === probe),
  );
  return said?.atMs ?? null;
}
