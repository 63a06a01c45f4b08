import type { Member } from '../greenhouse/member.ts';
import { mayHandleAcids } from '../greenhouse/member.ts';
import type { Arranging } from '../understanding/arranging/arranging.ts';
import type { HouseholdWish } from './household/wish.ts';

/** Everything that somebody can want of the bot. */
export type UseCase =
  | 'report'
  | 'ask'
  | 'take-back'
  | 'edit'
  | 'tick-duty'
  | 'be-told-strong-doses'
  | `settle-${Arranging['kind']}`
  | `household-${HouseholdWish['kind']}`;

/** Who wants it. A stranger is nobody of the household. */
export type Person = 'grower' | 'helper' | 'helper-shown-acids' | 'stranger';

/** `own`: for oneself, or what one entered oneself. */
export type Permission = 'yes' | 'own' | 'no';

type Row = Readonly<Record<Person, Permission>>;

const everybody: Row = {
  grower: 'yes',
  helper: 'yes',
  'helper-shown-acids': 'yes',
  stranger: 'no',
};
const ownUnlessGrower: Row = {
  grower: 'yes',
  helper: 'own',
  'helper-shown-acids': 'own',
  stranger: 'no',
};
const growers: Row = { grower: 'yes', helper: 'no', 'helper-shown-acids': 'no', stranger: 'no' };
const authors: Row = { grower: 'own', helper: 'own', 'helper-shown-acids': 'own', stranger: 'no' };

/** Every use-case by every kind of person. The compiler asks for a row for each. */
export const permissions: Readonly<Record<UseCase, Row>> = {
  report: everybody,
  ask: everybody,
  'take-back': ownUnlessGrower,
  // Only its author can change a message.
  edit: authors,
  'tick-duty': everybody,
  'be-told-strong-doses': {
    grower: 'yes',
    helper: 'no',
    'helper-shown-acids': 'yes',
    stranger: 'no',
  },
  'settle-away': ownUnlessGrower,
  'settle-back': ownUnlessGrower,
  'settle-cannot-go': ownUnlessGrower,
  'settle-covers': ownUnlessGrower,
  'settle-rota': ownUnlessGrower,
  'settle-claim': ownUnlessGrower,
  'settle-release': authors,
  'settle-news': authors,
  'settle-who-goes': everybody,
  'settle-plan': everybody,
  'settle-how-to': everybody,
  'household-invite': growers,
  'household-show': everybody,
  'household-remove': growers,
  'household-leave': authors,
  'household-stay': everybody,
  'household-turn-to': authors,
  'household-tie-room': growers,
  'household-untie-room': growers,
  'household-no-words': everybody,
};

export function personOf(member: Member): Exclude<Person, 'stranger'> {
  if (member.role === 'grower') return 'grower';
  return mayHandleAcids(member) ? 'helper-shown-acids' : 'helper';
}

/** Whether a member may have it; `isOwn`: it is about themselves, or what they entered. */
export function may(member: Member, useCase: UseCase, isOwn: boolean): boolean {
  const permission = permissions[useCase][personOf(member)];
  return permission === 'yes' || (permission === 'own' && isOwn);
}
