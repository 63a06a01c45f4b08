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
  return doneEntries(duty, logbook, sinceMs).length > 0;
}

/** The live entries since `sinceMs` by which a duty counts as done. */
export function doneEntries(duty: Duty, logbook: Logbook, sinceMs: number): readonly Entry[] {
  const { system } = duty.kind === 'calibration' ? { system: null } : duty;
  const byDoing = doneBy[duty.kind].flatMap((quantity) =>
    liveEntries(logbook, system, quantity).filter(
      (entry) => entry.atMs >= sinceMs && answers(duty, entry),
    ),
  );
  return [...byDoing, ...saidEntries('duty-done', duty, logbook, sinceMs)];
}

/** The live entries since `sinceMs` that say of a duty that it was done, or could not be. */
export function saidEntries(
  said: 'duty-done' | 'duty-failed',
  duty: Duty,
  logbook: Logbook,
  sinceMs: number,
): readonly Entry[] {
  return liveEntries(logbook, duty.system, said).filter(
    (entry) => entry.atMs >= sinceMs && entry.duty === duty.kind && answers(duty, entry),
  );
}

/** Whether somebody said since `sinceMs` that it could not be done; of the system as a whole or of this duty. */
export function couldNotBeDone(duty: Duty, logbook: Logbook, sinceMs: number): boolean {
  return liveEntries(logbook, duty.system, 'duty-failed').some(
    (entry) =>
      entry.atMs >= sinceMs &&
      (entry.duty === undefined || (entry.duty === duty.kind && answers(duty, entry))),
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
