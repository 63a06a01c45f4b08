import type { Entry } from '../../greenhouse/entry.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { readings } from '../../greenhouse/quantity.ts';
import type { Ask } from '../../understanding/statement.ts';
import { DUTIES_OF } from '../duties-of.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

type AskedWho = Extract<Ask, { kind: 'who' }>;

const told = 3;

/** Who logged the latest entries of the kind asked about; else what the set-up says of them. */
export function whoDid({ logbook, greenhouse }: Standing, ask: AskedWho): Answer {
  const entries = logbook.all
    .filter((entry) => !entry.struck && isOfPlace(entry, ask) && isOfWork(entry, ask))
    .toSorted((one, other) => other.atMs - one.atMs)
    .slice(0, told);
  return { kind: 'who', entries, setUp: entries.length === 0 ? setUpSays(greenhouse, ask) : [] };
}

function isOfPlace(entry: Entry, { system, quantity, chore }: AskedWho): boolean {
  // A probe belongs to no system, and a chore is told apart by its name.
  if (system === null || chore !== null || quantity === 'calibration') return true;
  return entry.system === system;
}

function isOfWork(entry: Entry, { quantity, duty, chore, isOfReadings, probe }: AskedWho): boolean {
  if (probe !== undefined && (entry.probe ?? entry.note) !== probe) return false;
  const isDone = entry.quantity === 'duty-done';
  if (isOfReadings) return isReadingOnly(entry.quantity) || (isDone && entry.duty === 'check');
  if (chore !== null) return isDone && entry.chore === chore;
  if (duty !== null) return isDone && entry.duty === duty;
  // Asked "who did the jars", people mean the work, not who read a meter.
  if (quantity === null || quantity === 'duty-done') return !isReadingOnly(entry.quantity);
  if (entry.quantity === quantity) return true;
  return isDone && entry.duty !== undefined && entry.duty === DUTIES_OF[quantity];
}

function isReadingOnly(quantity: string): boolean {
  return (readings as readonly string[]).includes(quantity);
}

function setUpSays(
  { probes, chores }: Greenhouse,
  { quantity, chore, probe }: AskedWho,
): Extract<Answer, { kind: 'who' }>['setUp'] {
  const known =
    quantity === 'calibration'
      ? probes
          .filter(({ name }) => probe === undefined || name === probe)
          .map(({ name, calibratedOn }) => ({ name, on: calibratedOn }))
      : chores
          .filter(({ name }) => name === chore)
          .map(({ name, lastDoneOn }) => ({ name, on: lastDoneOn }));
  return known.flatMap(({ name, on }) => (on === null ? [] : [{ name, on }]));
}
