import type { Logger } from 'pino';
import type { Desk } from '../assistant/desk.ts';
import type { Store } from '../assistant/ports/store.ts';
import { Telegram } from '../channels/telegram/telegram.ts';
import type { TelegramConfig } from '../config/telegram-config.ts';
import { wordings } from '../wording/wordings.ts';
import { drawApart } from './draw-apart.ts';

/** Starts the bot on Telegram, and prints what its owner needs to know. */
export async function startTelegram(
  config: TelegramConfig,
  {
    store,
    desk,
    log,
    onHandled,
  }: {
    readonly store: Store;
    readonly desk: Desk;
    readonly log: Logger;
    readonly onHandled: () => void;
  },
): Promise<Telegram> {
  const telegram = new Telegram({
    ...config,
    store,
    desk,
    wordings,
    drawPicture: drawApart,
    onHandled,
    nowMs: () => Date.now(),
    report: (level, sentence) => {
      log[level](sentence);
    },
  });
  await telegram.start(({ username, readsAllInGroups, claims }) => {
    console.log(`On Telegram as @${username}: https://t.me/${username}`);
    console.log(
      readsAllInGroups
        ? 'In groups it reads every message, since privacy mode is off.'
        : 'In groups it sees only what is meant for it, since privacy mode is on: mentions, replies, buttons.',
    );
    for (const { greenhouse, code } of claims) {
      const link = `https://t.me/${username}?start=${code.replaceAll('-', '')}`;
      console.log(`To claim ${greenhouse} as its grower, send @${username} the code ${code}`);
      console.log(`or open ${link} (it works once).`);
    }
  });
  return telegram;
}
