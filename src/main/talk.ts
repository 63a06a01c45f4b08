import { Terminal } from '../channels/terminal/terminal.ts';
import { wordings } from '../wording/wordings.ts';
import { start } from './start.ts';
import { startTicking } from './ticker.ts';

const channel = 'terminal';

await start({ channelOf: () => channel }, async ({ store, desk, greenhouseId }) => {
  const report = (error: unknown, doing: string): void => {
    console.error(doing, error);
  };
  const terminal = new Terminal({
    store,
    desk,
    greenhouseId,
    wordings,
    nowMs: () => Date.now(),
    report,
    input: process.stdin,
    output: process.stdout,
    isInteractive: process.stdin.isTTY && process.stdout.isTTY,
  });
  const ticking = startTicking(async () => {
    try {
      await desk.sendDue(greenhouseId, Date.now());
      await terminal.deliver();
    } catch (error) {
      report(error, 'what is due could not be sent; it is tried again');
    }
  });
  await terminal.run();
  await ticking.stop();
  await store.close();
});
