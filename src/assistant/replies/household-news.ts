import type { Role } from '../../greenhouse/member.ts';

/** What the bot says about who is in the household, as data. */
export type HouseholdNews =
  /** To somebody who came in, or claimed the greenhouse. */
  | { readonly kind: 'welcome'; readonly name: string; readonly role: Role }
  | { readonly kind: 'already-in'; readonly name: string; readonly role: Role }
  /** To the growers. */
  | { readonly kind: 'has-joined'; readonly name: string; readonly role: Role }
  | { readonly kind: 'has-left'; readonly name: string }
  /** The channel puts the link beside it; the code is nowhere in the data. */
  | {
      readonly kind: 'invited';
      readonly role: Role;
      /** null: somebody new. */
      readonly name: string | null;
      readonly expiresAtMs: number;
    }
  /** In a group: the link went to the grower's private chat. */
  | { readonly kind: 'invited-in-private' }
  | {
      readonly kind: 'who-is-in';
      readonly members: readonly {
        readonly name: string;
        readonly role: Role;
        readonly reach: 'reached' | 'blocked' | 'no-account';
      }[];
      readonly rooms: readonly string[];
    }
  | { readonly kind: 'removed'; readonly name: string }
  /** To whoever was taken out: the channel finds them by their account, which is in no book any more. */
  | { readonly kind: 'taken-out'; readonly by: string; readonly accountId: string }
  | { readonly kind: 'not-in'; readonly name: string }
  | { readonly kind: 'really-leave'; readonly isLastGrower: boolean }
  | { readonly kind: 'farewell' }
  | { readonly kind: 'stays' }
  | { readonly kind: 'growers-only' }
  | { readonly kind: 'room-tied'; readonly readsAll: boolean }
  | { readonly kind: 'room-untied' }
  | { readonly kind: 'turned-to' }
  | { readonly kind: 'no-words' };

/** A message that did not reach its reader, told to the growers. */
export interface NotDelivered {
  readonly kind: 'not-delivered';
  /** A member's name or a group's. */
  readonly to: string;
  readonly because: /** The member blocked the bot, or the group put it out. */
    | { readonly kind: 'shut-out' }
    | { readonly kind: 'account-gone' }
    /** The connection went twice before the platform answered: it may have arrived. */
    | { readonly kind: 'answer-lost' }
    | { readonly kind: 'refused'; readonly words: string };
}
