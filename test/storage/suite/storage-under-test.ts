import type { Outgoing, OutgoingNo } from '../../../src/assistant/outgoing.ts';
import type {
  GreenhouseId,
  InboxNo,
  Ledger,
  RawIncoming,
  Store,
  Writes,
} from '../../../src/assistant/ports/store.ts';
import type { Entry, EntryNo } from '../../../src/greenhouse/entry.ts';
import { demoGreenhouse } from './demo-greenhouse.ts';

/** An open store, and a way past it to its tables. */
export interface StorageUnderTest {
  readonly store: Store;
  run(statement: string): Promise<readonly unknown[]>;
}

export type Subject = () => StorageUnderTest;

export const startMs = Date.UTC(2027, 4, 4, 7);
export const leaseMs = 60_000;

/** A greenhouse of its own and a channel of its own, so that tests do not meet. */
export async function newPlace(subject: Subject) {
  const { store } = subject();
  const greenhouse = await store.createGreenhouse(demoGreenhouse, startMs);
  return { store, greenhouse, channel: `channel-${greenhouse}` };
}

export function incoming(
  greenhouse: GreenhouseId,
  channel: string,
  platformId: string | null,
  body: unknown = { text: 'jars 5.8' },
): RawIncoming {
  return {
    greenhouse,
    channel,
    platformId,
    receivedAtMs: startMs + 5,
    writtenAtMs: startMs + 1,
    chat: 'ines',
    body,
  };
}

export function entry(no: number, more: Partial<Entry> = {}): Entry {
  return {
    no: no as EntryNo,
    system: null,
    quantity: 'air-temperature',
    value: 21.5,
    atMs: startMs + no,
    source: { kind: 'member', handle: 'ines', messageId: `m${no}` },
    recordedAtMs: startMs + no,
    struck: null,
    ...more,
  };
}

export function message(no: number, channel: string, more: Partial<Outgoing> = {}): Outgoing {
  return {
    no: no as OutgoingNo,
    atMs: startMs + no,
    channel,
    to: 'ines',
    inReplyTo: null,
    reply: { kind: 'refusal', because: { kind: 'cannot-handle' } },
    buttons: [],
    ...more,
  };
}

export function writes(parts: Partial<Writes>): Writes {
  return {
    clockMs: startMs,
    entries: [],
    strikes: [],
    weather: [],
    greenhouse: null,
    conversations: [],
    outgoing: [],
    morning: null,
    notices: [],
    ...parts,
  };
}

export function write(
  store: Store,
  greenhouse: GreenhouseId,
  parts: Partial<Writes>,
  inboxNo: InboxNo | null = null,
): Promise<unknown> {
  return store.transact(greenhouse, inboxNo, () =>
    Promise.resolve({ writes: writes(parts), result: true }),
  );
}

export function look<T>(
  store: Store,
  greenhouse: GreenhouseId,
  read: (ledger: Ledger) => T | Promise<T>,
): Promise<T> {
  return store.read(greenhouse, async (ledger) => read(ledger));
}
