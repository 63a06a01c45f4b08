import type { Outgoing } from '../../../assistant/outgoing.ts';
import type { GreenhouseId } from '../../../assistant/ports/store.ts';
import type { AddressBook } from '../arriving/address-book.ts';
import { readKey } from '../message-key.ts';

/** Where a message goes. */
export interface Target {
  readonly chatId: number;
  readonly isGroup: boolean;
  readonly canBeReached: boolean;
}

/** The chat behind a member's handle or a group's name; null: nobody is there any more. */
export function targetOf(
  greenhouse: GreenhouseId,
  outgoing: Outgoing,
  book: AddressBook,
): Target | null {
  const account = book.accountFor(greenhouse, outgoing.to);
  if (account) {
    const { accountId, canBeReached } = account;
    return { chatId: Number(accountId), isGroup: false, canBeReached };
  }
  const room = book.roomNamed(greenhouse, outgoing.to);
  if (room) return { chatId: Number(room.roomId), isGroup: true, canBeReached: room.canBeReached };
  const chatId = partingChatOf(outgoing);
  return chatId === null ? null : { chatId, isGroup: chatId < 0, canBeReached: true };
}

/** Said to those who are no longer in: where they asked, or else to their account. */
function partingChatOf({ reply, inReplyTo }: Outgoing): number | null {
  if (reply.kind !== 'answer' || reply.answer.kind !== 'household') return null;
  const { news } = reply.answer;
  if (news.kind === 'taken-out') return Number(news.accountId);
  const isParting = news.kind === 'farewell' || news.kind === 'room-untied';
  return isParting && inReplyTo !== null ? (readKey(inReplyTo)?.chatId ?? null) : null;
}
