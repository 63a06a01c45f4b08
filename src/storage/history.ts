import type { ChannelName, GreenhouseId, HistoryItem } from '../assistant/ports/store.ts';
import { selectIncomingOfChat } from './inbox.ts';
import { selectOutgoingOfChat } from './outgoing-messages.ts';
import type { Database } from './schema/database.ts';

/** The latest of a chat, oldest first; what was asked stands before what was answered at once. */
export async function selectHistory(
  database: Database,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  chat: string,
  most: number,
): Promise<readonly HistoryItem[]> {
  const received = await selectIncomingOfChat(database, greenhouse, channel, chat, most);
  const sent = await selectOutgoingOfChat(database, greenhouse, channel, chat, most);
  const items: readonly HistoryItem[] = [
    ...received.toReversed().map((incoming) => ({ kind: 'incoming' as const, incoming })),
    ...sent.toReversed().map((outgoing) => ({ kind: 'outgoing' as const, outgoing })),
  ];
  // The sort is stable, so that at one instant the incoming ones stay first and numbers in order.
  return items.toSorted((one, other) => instantOf(one) - instantOf(other)).slice(-most);
}

function instantOf(item: HistoryItem): number {
  return item.kind === 'incoming' ? item.incoming.receivedAtMs : item.outgoing.atMs;
}
