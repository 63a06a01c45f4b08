import type { Duty } from '../greenhouse/duty.ts';
import type { Entry } from '../greenhouse/entry.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** What counts as having done a duty, besides saying so. */
const doneBy: Readonly<Record<Duty['kind'], readonly Quantity[]>> = {
  'top-up': ['top-up', 'reservoir-change'],
  check: ['ph', 'ec', 'reservoir-change'],
  dose: ['dose', 'reservoir-change'],
  'reservoir-change': ['reservoir-change'],
  calibration: ['calibration'],
  aeration: ['aeration'],
  clean: [],
  chore: [],
};

/** Whether a duty that was asked for at `sinceMs` has been done since, going by the live entries. */
export function isDone(duty: Duty, logbook: Logbook, sinceMs: number): boolean {
  const { system } = duty.kind === 'calibration' ? { system: null } : duty;
  const byDoing = doneBy[duty.kind].some((quantity) =>
    liveEntries(logbook, system, quantity).some(
      (entry) => entry.atMs >= sinceMs && answers(duty, entry),
    ),
  );
  return byDoing || saidDone(duty, logbook, sinceMs);
}

function saidDone(duty: Duty, logbook: Logbook, sinceMs: number): boolean {
  return liveEntries(logbook, duty.system, 'duty-done').some(
    (entry) => entry.atMs >= sinceMs && entry.duty === duty.kind && answers(duty, entry),
  );
}

function answers(duty: Duty, entry: Entry): boolean {
  switch (duty.kind) {
    case 'chore':
      return entry.chore === duty.chore;
    case 'dose':
      return entry.product === undefined || entry.product === duty.product;
    case 'calibration':
      return entry.probe === undefined || entry.probe === duty.probe;
    default:
      return true;
  }
}
