import { Desk } from '../../src/assistant/desk.ts';
import type { Store } from '../../src/assistant/ports/store.ts';
import { Rehearsal, rehearsalChannel } from '../../src/channels/rehearsal/rehearsal.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { greenhouseOf, type MessageCase } from './message-case.ts';
import { pressedButton } from './pressed-button.ts';
import { type Score, scoreCase } from './score-case.ts';

/** Runs a case through the rehearsal, in a greenhouse of its own inside the store. */
export async function runCase(store: Store, messageCase: MessageCase): Promise<Score> {
  return scoreCase(messageCase, (await playCase(store, messageCase)).at(-1)!);
}

/** What the bot said to each line of a case, the last of them to the line under test. */
export async function playCase(
  store: Store,
  messageCase: MessageCase,
): Promise<readonly (readonly object[])[]> {
  const greenhouse = greenhouseOf(messageCase);
  const rehearsal = new Rehearsal({
    store,
    desk: new Desk({ store, channelOf: () => rehearsalChannel }),
    openGreenhouse: (firstAtMs) => store.createGreenhouse(greenhouse, firstAtMs),
    wordings,
  });
  const said: (readonly object[])[] = [];
  for (const line of [...(messageCase.before ?? []), messageCase.line]) {
    said.push(await rehearsal.handle(JSON.stringify(pressedButton(line, said.flat()))));
  }
  return said;
}
