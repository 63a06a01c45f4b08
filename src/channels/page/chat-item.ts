import { type Outgoing, pressToken, readPressToken } from '../../assistant/outgoing.ts';
import { photoIn } from '../../assistant/photo-in.ts';
import type { HistoryItem, StoredIncoming } from '../../assistant/ports/store.ts';
import { pictureIn } from '../../assistant/replies/picture.ts';
import type { Reply } from '../../assistant/replies/reply.ts';
import type { Standing } from '../../assistant/standing.ts';
import { readerOf } from '../../wording/reader-of.ts';
import type { Reader, Wording } from '../../wording/wording.ts';
import { readIncomingBody } from './incoming-body.ts';
import type { Phrases } from './phrases/phrases.ts';

/** One bubble of the chat. `key` is its element's id. */
export type ChatItem = SaidItem | BotItem;

export interface SaidItem {
  readonly kind: 'said';
  readonly key: string;
  readonly atMs: number;
  readonly text: string;
  readonly picture: ShownPicture | null;
  /** The id under which the visitor's page sent it. */
  readonly platformId: string;
}

export interface BotItem {
  readonly kind: 'bot';
  readonly key: string;
  readonly atMs: number;
  readonly replyKind: Reply['kind'];
  readonly text: string;
  readonly picture: ShownPicture | null;
  readonly rows: readonly ButtonRow[];
  /** All that it logged has been struck out. */
  readonly isStruck: boolean;
  /** It shows elsewhere too, so that a quiet line will do. */
  readonly isInPassing: boolean;
  /** It may look otherwise than when it was first shown. */
  readonly hasChanged: boolean;
}

export interface ShownPicture {
  readonly path: string;
  readonly alt: string;
}

export type ButtonRow =
  | { readonly kind: 'open'; readonly buttons: readonly ChatButton[] }
  /** Answered: only the button that was pressed is told; null where none was. */
  | { readonly kind: 'closed'; readonly pressed: string | null };

interface ChatButton {
  readonly token: string;
  readonly label: string;
}

export interface Words {
  readonly wording: Wording;
  readonly phrases: Phrases;
}

/**
 * The chat as bubbles, in the order of its history. A press is no bubble: it marks its button. An
 * edit is none either: it stands in the place of the message that it edits.
 */
export function chatItems(
  history: readonly HistoryItem[],
  standing: Standing,
  words: Words,
): readonly ChatItem[] {
  const pressed = pressedTokens(history);
  const edits = latestEdits(history);
  return history.flatMap((item): ChatItem[] => {
    if (item.kind === 'incoming') return saidItems(item.incoming, words.phrases);
    const first = item.outgoing;
    if (first.edits !== undefined) return [];
    return [botItem(first, edits.get(first.no) ?? first, pressed, standing, words)];
  });
}

function saidItems({ no, platformId, body }: StoredIncoming, phrases: Phrases): SaidItem[] {
  const read = readIncomingBody(body);
  if (read.kind === 'press') return [];
  const { writtenAtMs: atMs, text, photo } = read;
  const picture = photo ? { path: `/photos/${photo.id}`, alt: phrases.photo } : null;
  return [{ kind: 'said', key: `in-${no}`, atMs, text, picture, platformId }];
}

/** `first`: the message as it was sent; `shown`: as it stands now. */
function botItem(
  first: Outgoing,
  shown: Outgoing,
  pressed: ReadonlySet<string>,
  standing: Standing,
  { wording, phrases }: Words,
): BotItem {
  const { reply } = shown;
  // A message is worded as of when it was said, so that its `today` stays that day.
  const reader = readerOf(first.to, standing.greenhouse, shown.atMs);
  const isStruck = isAllStruck(first, standing);
  let position = 0;
  const rows = shown.buttons.map((row) =>
    row.map(({ label }) => {
      const token = pressToken(shown.no, position++);
      const text = worded(phrases, () => wording.button(label, reader));
      return { token, label: text, isPressed: pressed.has(token) };
    }),
  );
  const isAnyPressed = rows.flat().some(({ isPressed }) => isPressed);
  return {
    kind: 'bot',
    key: `out-${first.no}`,
    atMs: first.atMs,
    replyKind: reply.kind,
    text: worded(phrases, () => wording.reply(reply, reader)),
    picture: shownPicture(shown, reader, wording),
    rows: rows.map((row): ButtonRow => {
      const chosen = row.find(({ isPressed }) => isPressed)?.label ?? null;
      // A question has one answer; elsewhere each row stands for itself.
      const isClosed = isStruck || chosen !== null || (reply.kind === 'question' && isAnyPressed);
      return isClosed ? { kind: 'closed', pressed: chosen } : { kind: 'open', buttons: row };
    }),
    isStruck,
    isInPassing: first.inPassing === true,
    hasChanged: isStruck || isAnyPressed || shown !== first,
  };
}

/** A drawn picture or a member's photo. Null: it shows none, or one of a system that the set-up holds no more. */
function shownPicture(
  { no, to, reply }: Outgoing,
  reader: Reader,
  wording: Wording,
): ShownPicture | null {
  const picture = pictureIn(reply);
  try {
    if (photoIn(reply)) return { path: `/photos/${no}`, alt: wording.reply(reply, reader) };
    if (!picture) return null;
    const { alt } = wording.picture(picture, reader);
    return { path: `/pictures/${no}.png?as=${encodeURIComponent(to)}`, alt };
  } catch {
    return null;
  }
}

/** An old message may name a system that the set-up holds no more; it must not take the page with it. */
function worded(phrases: Phrases, word: () => string): string {
  try {
    return word();
  } catch {
    return phrases.nothingLeftOfIt;
  }
}

/** Whether a receipt's own way back has been gone. */
function isAllStruck({ buttons }: Outgoing, { logbook }: Standing): boolean {
  return buttons
    .flat()
    .some(
      ({ label, action }) =>
        label.kind === 'strike-out' &&
        action.kind === 'strike' &&
        action.entries.every((entry) => logbook.all[entry - 1]?.struck !== null),
    );
}

function pressedTokens(history: readonly HistoryItem[]): ReadonlySet<string> {
  const tokens = new Set<string>();
  for (const item of history) {
    if (item.kind !== 'incoming') continue;
    const body = readIncomingBody(item.incoming.body);
    if (body.kind === 'press' && readPressToken(body.token)) tokens.add(body.token);
  }
  return tokens;
}

/** By the number of the message that they edit. */
function latestEdits(history: readonly HistoryItem[]): ReadonlyMap<number, Outgoing> {
  const latest = new Map<number, Outgoing>();
  for (const item of history) {
    if (item.kind === 'outgoing' && item.outgoing.edits !== undefined) {
      latest.set(item.outgoing.edits, item.outgoing);
    }
  }
  return latest;
}
