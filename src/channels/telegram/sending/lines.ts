import type { Api } from 'grammy';
import type { InlineKeyboardMarkup } from 'grammy/types';
import { describeError } from '../describe-error.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import { failureOf } from './failure.ts';
import type { Pace } from './pace.ts';

/**
 * Words to people and groups that are in no greenhouse, and answers to buttons. They are in no outbox:
 * whoever misses one asks again.
 */
export class Lines {
  readonly #options: TelegramOptions;
  readonly #api: Api;
  readonly #pace: Pace;

  constructor(options: TelegramOptions, api: Api, pace: Pace) {
    this.#options = options;
    this.#api = api;
    this.#pace = pace;
  }

  /** True: the platform has it, or will never take it. */
  async say(chatId: number, text: string, keyboard?: InlineKeyboardMarkup): Promise<boolean> {
    const { nowMs } = this.#options;
    const now = nowMs();
    if (this.#pace.freeAtMs(chatId, now) > now) return false;
    this.#pace.sent(chatId, now);
    return this.#try(() =>
      this.#api.sendMessage(chatId, text, keyboard ? { reply_markup: keyboard } : {}),
    );
  }

  /** Stops the button's waiting sign, with a few words where there are any. */
  async answerPress(callbackId: string, text?: string): Promise<void> {
    await this.#try(() =>
      this.#api.answerCallbackQuery(callbackId, text === undefined ? {} : { text }),
    );
  }

  async #try(act: () => Promise<unknown>): Promise<boolean> {
    try {
      await act();
      return true;
    } catch (error) {
      const failure = failureOf(error);
      if (failure?.kind === 'refused') return true;
      this.#options.report('warn', `A line was not said: ${describeError(error)}`);
      return false;
    }
  }
}
