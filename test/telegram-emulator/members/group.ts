import { tellOfService } from '../delivery/tell-bot.ts';
import { changeBotStanding } from '../methods/bot-standing.ts';
import { personMember } from '../methods/member-record.ts';
import { addToRoom } from '../methods/room-message.ts';
import type { Person } from '../state/person.ts';
import type { Platform } from '../state/platform.ts';
import type { Room, Standing, Topic } from '../state/room.ts';
import type { StoredMessage } from '../state/stored-message.ts';
import type { WireContent } from '../wire/message.ts';
import type { WireUser } from '../wire/user.ts';
import { Chat } from './chat.ts';
import type { Member } from './member.ts';
import { type MessageView, viewOf } from './message-view.ts';
import type { Saying } from './saying.ts';
import { speak } from './speak.ts';
import { upgradedRoom } from './upgraded-room.ts';

const TOPIC_COLOUR = 0x6fb9f0;

/** A group, as a test lets its members act in it. */
export class Group extends Chat {
  readonly #owner: Member;

  constructor(platform: Platform, room: Room, owner: Member) {
    super(platform, room);
    this.#owner = owner;
  }

  /** A member writes. `topic` is one that `openTopic` gave; the general topic if left out. Throws for non-members. */
  say(
    member: Member,
    saying: Saying,
    where: { readonly replyTo?: MessageView; readonly topic?: Topic } = {},
  ): MessageView {
    const standing = this.room.standings.get(member.id) ?? 'left';
    if (standing === 'left' || standing === 'kicked' || this.room.upgradedToId !== undefined) {
      throw new Error(`${member.name} cannot write in ${this.room.chat.title ?? 'this group'}`);
    }
    return speak(this.platform, this.room, this.#person(member), saying, {
      ...(where.replyTo === undefined ? {} : { replyTo: where.replyTo }),
      ...(where.topic === undefined ? {} : { topicId: where.topic.id }),
    });
  }

  /** Someone comes in, added by `by` or by themselves. */
  add(member: Member, by: Member = member): void {
    this.#service(by, { new_chat_members: [this.#user(member)] });
    this.#changeStanding(member, by, 'member');
  }

  /** Someone leaves, or is removed by `by`. */
  remove(member: Member, by: Member = member): void {
    this.#service(by, { left_chat_member: this.#user(member) });
    this.#changeStanding(member, by, by === member ? 'left' : 'kicked');
  }

  addBot(by: Member = this.#owner): void {
    changeBotStanding(this.platform, this.room, this.#user(by), 'member');
    this.#service(by, { new_chat_members: [this.platform.bot.user] });
  }

  kickBot(by: Member = this.#owner): void {
    this.#post(by, { left_chat_member: this.platform.bot.user });
    changeBotStanding(this.platform, this.room, this.#user(by), 'kicked');
  }

  promoteBot(by: Member = this.#owner): void {
    changeBotStanding(this.platform, this.room, this.#user(by), 'administrator');
  }

  /** Takes the bot's rank or its silence away again. */
  demoteBot(by: Member = this.#owner): void {
    changeBotStanding(this.platform, this.room, this.#user(by), 'member');
  }

  /** The bot may read on, but not write. */
  muteBot(by: Member = this.#owner): void {
    changeBotStanding(this.platform, this.room, this.#user(by), 'restricted');
  }

  /** Some other bot writes; from then on plain commands are not for ours. */
  otherBotSpeaks(text: string): MessageView {
    const from = {
      id: 7_099_999_999,
      is_bot: true,
      first_name: 'Other',
      username: 'some_other_bot',
    };
    const stored = addToRoom(this.platform, this.room, { from, content: { text } });
    return viewOf(this.platform, stored.wire, stored);
  }

  /** A new topic; the group must have been made with `topics`. */
  openTopic(name: string, by: Member = this.#owner): Topic {
    if (this.room.chat.is_forum !== true) throw new Error('This group has no topics');
    const content = { forum_topic_created: { name, icon_color: TOPIC_COLOUR } };
    const stored = this.#post(by, content);
    const topic = { id: stored.wire.message_id, name, closed: false };
    this.room.topics.set(topic.id, topic);
    stored.wire = { ...stored.wire, message_thread_id: topic.id, is_topic_message: true };
    tellOfService(this.platform, this.room, stored);
    return topic;
  }

  closeTopic(topic: Topic, by: Member = this.#owner): void {
    this.#service(by, { forum_topic_closed: {} }, topic);
    this.room.topics.get(topic.id)!.closed = true;
  }

  /**
   * The basic group becomes a supergroup: a new chat with a new id, in which all goes on.
   * With `silently` the bot learns of it only from the refusal of its next call.
   */
  upgrade({ silently = false } = {}): Group {
    const room = upgradedRoom(this.platform, this.room);
    const group = new Group(this.platform, room, this.#owner);
    const farewell = this.#post(this.#owner, { migrate_to_chat_id: room.chat.id });
    const welcome = group.#post(this.#owner, { migrate_from_chat_id: this.id });
    if (!silently) {
      tellOfService(this.platform, this.room, farewell);
      tellOfService(this.platform, room, welcome);
    }
    this.room.upgradedToId = room.chat.id;
    return group;
  }

  #person(member: Member): Person {
    return this.platform.people.get(member.id)!;
  }

  #user(member: Member): WireUser {
    return this.#person(member).user;
  }

  #post(by: Member, content: WireContent, topic?: Topic): StoredMessage {
    return addToRoom(this.platform, this.room, { from: this.#user(by), content, topic });
  }

  #service(by: Member, content: WireContent, topic?: Topic): void {
    tellOfService(this.platform, this.room, this.#post(by, content, topic));
  }

  /** The bot is told by `chat_member` where it is administrator and has asked for it. */
  #changeStanding(member: Member, by: Member, standing: Standing): void {
    const before = this.room.standings.get(member.id) ?? 'left';
    this.room.standings.set(member.id, standing);
    if (this.room.botStanding !== 'administrator') return;
    const user = this.#user(member);
    this.platform.updates.push('chat_member', this.id, {
      chat: this.room.chat,
      from: this.#user(by),
      date: this.platform.clock.nowS(),
      old_chat_member: personMember(user, before),
      new_chat_member: personMember(user, standing),
    });
  }
}
