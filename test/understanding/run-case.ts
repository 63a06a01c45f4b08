import { Desk } from '../../src/assistant/desk.ts';
import type { Store } from '../../src/assistant/ports/store.ts';
import { Rehearsal, rehearsalChannel } from '../../src/channels/rehearsal/rehearsal.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { greenhouseOf, type MessageCase } from './message-case.ts';
import { type Score, scoreCase } from './score-case.ts';

/** Runs a case through the rehearsal, in a greenhouse of its own inside the store. */
export async function runCase(store: Store, messageCase: MessageCase): Promise<Score> {
  const greenhouse = greenhouseOf(messageCase);
  const rehearsal = new Rehearsal({
    store,
    desk: new Desk({ store, channelOf: () => rehearsalChannel }),
    openGreenhouse: (firstAtMs) => store.createGreenhouse(greenhouse, firstAtMs),
    wordings,
  });
  for (const line of messageCase.before ?? []) await rehearsal.handle(JSON.stringify(line));
  const out = await rehearsal.handle(JSON.stringify(messageCase.line));
  return scoreCase(messageCase, out);
}
