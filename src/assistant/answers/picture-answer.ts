import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { Handling } from '../handling.ts';
import type { Button, PictureWish } from '../outgoing.ts';
import type { Answer } from '../replies/answer.ts';
import { picturedQuantities } from '../replies/picture.ts';
import type { Standing } from '../standing.ts';
import { canBeDrawn, pictureOf } from './picture-of.ts';

/** More buttons than this under one answer are a menu and not an offer. */
const mostOffered = 6;

/** Whether a picture has a line for a quantity. */
export function isPictured(quantity: Quantity | null): boolean {
  return (picturedQuantities as readonly (Quantity | null)[]).includes(quantity);
}

/** Sends the picture that a button offered. */
export function sendPicture(handling: Handling, wish: PictureWish): void {
  const { standing, nowMs } = handling;
  const answer = pictureAnswer(standing, wish, nowMs);
  handling.say({ kind: 'answer', answer }, pictureButtons(answer, standing, nowMs));
}

export function pictureAnswer(standing: Standing, wish: PictureWish, nowMs: number): Answer {
  const picture = pictureOf(standing, wish, nowMs);
  return picture
    ? { kind: 'picture', picture }
    : { kind: 'cannot-tell', because: 'nothing-logged' };
}

/** The pictures that go with an answer, each behind a button. */
export function pictureButtons(
  answer: Answer,
  standing: Standing,
  nowMs: number,
): readonly (readonly Button[])[] {
  return distinct(wishesBehind(answer))
    .filter((wish) => canBeDrawn(standing, wish, nowMs))
    .slice(0, mostOffered)
    .map((wish) => [{ label: wish, action: wish }]);
}

function wishesBehind(answer: Answer): readonly PictureWish[] {
  switch (answer.kind) {
    case 'why':
      return answer.duties.flatMap(wishBehind);
    case 'show': {
      const systems = answer.systems.map(({ lasting }) => lasting.system);
      // A system that is shown alone shows its water already, where anything is known of it.
      return systems.length === 1 ? systems.map(readingsOf) : systems.map(waterOf);
    }
    case 'how-full':
      return answer.systems.map(({ system }) => waterOf(system));
    case 'last-reading': {
      if (!isPictured(answer.quantity)) return [];
      return answer.entries.flatMap(({ system }) => (system ? [readingsOf(system)] : []));
    }
    case 'picture': {
      const { kind, system } = answer.picture;
      return [kind === 'water' ? readingsOf(system) : waterOf(system)];
    }
    default:
      return [];
  }
}

/** What would show the reason of a duty. */
function wishBehind({ duty, reason }: DutyLine): PictureWish[] {
  if (duty.system === null) return [];
  switch (reason.kind) {
    case 'water':
      return [waterOf(duty.system)];
    case 'out-of-range':
    case 'not-measured':
      return [readingsOf(duty.system)];
    default:
      return [];
  }
}

function waterOf(system: SystemId): PictureWish {
  return { kind: 'picture', system, of: 'water' };
}

function readingsOf(system: SystemId): PictureWish {
  return { kind: 'picture', system, of: 'readings' };
}

function distinct(wishes: readonly PictureWish[]): readonly PictureWish[] {
  return [...new Map(wishes.map((wish) => [`${wish.of} ${wish.system}`, wish])).values()];
}
