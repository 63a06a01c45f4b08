import type { Conversation } from './conversation.ts';
import type { Handling } from './handling.ts';
import type { Outgoing, OutgoingNo } from './outgoing.ts';
import type { ChannelName, InboxNo, Ledger, Writes } from './ports/store.ts';
import type { Standing } from './standing.ts';
import { hear, type Received } from './use-cases/hear.ts';
import { renewedRounds } from './use-cases/renew-rounds.ts';

/** One thing from the inbox. */
export interface InboxItem {
  readonly no: InboxNo;
  readonly received: Received;
}

export interface HeardAll {
  readonly standing: Standing;
  readonly writes: Partial<Omit<Writes, 'clockMs'>>;
  readonly said: Said;
}

/** How those are reached who are not spoken to. */
export interface Reach {
  readonly canEdit: (channel: ChannelName) => boolean;
  readonly channelOf: (handle: string) => ChannelName;
}

/** What each was answered. */
export type Said = ReadonlyMap<InboxNo, readonly Outgoing[]>;

/** What came of a hearing. */
export interface Answered {
  readonly said: Said;
  /** All that is to be sent: what was said, and the rounds that look otherwise since. */
  readonly outgoing: readonly Outgoing[];
}

/**
 * Hears several things one after the other, each seeing what those before it did, as if each had a
 * transaction of its own. What comes from nobody of the household is passed over.
 */
export async function hearAll(
  before: Standing,
  ledger: Ledger,
  items: readonly InboxItem[],
  nowMs: number,
  { canEdit, channelOf }: Reach,
): Promise<HeardAll> {
  const handlings: Handling[] = [];
  const said = new Map<InboxNo, readonly Outgoing[]>();
  let standing = before;
  for (const { no, received } of items) {
    const { from } = received.incoming;
    const member = standing.greenhouse.members.find(({ handle }) => handle === from);
    if (!member || handlings.some((earlier) => hasTakenOut(earlier, from))) continue;
    const handling = await hear(
      standing,
      aheadOf(ledger, handlings),
      member,
      received,
      nowMs,
      channelOf,
    );
    handlings.push(handling);
    said.set(no, handling.outgoing);
    standing = handling.standing;
  }
  const outgoing = handlings.flatMap((handling) => handling.outgoing);
  const lastNo = outgoing.at(-1)?.no ?? ledger.counters.lastOutgoingNo;
  const renewed = await renewedRounds(before, standing, ledger, lastNo, nowMs, canEdit);
  return {
    standing,
    said,
    writes: {
      entries: handlings.flatMap((handling) => handling.newEntries),
      strikes: handlings.flatMap((handling) => handling.newStrikes),
      greenhouse: handlings.findLast(({ newGreenhouse }) => newGreenhouse)?.newGreenhouse ?? null,
      outgoing: [...outgoing, ...renewed],
      conversations: [...conversationsOf(handlings).values()],
      household: handlings.flatMap((handling) => handling.householdChanges),
      arrangements: handlings.flatMap((handling) => handling.newArrangements),
    },
  };
}

/** From then on it is a stranger who speaks, though the words came in together. */
function hasTakenOut({ householdChanges }: Handling, from: string): boolean {
  return householdChanges.some(
    (change) => change.kind === 'account-unbound' && change.handle === from,
  );
}

function conversationsOf(handlings: readonly Handling[]): ReadonlyMap<string, Conversation> {
  return new Map(handlings.map(({ conversation }) => [conversation.handle, conversation]));
}

/** The ledger as it will be once what these handlings decided is written. */
function aheadOf(ledger: Ledger, handlings: readonly Handling[]): Ledger {
  if (handlings.length === 0) return ledger;
  const outgoing = handlings.flatMap((handling) => handling.outgoing);
  const { counters } = ledger;
  return {
    ...ledger,
    counters: { ...counters, lastOutgoingNo: outgoing.at(-1)?.no ?? counters.lastOutgoingNo },
    conversation: async (handle) =>
      conversationsOf(handlings).get(handle) ?? (await ledger.conversation(handle)),
    outgoing: async (no: OutgoingNo) =>
      outgoing.find((message) => message.no === no) ?? (await ledger.outgoing(no)),
    latestOutgoing: async (chat, kind) =>
      outgoing.findLast(
        ({ to, reply }) => to === chat && (kind === undefined || reply.kind === kind),
      ) ?? (await ledger.latestOutgoing(chat, kind)),
  };
}
