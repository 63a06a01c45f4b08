import type { Answered, InboxItem } from './hear-all.ts';
import type { Incoming } from './incoming.ts';
import type { Outgoing } from './outgoing.ts';
import type { RawIncoming, Received } from './ports/store.ts';

/** Something on its way into the inbox, and what it means. */
export interface Arrival {
  readonly raw: RawIncoming;
  readonly incoming: Incoming;
}

export interface TakenIn extends Answered {
  /** Those that were new. */
  readonly items: readonly InboxItem[];
  /** Of what is to be sent, the one that is taken up already, for the caller to send and settle. */
  readonly leased: Outgoing | null;
}

/** The arrivals that had not been received before, as they stand in the inbox. */
export function newItems(
  arrivals: readonly Arrival[],
  received: readonly Received[],
): readonly InboxItem[] {
  return arrivals.flatMap(({ raw, incoming }, position): InboxItem[] => {
    const { no, platformId, isNew } = received[position]!;
    return isNew ? [{ no, received: { channel: raw.channel, platformId, incoming } }] : [];
  });
}
