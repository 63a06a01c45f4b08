import type { Directory, Invitation } from '../household/household.ts';
import type { ChannelName } from './store.ts';

/** What a channel with accounts asks of the database, outside any handling. */
export interface HouseholdStore {
  /** All accounts and groups of a channel, of every greenhouse. */
  directory(channel: ChannelName): Promise<Directory>;
  invitation(codeHash: string): Promise<Invitation | null>;
  /** Keeps a claim for the greenhouse's grower; an earlier one that nobody used is void. */
  keepClaim(claim: Invitation): Promise<void>;
  /** A group goes on under another id. */
  moveRoom(channel: ChannelName, fromId: string, toId: string): Promise<void>;
  /** When a stranger was last told that this bot is not for them; null: never. */
  strangerToldAtMs(channel: ChannelName, accountId: string): Promise<number | null>;
  tellStranger(channel: ChannelName, accountId: string, atMs: number): Promise<void>;
  /** When the channel last heard from its platform; null: never. */
  heardAtMs(channel: ChannelName): Promise<number | null>;
  hear(channel: ChannelName, atMs: number): Promise<void>;
}
