import type { EntryDraft } from '../../greenhouse/entry.ts';
import { isReading } from '../../greenhouse/quantity.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import type { Choice } from '../statement.ts';
import type { Said } from './what-is-said.ts';

export function choose(choices: readonly Choice[], said: Said): Choice | null {
  const offered = choices.filter(
    ({ label }) => label.kind !== 'keep-as-note' || choices.length === 1,
  );
  if (said.keep) return choices.find(({ label }) => label.kind === 'keep-as-note') ?? null;
  if (said.ordinal !== null)
    return (said.ordinal < 0 ? offered.at(-1) : offered[said.ordinal - 1]) ?? null;
  if (said.yes)
    return (
      offered.find(({ label }) => label.kind === 'yes') ??
      (offered.length === 1 ? offered[0]! : null)
    );
  const fitting = offered.filter((choice) => fits(choice, said));
  return fitting.length === 1 ? fitting[0]! : null;
}

const halfDayMs = 43_200_000;

/** `yesterday` is the time on offer that is of yesterday. */
function isThatTime(said: Said, timeMs: number, offeredMs: number): boolean {
  return timeMs === offeredMs || (said.timeIsVague && Math.abs(timeMs - offeredMs) < halfDayMs);
}

/** `both`, of two systems that a reading may be of: the drafts of each. */
export function chooseAll(choices: readonly Choice[], said: Said): EntryDraft[] | null {
  const drafts = choices.flatMap((choice) => choice.drafts);
  const isEnough = said.both ? choices.length === 2 : choices.length > 1;
  const isOfEach = isEnough && choices.every(({ label }) => label.kind === 'system');
  if (!said.ofAll || !isOfEach || !drafts.every(({ quantity }) => isReading(quantity))) return null;
  return drafts;
}

function fits({ label }: Choice, said: Said): boolean {
  switch (label.kind) {
    case 'system':
      return said.measure === null && said.systems.length === 1 && said.systems[0] === label.system;
    case 'systems':
      return (
        said.measure === null &&
        said.systems.length === label.systems.length &&
        label.systems.every((system) => said.systems.includes(system))
      );
    case 'quantity':
      return said.measure === null && said.systems.length === 0 && said.quantity === label.quantity;
    case 'value':
      return (
        said.measure !== null &&
        isBare(said.measure) &&
        said.measure.values.some((value) => Math.abs(value - label.value) < 1e-6)
      );
    case 'product':
      return said.measure === null && said.product === label.product;
    case 'each':
      return said.each && said.measure === null;
    case 'in-all':
      return said.inAll && said.measure === null;
    case 'time':
      return (
        said.measure === null && said.timeMs !== null && isThatTime(said, said.timeMs, label.atMs)
      );
    case 'all-work':
      return said.ofAll || said.inAll;
    // `added` alone leaves open whether to each of them.
    case 'quantity-of-each':
    case 'amount':
    case 'work':
    case 'yes':
    case 'no':
    case 'one-top-up':
    case 'two-top-ups':
    case 'done-without-figures':
    case 'still-out':
    case 'keep-as-note':
      return false;
  }
}
