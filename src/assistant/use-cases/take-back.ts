import type { Entry } from '../../greenhouse/entry.ts';
import type { TakingBack } from '../../understanding/statement.ts';
import type { Handling } from '../handling.ts';
import { correct } from './correct-entry.ts';
import { changeProduct, move, retime } from './move-entries.ts';
import { putBackLast, wasUndoneLately } from './put-back.ts';
import { strikeOut, undo } from './replace-entries.ts';
import { denied, lastMessage, lastMessageWith, lastOf, notDone } from './taken-back.ts';
import { undoLast } from './undo-last.ts';

/** Undoes, corrects, moves or denies what was logged before. `target`: the entries replied to. */
export function takeBack(
  handling: Handling,
  back: TakingBack,
  target: readonly Entry[] | null,
): void {
  switch (back.kind) {
    case 'undo': {
      const { system } = back;
      const entries =
        system === undefined ? (target ?? undoLast(handling)) : lastOf(handling, system, target);
      if (entries) undo(handling, entries);
      return;
    }
    case 'put-back':
      if (back.isDenial && !wasUndoneLately(handling)) {
        const denial = { kind: 'deny', system: null, quantity: null } as const;
        return strikeOut(handling, denied(handling, denial, target));
      }
      return putBackLast(handling, back.isBare === true);
    case 'correct':
      return correct(handling, back, target);
    case 'move': {
      const { quantity } = back;
      const told = target ?? lastMessage(handling);
      const isOfIt = quantity === undefined || told.some((entry) => entry.quantity === quantity);
      return move(handling, isOfIt ? told : lastMessageWith(handling, quantity), back);
    }
    case 'other-product':
      return changeProduct(handling, target ?? lastMessage(handling), back);
    case 'retime':
      return retime(handling, target ?? lastMessage(handling), back);
    case 'not-done':
      return strikeOut(handling, notDone(handling, back, target));
    case 'deny':
      return strikeOut(handling, denied(handling, back, target));
  }
}
