import { newConversation } from '../../../src/assistant/conversation.ts';
import { Handling } from '../../../src/assistant/handling.ts';
import { emptyStanding, type Standing, withChanges } from '../../../src/assistant/standing.ts';
import { nothingAround } from '../../../src/assistant/surroundings.ts';
import { hearMessage } from '../../../src/assistant/use-cases/hear-message.ts';
import type { Greenhouse } from '../../../src/greenhouse/greenhouse.ts';
import { wordings } from '../../../src/wording/wordings.ts';

const noChanges = {
  entries: [],
  strikes: [],
  weather: [],
  mornings: [],
  greenhouse: null,
  arrangements: [],
};

/** A grower's talk with the bot: words in, words out, the whole road but for the database. */
export class Talk {
  #standing: Standing;
  #conversation: Handling['conversation'];
  #said = 0;
  #lastOutgoingNo = 0;

  constructor(greenhouse: Greenhouse, startMs: number) {
    this.#standing = emptyStanding(greenhouse, startMs);
    this.#conversation = newConversation(greenhouse.members[0]!.handle);
  }

  say(text: string, nowMs: number): string {
    const standing = withChanges(this.#standing, noChanges, this.#standing.revision, nowMs);
    const { greenhouse } = standing;
    this.#said += 1;
    const handling = new Handling(
      standing,
      {
        revision: 0,
        lastEntryNo: standing.logbook.all.length,
        lastOutgoingNo: this.#lastOutgoingNo,
        clockMs: nowMs,
      },
      this.#conversation,
      {
        member: greenhouse.members[0]!,
        chat: null,
        channel: 'bench',
        channelOf: () => 'bench',
        messageId: `m${this.#said}`,
        writtenAtMs: nowMs,
        isPress: false,
        isOverheard: false,
        photo: null,
        photoOf: null,
      },
      nowMs,
    );
    hearMessage(handling, text, nothingAround);
    this.#standing = handling.standing;
    this.#conversation = handling.conversation;
    this.#lastOutgoingNo += handling.outgoing.length;
    return handling.outgoing
      .map(({ reply }) => wordings.en.reply(reply, { greenhouse, nowMs }))
      .join('\n');
  }
}
