import type { WireChat } from './chat.ts';
import type { WireEntity } from './entity.ts';
import type { WireKeyboard } from './keyboard.ts';
import type { WireUser } from './user.ts';

/** One size of a picture (`PhotoSize`); sizes in pixels and bytes. */
export type WirePhotoSize = {
  readonly file_id: string;
  readonly file_unique_id: string;
  readonly width: number;
  readonly height: number;
  readonly file_size: number;
};

/** What a message holds, apart from where it stands. */
export type WireContent = {
  readonly text?: string;
  readonly entities?: readonly WireEntity[];
  readonly photo?: readonly WirePhotoSize[];
  readonly caption?: string;
  readonly caption_entities?: readonly WireEntity[];
  readonly sticker?: unknown;
  readonly voice?: unknown;
  readonly document?: unknown;
  readonly location?: unknown;
  readonly contact?: unknown;
  readonly new_chat_members?: readonly WireUser[];
  readonly left_chat_member?: WireUser;
  readonly group_chat_created?: true;
  readonly supergroup_chat_created?: true;
  readonly migrate_to_chat_id?: number;
  readonly migrate_from_chat_id?: number;
  readonly forum_topic_created?: { readonly name: string; readonly icon_color: number };
  readonly forum_topic_closed?: Readonly<Record<string, never>>;
};

/** A message (`Message`); `date` and `edit_date` in Unix seconds. */
export type WireMessage = WireContent & {
  readonly message_id: number;
  readonly message_thread_id?: number;
  readonly is_topic_message?: true;
  readonly from: WireUser;
  readonly chat: WireChat;
  readonly date: number;
  readonly edit_date?: number;
  readonly reply_to_message?: WireMessage;
  readonly reply_markup?: WireKeyboard;
};
