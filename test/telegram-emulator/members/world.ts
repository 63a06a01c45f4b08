import type { Clock } from '../state/clock.ts';
import type { Platform } from '../state/platform.ts';
import { emptyRoom } from '../state/room.ts';
import type { WireChat } from '../wire/chat.ts';
import { Group } from './group.ts';
import { Member } from './member.ts';
import { nextSupergroupId } from './upgraded-room.ts';

/** Beyond 32 bits, as the platform's newer ids are. */
const FIRST_USER_ID = 5_100_000_000;
const FIRST_GROUP_ID = -4_100_000_000;

/** A person to be; `language` is what their app is set to. */
export type NewMember = {
  readonly name: string;
  readonly lastName?: string;
  readonly username?: string;
  readonly language?: string;
};

/** A group to be. */
export type NewGroup = {
  readonly title?: string;
  readonly owner: Member;
  readonly members?: readonly Member[];
  /** A basic group if left out; one with topics is always a supergroup. */
  readonly kind?: 'group' | 'supergroup';
  readonly topics?: boolean;
  /** Privacy mode as it stood when the bot joined; the bot's own setting if left out. */
  readonly privacy?: boolean;
  /** How the bot is in it: brought in by the owner as a plain member if left out. */
  readonly bot?: 'member' | 'administrator' | 'absent';
};

/** The people and groups of the emulated platform. */
export class World {
  readonly clock: Clock;
  readonly #platform: Platform;

  constructor(platform: Platform) {
    this.clock = platform.clock;
    this.#platform = platform;
  }

  /** Privacy mode as the bot's maker sets it; `getMe` tells of it. */
  setPrivacy(on: boolean): void {
    this.#platform.bot.privacy = on;
  }

  /** A new person, who has not written to the bot yet. */
  user({ name, lastName, username, language }: NewMember): Member {
    const id = FIRST_USER_ID + this.#platform.people.size;
    const named = {
      first_name: name,
      ...(lastName === undefined ? {} : { last_name: lastName }),
      ...(username === undefined ? {} : { username }),
    };
    const person = {
      user: {
        id,
        is_bot: false,
        ...named,
        ...(language === undefined ? {} : { language_code: language }),
      },
      started: false,
      blocked: false,
      deactivated: false,
    };
    const room = emptyRoom({ id, type: 'private', ...named }, person);
    this.#platform.people.set(id, person);
    this.#platform.rooms.set(id, room);
    return new Member(this.#platform, person, room);
  }

  /** A new group with its people in it. */
  group(wanted: NewGroup): Group {
    const { title = 'Family', owner, members = [], topics = false, privacy } = wanted;
    const supergroup = topics || wanted.kind === 'supergroup';
    const chat: WireChat = {
      id: supergroup
        ? nextSupergroupId(this.#platform)
        : FIRST_GROUP_ID - this.#platform.rooms.size,
      type: supergroup ? 'supergroup' : 'group',
      title,
      ...(topics ? { is_forum: true } : {}),
    };
    const room = emptyRoom(chat, undefined, privacy);
    for (const member of members) room.standings.set(member.id, 'member');
    room.standings.set(owner.id, 'creator');
    this.#platform.rooms.set(chat.id, room);
    const group = new Group(this.#platform, room, owner);
    const bot = wanted.bot ?? 'member';
    if (bot !== 'absent') group.addBot();
    if (bot === 'administrator') group.promoteBot();
    return group;
  }
}
