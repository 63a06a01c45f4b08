import type { Answered, InboxItem } from './hear-all.ts';
import type { Incoming } from './incoming.ts';
import type { Outgoing, OutgoingNo } from './outgoing.ts';
import type { ChannelName, RawIncoming, Received } from './ports/store.ts';

/** Something on its way into the inbox, and what it means. */
export interface Arrival {
  readonly raw: RawIncoming;
  readonly incoming: Incoming;
}

export interface TakenIn extends Answered {
  /** Those that were new. */
  readonly items: readonly InboxItem[];
  /** Of what is to be sent, what is taken up already, for the caller to send and settle in this order. */
  readonly leased: readonly Outgoing[];
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

/** What leaves by a channel, up to the first that changes an earlier message: that goes another way. */
export function leasable(
  outgoing: readonly Outgoing[],
  by: ChannelName | null,
): readonly OutgoingNo[] {
  const leaving = outgoing.filter(({ channel }) => channel === by);
  const change = leaving.findIndex(({ edits }) => edits !== undefined);
  return (change < 0 ? leaving : leaving.slice(0, change)).map(({ no }) => no);
}
