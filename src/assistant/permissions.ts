import type { Member } from '../greenhouse/member.ts';
import { mayHandleAcids } from '../greenhouse/member.ts';
import type { SetUpChange } from '../greenhouse/set-up/set-up-change.ts';
import type { Arranging } from '../understanding/arranging/arranging.ts';
import type { Statement } from '../understanding/statement.ts';
import type { Wish } from '../understanding/wishes/wish.ts';
import type { HouseholdWish } from './household/wish.ts';
import type { Action } from './outgoing.ts';

/** Everything that somebody can want of the bot: new words, buttons and wishes ask for a row here. */
export type UseCase =
  | `say-${Exclude<Statement['kind'], 'answered' | 'doubt' | 'passed-over'>}`
  | 'edit'
  /** What a button settles, wishes or asks stands with the words for it. */
  | `press-${Exclude<Action['kind'], 'settle' | 'household' | 'picture'>}`
  | `settle-${Arranging['kind']}`
  | `change-${SetUpChange['kind']}`
  /** What is wanted of a chore that was spoken of is a change of the set-up. */
  | `wish-${Exclude<Wish['kind'], 'change' | 'chore-spoken-of'>}`
  | `household-${HouseholdWish['kind']}`
  | 'be-told-strong-doses';

/** Who wants it. A stranger is nobody of the household, or no longer. */
export type Person = 'grower' | 'helper' | 'helper-shown-acids' | 'stranger';

/** `own`: for oneself, or what one entered or was asked oneself. */
export type Permission = 'yes' | 'own' | 'no';

type Row = Readonly<Record<Person, Permission>>;

const everybody = row('yes', 'yes');
const ownUnlessGrower = row('yes', 'own');
const growers = row('yes', 'no');
const authors = row('own', 'own');

/** Every use-case by every kind of person. The compiler asks for a row for each. */
export const permissions: Readonly<Record<UseCase, Row>> = {
  'say-entry': everybody,
  'say-done': everybody,
  'say-ask': everybody,
  'say-taking-back': ownUnlessGrower,
  // Only its author can change a message.
  edit: authors,
  'press-tick': everybody,
  'press-cannot': everybody,
  'press-strike': ownUnlessGrower,
  'press-choose': authors,
  'press-decline': authors,
  'press-undo-set-up': authors,
  'press-undo-settled': authors,
  'press-guide': row('own', 'no'),
  'press-how-to': everybody,
  'settle-away': ownUnlessGrower,
  'settle-back': ownUnlessGrower,
  'settle-cannot-go': ownUnlessGrower,
  'settle-can-go': ownUnlessGrower,
  'settle-covers': ownUnlessGrower,
  'settle-rota': ownUnlessGrower,
  'settle-claim': ownUnlessGrower,
  'settle-release': authors,
  'settle-news': authors,
  'settle-who-goes': everybody,
  'settle-when-back': everybody,
  'settle-one-chore': everybody,
  'settle-plan': everybody,
  'settle-how-to': everybody,
  'change-chore-added': growers,
  'change-chore-moved': growers,
  'change-chore-dropped': growers,
  'change-system-added': growers,
  'change-system-renamed': growers,
  'change-system-dropped': growers,
  'change-figure-set': growers,
  'change-range-set': growers,
  'change-alias-added': growers,
  'change-alias-dropped': growers,
  'change-planted': growers,
  'change-cleared': growers,
  'change-language-set': ownUnlessGrower,
  'change-units-set': ownUnlessGrower,
  'change-container-set': growers,
  'change-container-dropped': growers,
  'change-morning-set': growers,
  'change-risk-set': growers,
  'change-acids-shown': growers,
  'change-butt-set': growers,
  // Whoever comes by the shop or looks at the bottle.
  'change-stock-added': everybody,
  'change-stock-counted': everybody,
  'change-butt-counted': everybody,
  'change-set-up-anew': growers,
  'wish-guide': growers,
  'wish-chores': everybody,
  'wish-stock': everybody,
  'wish-stock-unsaid': everybody,
  'wish-stock-opened': everybody,
  'wish-rain': everybody,
  'wish-season': everybody,
  // The grower is asked where.
  'wish-planted-somewhere': growers,
  'wish-introduction': everybody,
  'wish-explain': everybody,
  'wish-ask': everybody,
  'wish-wanted': everybody,
  'wish-how-full': everybody,
  'wish-how-long': everybody,
  'wish-who-is-away': everybody,
  'wish-logged': everybody,
  'wish-supply': everybody,
  'wish-where': everybody,
  'wish-mixing': everybody,
  'wish-my-turns': everybody,
  'wish-remind-once': everybody,
  'wish-last': everybody,
  'wish-first-fruit': everybody,
  'wish-what-if': everybody,
  'wish-how-to': everybody,
  'wish-notes': everybody,
  // A helper's note is an entry of the logbook; what is shown with the steps comes from growers.
  'wish-attach-note': everybody,
  'wish-drop-notes': growers,
  'household-invite': growers,
  'household-show': everybody,
  'household-remove': growers,
  'household-leave': authors,
  'household-stay': authors,
  'household-turn-to': authors,
  'household-tie-room': growers,
  'household-untie-room': growers,
  'household-no-words': everybody,
  'be-told-strong-doses': { ...growers, 'helper-shown-acids': 'yes' },
};

/** Helpers alike, shown acids or not, and nothing for strangers. */
function row(grower: Permission, helper: Permission): Row {
  return { grower, helper, 'helper-shown-acids': helper, stranger: 'no' };
}

function personOf(member: Member): Exclude<Person, 'stranger'> {
  if (member.role === 'grower') return 'grower';
  return mayHandleAcids(member) ? 'helper-shown-acids' : 'helper';
}

/** Whether a member may have it; `isOwn`: it is about themselves, or what they entered. */
export function may(member: Member, useCase: UseCase, isOwn: boolean): boolean {
  const permission = permissions[useCase][personOf(member)];
  return permission === 'yes' || (permission === 'own' && isOwn);
}
