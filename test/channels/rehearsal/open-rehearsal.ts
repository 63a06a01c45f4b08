import { readFileSync } from 'node:fs';
import { Desk, type DeskOptions } from '../../../src/assistant/desk.ts';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { Rehearsal, rehearsalChannel } from '../../../src/channels/rehearsal/rehearsal.ts';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import type { Greenhouse } from '../../../src/greenhouse/greenhouse.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { type OutLine, quarryLane } from './rehearse-child.ts';

/** The demo greenhouse, with some of its set-up changed. */
export function quarryLaneWith(changes: Partial<Greenhouse> = {}): Greenhouse {
  const read = parseGreenhouseText(readFileSync(quarryLane, 'utf8'));
  if (!read.ok) throw new Error(`the demo greenhouse is faulty: ${JSON.stringify(read.faults)}`);
  return { ...read.greenhouse, ...changes };
}

export type Talk = (...lines: readonly object[]) => Promise<readonly OutLine[]>;

/** A rehearsal of a greenhouse of its own in a shared store; gives what each call's lines caused. */
export function openRehearsal(
  store: Store,
  greenhouse: Greenhouse = quarryLaneWith(),
  options: Partial<DeskOptions> = {},
): Talk {
  const rehearsal = new Rehearsal({
    store,
    desk: new Desk({ store, channelOf: () => rehearsalChannel, ...options }),
    openGreenhouse: (firstAtMs) => store.createGreenhouse(greenhouse, firstAtMs),
    wordings,
  });
  return async (...lines) => {
    const out: OutLine[] = [];
    for (const line of lines) {
      out.push(...((await rehearsal.handle(JSON.stringify(line))) as OutLine[]));
    }
    return out.filter(({ done }) => done === undefined);
  };
}
