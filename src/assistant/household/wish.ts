import type { Role } from '../../greenhouse/member.ts';

/** What a member wants of the household rather than of the greenhouse. */
export type HouseholdWish =
  /** Somebody new in a role, or a member of the set-up who has no account yet. */
  | { readonly kind: 'invite'; readonly role: Role; readonly handle: string | null }
  | { readonly kind: 'show' }
  | { readonly kind: 'remove'; readonly handle: string }
  | { readonly kind: 'leave' }
  | { readonly kind: 'stay' }
  /** Private words are for this greenhouse from now on. */
  | { readonly kind: 'turn-to'; readonly accountId: string }
  | {
      readonly kind: 'tie-room';
      readonly roomId: string;
      readonly title: string;
      /** Whether the bot sees every message there, or only those meant for it. */
      readonly readsAll: boolean;
    }
  | { readonly kind: 'untie-room' }
  /** Something without words: a sticker, a voice message. */
  | { readonly kind: 'no-words' };
