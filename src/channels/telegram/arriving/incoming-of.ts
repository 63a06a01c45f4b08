import type { Incoming } from '../../../assistant/incoming.ts';
import type { GreenhouseId } from '../../../assistant/ports/store.ts';
import type { Member } from '../../../greenhouse/member.ts';
import { channel } from '../channel-name.ts';
import { editId, keyText, pressId } from '../message-key.ts';
import { phrasesOf } from '../phrases/phrases-of.ts';
import type { Pressed, Said } from '../reading/told.ts';
import { readButtonData } from '../sending/button-data.ts';
import { wishOf } from './wish-of.ts';

/** A member's place in a greenhouse, as the channel knows it. */
export interface Speaker {
  readonly greenhouse: GreenhouseId;
  /** The greenhouse's name. */
  readonly name: string;
  readonly member: Member;
  readonly members: readonly Member[];
  /** The group's name in the greenhouse; null: in private. */
  readonly room: string | null;
}

export interface Heard {
  readonly platformId: string;
  readonly incoming: Incoming;
}

export interface ChannelSelf {
  readonly readsAll: boolean;
  /** The hash of the code that an invitation asked for under an id would have. */
  readonly invitationHash: (greenhouse: GreenhouseId, platformId: string) => string;
}

/** What a member's message means to the assistant; null: nothing. */
export function saidIncoming(
  said: Said,
  updateId: number,
  { greenhouse, member, members, room }: Speaker,
  self: ChannelSelf,
): Heard | null {
  const { key, command, photoId, isEdit, isAddressed, writtenAtMs, replyTo } = said;
  const from = { from: member.handle, chat: room };
  if (isEdit) {
    if (said.text === '' || command) return null;
    const edits = keyText(key);
    const platformId = editId(key, updateId);
    return { platformId, incoming: { kind: 'edit', ...from, edits, text: said.text } };
  }
  const platformId = keyText(key);
  const wish = wishOf(said, members, self);
  if (wish) {
    const invitationHash = self.invitationHash(greenhouse, platformId);
    return { platformId, incoming: { kind: 'wish', ...from, wish, invitationHash } };
  }
  const text = command ? typedFor(command.name, member) : said.text;
  if (text === null || (text === '' && photoId === null)) return null;
  return {
    platformId,
    incoming: {
      kind: 'message',
      ...from,
      text,
      writtenAtMs,
      ...(photoId === null ? {} : { photo: { channel, id: photoId } }),
      replyTo: replyTo ? { kind: 'message', ids: [keyText(replyTo)] } : null,
      ...(isAddressed ? {} : { isOverheard: true }),
    },
  };
}

/** What a pressed button means to the assistant. */
export function pressedIncoming(
  pressed: Pressed,
  { greenhouse, member, room }: Speaker,
  self: ChannelSelf,
): Heard {
  const platformId = pressId(pressed.callbackId, pressed.key);
  return {
    platformId,
    incoming: {
      kind: 'press',
      from: member.handle,
      chat: room,
      token: readButtonData(pressed.data)?.token ?? '',
      invitationHash: self.invitationHash(greenhouse, platformId),
    },
  };
}

/** A command is a shorthand for words; one that nobody knows asks for help. */
function typedFor(command: string, { language }: Member): string | null {
  const { typed } = phrasesOf(language);
  if (command === 'today' || command === 'undo') return typed[command];
  return command === 'privacy' ? null : typed.help;
}
