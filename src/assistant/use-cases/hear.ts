import type { Member } from '../../greenhouse/member.ts';
import { entriesOfMessage } from '../../logbook/logbook.ts';
import { newConversation } from '../conversation.ts';
import { alertsWhileAway } from '../family/alerts-while-away.ts';
import { Handling } from '../handling.ts';
import type { Incoming } from '../incoming.ts';
import { type Outgoing, readPressToken } from '../outgoing.ts';
import { may } from '../permissions.ts';
import type { ChannelName, Ledger } from '../ports/store.ts';
import type { Standing } from '../standing.ts';
import { surroundingsOf } from '../surroundings.ts';
import { hearEdit } from './hear-edit.ts';
import { hearMessage } from './hear-message.ts';
import { type HouseholdDesk, keepHousehold } from './keep-household.ts';
import { pressButton } from './press-button.ts';

/** An incoming thing under the id it was received under. */
export interface Received {
  readonly channel: ChannelName;
  readonly platformId: string;
  readonly incoming: Incoming;
}

/** Hears one thing from a member, and gives all that it caused. */
export async function hear(
  standing: Standing,
  ledger: Ledger,
  member: Member,
  { channel, platformId, incoming }: Received,
  nowMs: number,
  channelOf: (handle: string) => ChannelName,
): Promise<Handling> {
  const { chat, kind } = incoming;
  const conversation = (await ledger.conversation(member.handle)) ?? newConversation(member.handle);
  const open = (messageId: string, writtenAtMs: number): Handling =>
    new Handling(
      standing,
      ledger.counters,
      conversation,
      {
        member,
        chat,
        channel,
        channelOf,
        messageId,
        writtenAtMs,
        isPress: kind === 'press',
        isOverheard: kind === 'message' && incoming.isOverheard === true,
        photo: kind === 'message' ? (incoming.photo ?? null) : null,
        photoOf: kind === 'message' ? (incoming.photoOf ?? null) : null,
      },
      nowMs,
    );
  const householdDesk = async (invitationHash: string | undefined): Promise<HouseholdDesk> => ({
    greenhouse: ledger.greenhouse,
    directory: await ledger.directory(channel),
    invitationHash: invitationHash ?? null,
  });
  const place = { chat: chat ?? member.handle, channel };
  switch (incoming.kind) {
    case 'message': {
      const { text, writtenAtMs, replyTo } = incoming;
      const around = await surroundingsOf(ledger, standing, replyTo, { ...place, writtenAtMs });
      const handling = open(platformId, writtenAtMs);
      hearMessage(handling, text, around);
      if (!handling.outgoing.some(tellsOfReturn)) return handling;
      // Few messages end an absence: only for them is it looked up, and the story told with it.
      const alerts = await alertsWhileAway(ledger, standing, member.handle, nowMs);
      if (alerts.length === 0) return handling;
      const whole = open(platformId, writtenAtMs);
      hearMessage(whole, text, { ...around, alerts });
      return whole;
    }
    case 'edit': {
      const first = await ledger.incoming(channel, incoming.edits);
      const handling = open(incoming.edits, first?.writtenAtMs ?? nowMs);
      const isAuthor = entriesOfMessage(standing.logbook, incoming.edits).every(
        ({ source }) => source.kind === 'member' && source.handle === member.handle,
      );
      if (first && may(member, 'edit', isAuthor)) {
        const { writtenAtMs } = first;
        const around = await surroundingsOf(ledger, standing, null, { ...place, writtenAtMs });
        hearEdit(handling, incoming.text, around);
      } else handling.say({ kind: 'refusal', because: { kind: 'edit-of-unknown' } });
      return handling;
    }
    case 'press': {
      const handling = open(platformId, nowMs);
      const token = readPressToken(incoming.token);
      const pressed = token && (await ledger.outgoing(token.no));
      const { invitationHash } = incoming;
      pressButton(handling, incoming.token, pressed, await householdDesk(invitationHash));
      return handling;
    }
    case 'wish': {
      const handling = open(platformId, nowMs);
      keepHousehold(handling, incoming.wish, await householdDesk(incoming.invitationHash));
      return handling;
    }
  }
}

function tellsOfReturn({ reply }: Outgoing): boolean {
  return reply.kind === 'answer' && reply.answer.kind === 'home-coming';
}
