import { boardOf } from '../../assistant/board-of.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Member } from '../../greenhouse/member.ts';
import { asSpokenBy } from '../../greenhouse/own-units.ts';
import type { Wording } from '../../wording/wording.ts';
import { type ChatItem, chatItems } from './chat-item.ts';
import { type Cursor, cursorOf } from './cursor.ts';
import { channel, type PageOptions } from './page-options.ts';
import type { Phrases } from './phrases/phrases.ts';
import { phrasesOf } from './phrases/phrases-of.ts';

/** What one speaker's page shows at one moment. */
export interface Talk {
  readonly greenhouse: Greenhouse;
  readonly member: Member;
  readonly phrases: Phrases;
  readonly wording: Wording;
  readonly items: readonly ChatItem[];
  readonly cursor: Cursor;
  /** There may be more of the past than was asked for. */
  readonly isCut: boolean;
  readonly board: ReturnType<typeof boardOf>;
  readonly nowMs: number;
}

/** How many messages a page shows at first. */
export const firstMost = 100;

/** Reads the chat with a member and the duties; null where the greenhouse has no such member. */
export async function readTalk(
  options: PageOptions,
  handle: string,
  most: number,
): Promise<Talk | null> {
  const { store, desk, greenhouseId, wordings } = options;
  const history = await store.history(greenhouseId, channel, handle, most);
  const standing = await desk.standing(greenhouseId);
  const { greenhouse } = standing;
  const member = greenhouse.members.find((candidate) => candidate.handle === handle);
  if (!member) return null;
  const nowMs = Math.max(options.nowMs(), standing.nowMs);
  const { language } = member;
  const words = { wording: wordings[language], phrases: phrasesOf[language] };
  return {
    greenhouse: asSpokenBy(greenhouse, handle),
    member,
    ...words,
    items: chatItems(history, standing, words),
    cursor: cursorOf(history),
    isCut: history.length >= most,
    board: boardOf(standing, nowMs),
    nowMs,
  };
}
