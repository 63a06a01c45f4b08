import {
  type Button,
  type Outgoing,
  pressToken,
  readPressToken,
} from '../../assistant/outgoing.ts';
import type { HistoryItem, StoredIncoming } from '../../assistant/ports/store.ts';
import type { Reply } from '../../assistant/replies/reply.ts';
import type { Standing } from '../../assistant/standing.ts';
import type { Wording } from '../../wording/wording.ts';
import { readIncomingBody } from './incoming-body.ts';
import type { Phrases } from './phrases/phrases.ts';

/** One bubble of the chat. `key` is its element's id. */
export type ChatItem = SaidItem | BotItem;

export interface SaidItem {
  readonly kind: 'said';
  readonly key: string;
  readonly atMs: number;
  readonly text: string;
  /** The id under which the visitor's page sent it. */
  readonly platformId: string;
}

export interface BotItem {
  readonly kind: 'bot';
  readonly key: string;
  readonly atMs: number;
  readonly replyKind: Reply['kind'];
  readonly text: string;
  readonly buttons: readonly (readonly ChatButton[])[];
  /** No button of it does anything any more. */
  readonly isSpent: boolean;
  /** All that it logged has been struck out. */
  readonly isStruck: boolean;
}

export interface ChatButton {
  readonly token: string;
  readonly label: string;
  readonly isPressed: boolean;
}

export interface Words {
  readonly wording: Wording;
  readonly phrases: Phrases;
}

/** The chat as bubbles, in the order of its history. A press is no bubble: it marks the button. */
export function chatItems(
  history: readonly HistoryItem[],
  standing: Standing,
  words: Words,
): readonly ChatItem[] {
  const pressed = pressedButtons(history);
  return history.flatMap((item): ChatItem[] => {
    if (item.kind === 'incoming') return saidItems(item.incoming);
    const { outgoing } = item;
    return [botItem(outgoing, pressed.get(outgoing.no) ?? null, standing, words)];
  });
}

function saidItems(incoming: StoredIncoming): SaidItem[] {
  const body = readIncomingBody(incoming.body);
  if (body.kind === 'press') return [];
  const { no, platformId } = incoming;
  return [{ kind: 'said', key: `in-${no}`, atMs: body.writtenAtMs, text: body.text, platformId }];
}

function botItem(
  outgoing: Outgoing,
  pressed: number | null,
  standing: Standing,
  words: Words,
): BotItem {
  const { no, atMs, reply, buttons } = outgoing;
  // A message is worded as of when it was said, so that its `today` stays that day.
  const reader = { greenhouse: standing.greenhouse, nowMs: atMs };
  const isStruck = strikesOf(buttons).some((entries) =>
    entries.every((entry) => standing.logbook.all[entry - 1]?.struck !== null),
  );
  let position = 0;
  return {
    kind: 'bot',
    key: `out-${no}`,
    atMs,
    replyKind: reply.kind,
    text: worded(words.phrases, () => words.wording.reply(reply, reader)),
    buttons: buttons.map((row) =>
      row.map((button) => {
        const isPressed = position === pressed;
        const token = pressToken(no, position++);
        const label = worded(words.phrases, () => words.wording.button(button.label, reader));
        return { token, label, isPressed };
      }),
    ),
    isSpent: pressed !== null || isStruck,
    isStruck,
  };
}

/** An old message may name a system that the set-up holds no more; it must not take the page with it. */
function worded(phrases: Phrases, word: () => string): string {
  try {
    return word();
  } catch {
    return phrases.nothingLeftOfIt;
  }
}

function strikesOf(buttons: Outgoing['buttons']) {
  return buttons
    .flat()
    .flatMap(({ action }: Button) => (action.kind === 'strike' ? [action.entries] : []));
}

/** The position of the button pressed first, by the number of its message. */
function pressedButtons(history: readonly HistoryItem[]): ReadonlyMap<number, number> {
  const pressed = new Map<number, number>();
  for (const item of history) {
    if (item.kind !== 'incoming') continue;
    const body = readIncomingBody(item.incoming.body);
    const token = body.kind === 'press' ? readPressToken(body.token) : null;
    if (token && !pressed.has(token.no)) pressed.set(token.no, token.position);
  }
  return pressed;
}
