import { join } from 'node:path';
import { pino } from 'pino';
import { createPage } from '../channels/page/page.ts';
import { type Telegram, channel as telegramChannel } from '../channels/telegram/telegram.ts';
import { wordings } from '../wording/wordings.ts';
import { drawApart } from './draw-apart.ts';
import { type Ground, start } from './start.ts';
import { startTelegram } from './start-telegram.ts';
import { startTicking } from './ticker.ts';

const pageChannel = 'page';

/** Set once it runs: members with an account there are reached there. */
let telegram: Telegram | null = null;

async function serve({ config, root, store, desk, greenhouseId }: Ground): Promise<void> {
  const log = pino({ level: config.logLevel }, pino.destination(2));
  const report = (error: unknown, doing: string): void => {
    log.error({ err: error }, doing);
  };
  const page = await createPage({
    store,
    desk,
    greenhouseId,
    wordings,
    drawPicture: drawApart,
    nowMs: () => Date.now(),
    report,
    isReady: async () => (await store.greenhouses()).length > 0,
    replaceGreenhouse: (greenhouse) => desk.replaceSetUp(greenhouseId, greenhouse, Date.now()),
    assetsFolder: join(root, 'src', 'channels', 'page', 'assets'),
    address: { host: config.host, port: config.port },
    hostNames: config.hostNames,
  });
  const { port } = await page.listen();
  const { greenhouse } = await desk.standing(greenhouseId);
  console.log(`${greenhouse.name} is at http://${config.host}:${port}/`);

  if (config.telegram) {
    telegram = await startTelegram(config.telegram, {
      store,
      desk,
      log,
      onHandled: () => {
        page.refresh();
      },
    });
  }

  const ticking = startTicking(async () => {
    try {
      for (const { id } of await store.greenhouses()) await desk.sendDue(id, Date.now());
      telegram?.wake();
      await page.deliver();
    } catch (error) {
      report(error, 'what is due could not be sent; it is tried again');
    }
  });
  const stop = async (): Promise<void> => {
    await ticking.stop();
    await telegram?.stop();
    await page.close();
    await store.close();
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      stop().catch((error: unknown) => {
        report(error, 'stopping failed');
        process.exitCode = 1;
      });
    });
  }
}

await start(
  {
    channelOf: (handle, greenhouse) =>
      telegram?.reaches(greenhouse, handle) ? telegramChannel : pageChannel,
    reaches: (handle, greenhouse) => telegram?.reaches(greenhouse, handle) ?? true,
    roomsOf: (greenhouse) => telegram?.roomsOf(greenhouse) ?? [],
    canEdit: (name) => name === pageChannel || name === telegramChannel,
  },
  serve,
);
