import type { Api } from 'grammy';
import { tellGrowers, tellShutOut } from '../../../assistant/household/tell-growers.ts';
import type { PendingOutgoing, Settled } from '../../../assistant/ports/store.ts';
import type { NotDelivered } from '../../../assistant/replies/household-news.ts';
import type { AddressBook } from '../arriving/address-book.ts';
import { invitationCode } from '../arriving/codes.ts';
import { channel } from '../channel-name.ts';
import { type MessageKey, readKey, readPressId } from '../message-key.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import { type Composed, compose, mostInCaption, mostInText } from './compose.ts';
import { type Failure, failureOf, isTopicShut } from './failure.ts';
import { languageOf } from './language-of.ts';
import type { Pace } from './pace.ts';
import { post, rewrite, type Standing } from './post.ts';
import { retryDelayMs, staleAfterMs } from './retry-delay.ts';
import { sendingPhoto, shownPicture } from './shown-picture.ts';
import { type Target, targetOf } from './target.ts';

/** The most that a toast under a button holds (Bot API, answerCallbackQuery). */
const mostInToast = 200;
/** How often a message is tried whose answer was lost: once more, since it may have arrived. */
const mostUnanswered = 2;
const lostRetryMs = 1000;

export interface DeliveryParts {
  readonly options: TelegramOptions;
  readonly api: Api;
  readonly book: AddressBook;
  readonly pace: Pace;
  readonly username: string;
}

/** Brings one message of the outbox to its chat, and tells what came of it. */
export class Delivery {
  readonly #parts: DeliveryParts;

  constructor(parts: DeliveryParts) {
    this.#parts = parts;
  }

  async deliver(pending: PendingOutgoing): Promise<Settled> {
    const { greenhouse, outgoing } = pending;
    const { book, pace, options } = this.#parts;
    const nowMs = options.nowMs();
    let target = targetOf(greenhouse, outgoing, book);
    if (!target) {
      await book.refresh();
      target = targetOf(greenhouse, outgoing, book);
    }
    if (!target) return givenUp(`${outgoing.to} has no account`, nowMs);
    if (!target.canBeReached) return givenUp(`${outgoing.to} has shut the bot out`, nowMs);
    if (pending.unanswered >= mostUnanswered) {
      await this.#tellUndelivered(pending, { kind: 'answer-lost' });
      return givenUp('its answer was lost twice', nowMs);
    }
    const freeAtMs = pace.freeAtMs(target.chatId, nowMs);
    if (freeAtMs > nowMs) return { kind: 'retry', notBeforeMs: freeAtMs, because: 'the pace' };
    try {
      return await this.#send(pending, target);
    } catch (error) {
      const failure = failureOf(error);
      if (!failure) throw error;
      return this.#failed(pending, target, failure);
    }
  }

  async #send(pending: PendingOutgoing, target: Target): Promise<Settled> {
    const { outgoing, editsPlatformId } = pending;
    const { options } = this.#parts;
    if (outgoing.inPassing && (await this.#saidInPassing(pending, target))) {
      return { kind: 'sent', platformId: null, atMs: options.nowMs() };
    }
    if (outgoing.edits === undefined) return this.#write(pending, target);
    const edited = editsPlatformId === null ? null : readKey(editsPlatformId);
    if (!edited) return { kind: 'sent', platformId: null, atMs: options.nowMs() };
    if (edited.chatId === target.chatId) {
      await this.#edit(pending, edited, target);
      return { kind: 'sent', platformId: null, atMs: options.nowMs() };
    }
    // The group goes on as another chat, where the old message cannot be changed.
    const written = await this.#write(pending, target);
    return written.kind === 'sent' ? { ...written, renews: outgoing.edits } : written;
  }

  async #write(pending: PendingOutgoing, target: Target): Promise<Settled> {
    const { greenhouse, outgoing } = pending;
    const { api, options, pace, book } = this.#parts;
    const picture = await shownPicture(pending, options);
    const composed = await this.#compose(pending, target, picture ? mostInCaption : mostInText);
    const answered = outgoing.inReplyTo === null ? null : readKey(outgoing.inReplyTo);
    const inChat = answered?.chatId === target.chatId ? answered : null;
    const { parts, keyboard } = composed;
    let lastId: string | null = null;
    for (const [position, content] of parts.entries()) {
      if (position < pending.partsSent) continue;
      // A picture is not drawn in no time, and parts follow one another: meanwhile somebody may go.
      if (!this.#isStillAt(pending, target)) {
        return givenUp(`${outgoing.to} is in no longer`, options.nowMs());
      }
      const isLast = position === parts.length - 1;
      pace.sent(target.chatId, options.nowMs());
      const standing = {
        chatId: target.chatId,
        threadId: inChat?.threadId ?? null,
        replyTo: position === 0 ? inChat : null,
        isSilent:
          outgoing.reply.kind === 'round' && !target.isGroup && book.roomsOf(greenhouse).length > 0,
      };
      const shown = position === 0 ? picture : null;
      lastId = await whileTopicIsOpen(standing, (where) =>
        sendingPhoto(shown, pending, options, (sent) =>
          post(api, { content, keyboard: isLast ? keyboard : null, picture: sent }, where),
        ),
      );
      if (!isLast) await options.store.keepPartsSent(greenhouse, outgoing.no, position + 1);
    }
    return { kind: 'sent', platformId: lastId, atMs: options.nowMs() };
  }

  #isStillAt({ greenhouse, outgoing }: PendingOutgoing, { chatId }: Target): boolean {
    const now = targetOf(greenhouse, outgoing, this.#parts.book);
    return now?.chatId === chatId && now.canBeReached;
  }

  async #edit(pending: PendingOutgoing, key: MessageKey, target: Target): Promise<void> {
    const { api, pace, options } = this.#parts;
    const { parts, keyboard } = await this.#compose(pending, target, mostInText);
    const [content] = parts;
    if (!content) return;
    pace.sent(target.chatId, options.nowMs());
    await rewrite(api, key, { content, keyboard, picture: null });
  }

  /** By a toast under the button, or a reaction to the words. False: it has to be a message. */
  async #saidInPassing(pending: PendingOutgoing, target: Target): Promise<boolean> {
    const { outgoing } = pending;
    const { api } = this.#parts;
    if (outgoing.inReplyTo === null) return false;
    const callbackId = readPressId(outgoing.inReplyTo);
    const key = readKey(outgoing.inReplyTo);
    try {
      if (callbackId !== null) {
        const { parts } = await this.#compose(pending, target, mostInToast);
        await api.answerCallbackQuery(callbackId, { text: parts[0]?.text ?? '' });
        return true;
      }
      if (key?.chatId !== target.chatId) return false;
      await api.setMessageReaction(key.chatId, key.messageId, [{ type: 'emoji', emoji: '👍' }]);
      return true;
    } catch (error) {
      // A toast too late or a reaction not allowed there is no loss.
      if (failureOf(error)?.kind === 'refused') return true;
      throw error;
    }
  }

  async #compose(
    { greenhouse, outgoing }: PendingOutgoing,
    target: Target,
    most: number,
  ): Promise<Composed> {
    const { options, book, username } = this.#parts;
    const { greenhouse: setUp } = await options.desk.standing(greenhouse);
    return compose(outgoing, {
      id: greenhouse,
      greenhouse: setUp,
      wording: options.wordings[languageOf(outgoing.to, setUp)],
      isOneOfSeveral: !target.isGroup && book.accountsOf(String(target.chatId)).length > 1,
      invitationLink: () => {
        const code = invitationCode(options.token, greenhouse, outgoing.inReplyTo ?? '');
        return `https://t.me/${username}?start=${code}`;
      },
      most,
    });
  }

  async #failed(pending: PendingOutgoing, target: Target, failure: Failure): Promise<Settled> {
    const { outgoing, attempts, unanswered } = pending;
    const { options, pace, book } = this.#parts;
    const nowMs = options.nowMs();
    switch (failure.kind) {
      case 'flooded': {
        const notBeforeMs = nowMs + failure.waitMs;
        pace.hold(target.chatId, notBeforeMs);
        return { kind: 'retry', notBeforeMs, because: 'too many messages at once' };
      }
      case 'moved':
        await options.store.household.moveRoom(
          channel,
          String(target.chatId),
          String(failure.toChatId),
        );
        await book.refresh();
        return { kind: 'retry', notBeforeMs: nowMs, because: 'the group has moved' };
      case 'unwell': {
        if (nowMs - outgoing.atMs > staleAfterMs) return givenUp(failure.because, nowMs);
        const notBeforeMs = nowMs + retryDelayMs(attempts);
        return { kind: 'retry', notBeforeMs, because: failure.because };
      }
      case 'lost':
        if (unanswered + 1 < mostUnanswered) {
          const notBeforeMs = nowMs + lostRetryMs;
          return { kind: 'retry', notBeforeMs, because: failure.because, isUnanswered: true };
        }
        await this.#tellUndelivered(pending, { kind: 'answer-lost' });
        return givenUp(`its answer was lost twice: ${failure.because}`, nowMs);
      case 'unauthorised':
        options.report('error', 'Telegram no longer takes the token: messages wait.');
        return {
          kind: 'retry',
          notBeforeMs: nowMs + retryDelayMs(attempts),
          because: 'the token is not taken',
        };
      case 'refused':
        return this.#refused(pending, failure);
    }
  }

  async #refused(
    pending: PendingOutgoing,
    { code, because }: Extract<Failure, { kind: 'refused' }>,
  ): Promise<Settled> {
    const nowMs = this.#parts.options.nowMs();
    const isEdit = pending.outgoing.edits !== undefined;
    // It looks so already, or somebody deleted it: either way there is nothing left to change.
    if (isEdit && /message is not modified|message to edit not found/u.test(because)) {
      return { kind: 'sent', platformId: null, atMs: nowMs };
    }
    if (code === 403 || because.includes('chat not found')) {
      const isGone = because.includes('deactivated') || because.includes('chat not found');
      await this.#tellUndelivered(pending, { kind: isGone ? 'account-gone' : 'shut-out' });
    } else {
      await this.#tellUndelivered(pending, { kind: 'refused', words: because });
    }
    return givenUp(`${code} ${because}`, nowMs);
  }

  /** Tells the growers, but of no warning that it was not delivered: that would never end. */
  async #tellUndelivered(
    { greenhouse, outgoing }: PendingOutgoing,
    because: NotDelivered['because'],
  ): Promise<void> {
    const { options, book } = this.#parts;
    const { desk, nowMs, report } = options;
    const { greenhouse: setUp } = await desk.standing(greenhouse);
    const isShut = because.kind === 'shut-out' || because.kind === 'account-gone';
    const to = setUp.members.find(({ handle }) => handle === outgoing.to)?.name ?? outgoing.to;
    report('warn', `A message to ${outgoing.to} was not delivered: ${because.kind}.`);
    const isWarning = outgoing.reply.kind === 'alert';
    if (isWarning && !isShut) return;
    const told = {
      alert: { kind: 'not-delivered', to, because } as const,
      onceFor: `${channel} not delivered ${outgoing.no}`,
    };
    if (!isShut) return tellGrowers(desk, greenhouse, channel, { ...told, except: null }, nowMs());
    await tellShutOut(desk, greenhouse, channel, outgoing.to, told, nowMs());
    await book.refresh();
  }
}

/** Posts in a topic, or beside it in the group where that was closed or deleted meanwhile. */
async function whileTopicIsOpen(
  standing: Standing,
  post: (standing: Standing) => Promise<string>,
): Promise<string> {
  try {
    return await post(standing);
  } catch (error) {
    if (standing.threadId === null || !isTopicShut(error)) throw error;
    return post({ ...standing, threadId: null, replyTo: null });
  }
}

function givenUp(because: string, atMs: number): Settled {
  return { kind: 'given-up', because, atMs };
}
