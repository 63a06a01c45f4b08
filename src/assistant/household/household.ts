import type { Role } from '../../greenhouse/member.ts';
import type { ChannelName, GreenhouseId } from '../ports/store.ts';

/**
 * Who may speak for whom: accounts of a platform and the members behind them, the groups tied to a
 * greenhouse, and the invitations that are out. A member without an account is known to the
 * logbook, and cannot be reached.
 */

/** An account of a platform, speaking for one member. The same account may do so in several greenhouses. */
export interface Account {
  readonly greenhouse: GreenhouseId;
  readonly channel: ChannelName;
  /** The platform's own id of the account. */
  readonly accountId: string;
  readonly handle: string;
  /** The greenhouse that private words are for, where the account has several. */
  readonly isCurrent: boolean;
  /** False: the bot was blocked, or the account is gone. */
  readonly canBeReached: boolean;
}

/** A group of a platform, tied to one greenhouse under a name of its own there. */
export interface Room {
  readonly greenhouse: GreenhouseId;
  readonly channel: ChannelName;
  /** The platform's own id of the group. */
  readonly roomId: string;
  readonly name: string;
  /** False: the bot was put out of it. */
  readonly canBeReached: boolean;
}

export interface Directory {
  readonly accounts: readonly Account[];
  readonly rooms: readonly Room[];
}

/** A way in, used once. Only the hash of its code is kept. */
export interface Invitation {
  readonly greenhouse: GreenhouseId;
  readonly codeHash: string;
  readonly role: Role;
  /** The member it is for; null: somebody new. */
  readonly handle: string | null;
  /** The member who made it; null: the bot itself, for the grower who claims it. */
  readonly madeBy: string | null;
  readonly expiresAtMs: number;
  readonly usedAtMs: number | null;
}

/** What a handling changes about the household, in its own transaction. */
export type HouseholdChange =
  /** Takes the place of the account that the member had on this channel. */
  | {
      readonly kind: 'account-bound';
      readonly channel: ChannelName;
      readonly accountId: string;
      readonly handle: string;
    }
  | { readonly kind: 'account-unbound'; readonly channel: ChannelName; readonly handle: string }
  | {
      readonly kind: 'account-turned';
      readonly channel: ChannelName;
      readonly accountId: string;
    }
  | {
      readonly kind: 'reach-changed';
      readonly channel: ChannelName;
      readonly to: string;
      readonly canBeReached: boolean;
    }
  | {
      readonly kind: 'room-tied';
      readonly channel: ChannelName;
      readonly roomId: string;
      readonly name: string;
    }
  | { readonly kind: 'room-untied'; readonly channel: ChannelName; readonly name: string }
  | { readonly kind: 'invitation-made'; readonly invitation: Invitation }
  | { readonly kind: 'invitation-used'; readonly codeHash: string; readonly atMs: number };
