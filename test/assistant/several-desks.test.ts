import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Arrival } from '../../src/assistant/arrival.ts';
import { Desk } from '../../src/assistant/desk.ts';
import type { GreenhouseId, Store } from '../../src/assistant/ports/store.ts';
import { openTestStore } from '../storage/open-test-store.ts';
import { demoGreenhouse } from '../storage/suite/demo-greenhouse.ts';

const startMs = Date.UTC(2027, 4, 4, 7);
const { members, systems } = demoGreenhouse;
const [speaker] = members;
const name = systems[0]!.name;

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

function newDesk(): Desk {
  return new Desk({ store, channelOf: () => 'desk' });
}

function arrival(greenhouse: GreenhouseId, id: string, text: string): Arrival {
  const from = speaker!.handle;
  return {
    raw: {
      greenhouse,
      channel: 'desk',
      platformId: id,
      receivedAtMs: startMs,
      writtenAtMs: startMs,
      chat: from,
      body: text,
    },
    incoming: { kind: 'message', from, chat: null, text, writtenAtMs: startMs, replyTo: null },
  };
}

it('log one after the other and once each what comes in by two programs in turns', async () => {
  const id = await store.createGreenhouse(demoGreenhouse, startMs - 86_400_000);
  const desks = [newDesk(), newDesk()];
  const told: [number, string][] = [
    [0, '5.9'],
    [0, '5.8'],
    [1, '5.7'],
    [0, '5.6'],
    [0, '5.5'],
    [1, '5.4'],
    [1, '5.6'],
  ];
  for (const [position, [desk, ph]] of told.entries()) {
    const nowMs = startMs + position * 60_000;
    const { items, said } = await desks[desk]!.takeIn(
      id,
      [arrival(id, `u${position}`, `${name} ph ${ph}`)],
      nowMs,
    );
    expect(items).toHaveLength(1);
    expect([...said.values()].flat().map(({ reply }) => reply.kind)).toEqual(['receipt']);
  }
  const fresh = await newDesk().standing(id);
  expect(fresh.logbook.all.map(({ no, value }) => [no, value])).toEqual(
    told.map(([, ph], position) => [position + 1, Number(ph)]),
  );
});

it('hear a message once that is delivered to both', async () => {
  const id = await store.createGreenhouse(demoGreenhouse, startMs - 86_400_000);
  const desks = [newDesk(), newDesk()];
  const deliver = (desk: number, ...ids: string[]) =>
    desks[desk]!.takeIn(
      id,
      ids.map((each) => arrival(id, each, `${name} ph 5.8`)),
      startMs,
    );
  await deliver(0, 'a');
  await deliver(0, 'b');
  expect((await deliver(0, 'b')).items).toEqual([]);
  expect((await deliver(1, 'b', 'c')).items).toHaveLength(1);
  const both = await Promise.all([deliver(0, 'd'), deliver(1, 'd')]);
  expect(both.flatMap(({ items }) => items)).toHaveLength(1);
  const { logbook } = await newDesk().standing(id);
  expect(logbook.all.map(({ source }) => source.messageId)).toEqual(['a', 'b', 'c', 'd']);
});
