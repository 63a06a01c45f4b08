import type { Entry } from '../../greenhouse/entry.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import { believable } from '../../greenhouse/quantity.ts';
import {
  correctedValue,
  isCorrectedBy,
  readingFor,
  slipsAway,
} from '../../understanding/answers/corrected-value.ts';
import type { TakingBack } from '../../understanding/statement.ts';
import { withQuestionsLapsed } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { askBack } from './ask-back.ts';
import { movedInto } from './move-entries.ts';
import { draftOf } from './put-back.ts';
import { replaceEntries } from './replace-entries.ts';
import {
  isStruck,
  justToldMs,
  nothingToPutRight,
  ownEntries,
  refusesOthers,
  systemOf,
} from './taken-back.ts';

type Correcting = Extract<TakingBack, { kind: 'correct' }>;

/** The entry that a correction means; null: which of several is not to be told, undefined: none. */
function correctedEntry(
  handling: Handling,
  back: Correcting,
  target: readonly Entry[] | null,
): Entry | null | undefined {
  const { timeZone } = handling.standing.greenhouse;
  const candidates = (target ?? ownEntries(handling)).filter(
    (entry) =>
      !isStruck(handling, entry) &&
      (!back.system || entry.system === back.system) &&
      (!back.product || entry.product === back.product) &&
      (!back.onDate || localDateOf(entry.atMs, timeZone) === back.onDate),
  );
  const fitting = candidates.toReversed().filter((entry) => {
    const system = systemOf(handling, entry.system);
    if (!correctedValue(entry, back, system)) return false;
    return !back.from || isCorrectedBy(entry, back, system);
  });
  // Of several on that day nobody knows which.
  if (back.onDate !== undefined) return fitting.length > 1 ? null : fitting[0];
  return back.from ? fitting[0] : nearestOfMessage(handling, fitting, back);
}

/** Whether there is nothing that a correction could be of. */
export function hasNothingToCorrect(
  handling: Handling,
  back: TakingBack,
  target: readonly Entry[] | null,
): boolean {
  if (back.kind !== 'correct' || correctedEntry(handling, back, target) !== undefined) return false;
  const recent = correctedEntry(handling, { ...back, from: null }, target);
  if (recent === null) return false;
  return recent === undefined || handling.nowMs - recent.recordedAtMs > justToldMs;
}

export function correct(
  handling: Handling,
  back: Correcting,
  target: readonly Entry[] | null,
): void {
  const meant = correctedEntry(handling, back, target);
  if (meant === null) {
    const value = String(back.to[0]?.value ?? '');
    return askBack(handling, {
      reason: { kind: 'which-quantity', value },
      choices: [],
      waiting: null,
    });
  }
  for (const entry of meant ? [meant] : []) {
    if (refusesOthers(handling, [entry])) return;
    const { ofSystem = entry.system } = back;
    const system = systemOf(handling, ofSystem);
    const corrected = correctedValue(entry, back, system)!;
    if (corrected === 'unsure') return askInWhichUnit(handling, entry, back);
    const bounds = believable(entry.quantity, system);
    if (bounds && (corrected.value < bounds[0] || corrected.value > bounds[1])) {
      return askBack(handling, {
        reason: {
          kind: 'out-of-range',
          quantity: entry.quantity,
          value: corrected.value,
          lowest: bounds[0],
          highest: bounds[1],
        },
        choices: [],
        waiting: null,
      });
    }
    const others = back.ofSystem === undefined ? [] : toldWith(handling, entry);
    const moved = others.length > 0 ? movedInto(handling, others, system!) : [];
    if (!moved) return;
    handling.conversation = withQuestionsLapsed(handling.conversation);
    const { saidAs: _as, saidIn: _in, ...draft } = draftOf(entry);
    const drafts = [{ ...draft, ...corrected, system: ofSystem }, ...moved];
    replaceEntries(handling, [entry, ...others], drafts);
    return;
  }
  const givenUp = back.from && entryGivenUp(handling, back, target);
  const bounds = givenUp && believable(givenUp.quantity, systemOf(handling, givenUp.system));
  if (!givenUp || !bounds) return nothingToPutRight(handling);
  // `sorry, 56 not 5.4`: what is put right is plain, and what is meant cannot be.
  const [lowest, highest] = bounds;
  const { quantity } = givenUp;
  askBack(handling, {
    reason: { kind: 'out-of-range', quantity, value: back.said, lowest, highest },
    choices: [],
    waiting: null,
  });
}

/** What the same message told of the same system. */
function toldWith(handling: Handling, entry: Entry): readonly Entry[] {
  return ownEntries(handling).filter(
    (other) =>
      other !== entry &&
      !isStruck(handling, other) &&
      other.system === entry.system &&
      messageOf(other) === messageOf(entry),
  );
}

/** The number alone leaves open whether it is in the unit of what it corrects. */
function askInWhichUnit(handling: Handling, { quantity }: Entry, { said }: Correcting): void {
  askBack(handling, {
    reason: { kind: 'which-unit', quantity, value: String(said) },
    choices: [],
    waiting: null,
  });
}

/** The entry with the value that a correction gives up, whatever it puts in its place. */
function entryGivenUp(
  handling: Handling,
  back: Correcting,
  target: readonly Entry[] | null,
): Entry | undefined {
  return (target ?? ownEntries(handling)).findLast(
    (entry) =>
      !isStruck(handling, entry) &&
      (!back.system || entry.system === back.system) &&
      back.from !== null &&
      isCorrectedBy(entry, back, systemOf(handling, entry.system)),
  );
}

/**
 * Of what the last fitting message logged, the entry that the corrected number comes nearest to; null where two
 * come as near, undefined where there is none.
 */
function nearestOfMessage(
  handling: Handling,
  latestFirst: readonly Entry[],
  back: Correcting,
): Entry | null | undefined {
  const [last] = latestFirst;
  if (!last) return undefined;
  const together = latestFirst.filter((entry) => messageOf(entry) === messageOf(last));
  const byDistance = together
    .map((entry) => {
      const corrected = correctedValue(entry, back, systemOf(handling, entry.system))!;
      const value = corrected === 'unsure' ? readingFor(entry, back.to)!.value : corrected.value;
      return { entry, distance: slipsAway(entry, value) };
    })
    .sort((a, b) => a.distance - b.distance);
  const [first, second] = byDistance;
  if (!second || second.distance > 2 * first!.distance) return first!.entry;
  // Of one quantity the later is meant; of two as near as each other nobody knows which.
  const isOneQuantity = first!.entry.quantity === second.entry.quantity;
  const later = first!.entry.no > second.entry.no ? first! : second;
  return isOneQuantity ? later.entry : null;
}

function messageOf({ source }: Entry): string | null {
  return source.kind === 'member' ? source.messageId : null;
}
