import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pino } from 'pino';
import { Desk } from '../assistant/desk.ts';
import { createPage } from '../channels/page/page.ts';
import { type Config, readConfig } from '../config/read-config.ts';
import { wordings } from '../wording/wordings.ts';
import { openGreenhouse } from './open-greenhouse.ts';
import { openStore } from './open-store.ts';
import { packageRoot } from './package-root.ts';

const tickMs = 2000;
const badCall = 2;

async function serve(config: Config): Promise<void> {
  const root = packageRoot();
  const log = pino({ level: config.logLevel });
  const store = await openStore(config, root);
  const opened = await openGreenhouse(store, config, root, Date.now());
  if (!opened.ok) {
    for (const fault of opened.faults) console.error(fault);
    await store.close();
    process.exitCode = badCall;
    return;
  }
  const greenhouseId = opened.id;
  const desk = new Desk({ store, channelOf: () => 'page' });
  const page = await createPage({
    store,
    desk,
    greenhouseId,
    wordings,
    nowMs: () => Date.now(),
    report: (error, doing) => {
      log.error({ err: error }, doing);
    },
    isReady: async () => (await store.greenhouses()).length > 0,
    replaceGreenhouse: (greenhouse) => desk.replaceSetUp(greenhouseId, greenhouse, Date.now()),
    assetsFolder: join(root, 'src', 'channels', 'page', 'assets'),
    address: { host: config.host, port: config.port },
    hostNames: config.hostNames,
  });
  const { port } = await page.listen();
  const { greenhouse } = await desk.standing(greenhouseId);
  console.log(`${greenhouse.name} is at http://${config.host}:${port}/`);

  let ticking: Promise<void> = Promise.resolve();
  const tick = async (): Promise<void> => {
    try {
      await desk.sendRoundIfDue(greenhouseId, Date.now());
      await page.deliver();
    } catch (error) {
      log.error({ err: error }, 'what is due could not be sent; it is tried again');
    }
  };
  const timer = setInterval(() => {
    ticking = ticking.then(tick);
  }, tickMs);

  const stop = async (): Promise<void> => {
    clearInterval(timer);
    await ticking;
    await page.close();
    await store.close();
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      stop().catch((error: unknown) => {
        log.error({ err: error }, 'stopping failed');
        process.exitCode = 1;
      });
    });
  }
}

const read = readConfig(process.env, (file) => readFileSync(file, 'utf8'));
if (read.ok) {
  await serve(read.config);
} else {
  for (const fault of read.faults) console.error(fault);
  process.exitCode = badCall;
}
