import type { BotStanding, Standing } from '../state/room.ts';
import type { WireUser } from '../wire/user.ts';

/** A `ChatMember` for a person, with the fields that its status asks for. */
export const personMember = (
  user: WireUser,
  standing: Standing,
): Readonly<Record<string, unknown>> => {
  if (standing === 'creator') return { user, status: 'creator', is_anonymous: false };
  if (standing === 'administrator') return { user, status: 'administrator', ...RIGHTS };
  return standing === 'kicked'
    ? { user, status: 'kicked', until_date: 0 }
    : { user, status: standing };
};

/** A `ChatMember` for the bot. */
export const botMember = (
  user: WireUser,
  standing: BotStanding,
): Readonly<Record<string, unknown>> =>
  standing === 'restricted'
    ? { user, status: 'restricted', is_member: true, can_send_messages: false, until_date: 0 }
    : personMember(user, standing);

const RIGHTS = {
  can_be_edited: false,
  is_anonymous: false,
  can_manage_chat: true,
  can_delete_messages: true,
  can_manage_video_chats: false,
  can_restrict_members: false,
  can_promote_members: false,
  can_change_info: false,
  can_invite_users: true,
  can_pin_messages: true,
};
