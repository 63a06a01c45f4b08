import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { incoming, look, newPlace, type Subject, write, writes } from './storage-under-test.ts';

export function inboxSuite(subject: Subject): void {
  describe('the inbox', () => {
    it('finds a second delivery where the first one is', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const first = await store.receive(incoming(greenhouse, channel, 'u1'));
      expect(first).toMatchObject({ platformId: 'u1', isNew: true, isHandled: false });
      const again = await store.receive(incoming(greenhouse, channel, 'u1', { text: 'other' }));
      expect(again).toEqual({ ...first, isNew: false });
      await write(store, greenhouse, {}, first.no);
      expect(await store.receive(incoming(greenhouse, channel, 'u1'))).toEqual({
        ...first,
        isNew: false,
        isHandled: true,
      });
    });

    it('keeps one id of two channels, or of two greenhouses, apart', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const other = await newPlace(subject);
      await store.receive(incoming(greenhouse, channel, 'u1'));
      for (const raw of [
        incoming(greenhouse, `${channel}b`, 'u1'),
        incoming(other.greenhouse, channel, 'u1'),
      ]) {
        expect((await store.receive(raw)).isNew).toBe(true);
      }
    });

    it('makes an id where the platform has none, and finds the message by it', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const one = await store.receive(incoming(greenhouse, channel, null, { text: 'one' }));
      const two = await store.receive(incoming(greenhouse, channel, null, { text: 'two' }));
      expect([one.isNew, two.isNew]).toEqual([true, true]);
      expect(one.platformId).not.toBe(two.platformId);
      const found = await look(store, greenhouse, (ledger) =>
        ledger.incoming(channel, two.platformId),
      );
      expect(found).toEqual({
        ...incoming(greenhouse, channel, two.platformId, { text: 'two' }),
        no: two.no,
      });
      const elsewhere = await look(store, greenhouse, (ledger) =>
        ledger.incoming('elsewhere', two.platformId),
      );
      expect(elsewhere).toBeNull();
    });

    it('gives every JSON value back as it came, texts that look like JSON included', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      let count = 0;
      const body = fc.oneof(
        fc.jsonValue(),
        fc.constantFrom('123', 'null', '{"a":1}', 'a\u0000b', '\ud800', { '\u0000': '\udfff' }),
      );
      await fc.assert(
        fc.asyncProperty(body, async (value) => {
          count += 1;
          const id = `u${count}`;
          await store.receive(incoming(greenhouse, channel, id, value));
          const stored = await look(store, greenhouse, (ledger) => ledger.incoming(channel, id));
          // JSON itself knows no negative zero.
          expect(stored?.body).toEqual(JSON.parse(JSON.stringify(value)));
        }),
        { numRuns: 60 },
      );
    });

    it('takes ids that PostgreSQL could not store as they are', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const raw = incoming(greenhouse, channel, 'u\u0000\ud800');
      const first = await store.receive(raw);
      expect(first.isNew).toBe(true);
      expect(await store.receive(raw)).toMatchObject({ no: first.no, isNew: false });
    });

    it('lists what was stored and never handled, oldest first', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const received = [];
      for (const id of ['a', null, 'c']) {
        received.push(await store.receive(incoming(greenhouse, channel, id, { id })));
      }
      await write(store, greenhouse, {}, received[0]!.no);
      expect((await store.unhandled(channel)).map(({ body }) => body)).toEqual([
        { id: null },
        { id: 'c' },
      ]);
      expect(await store.unhandled(`${channel}-none`)).toEqual([]);
    });

    it('takes many at once, in their order, and knows a second delivery among them', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const before = await store.receive(incoming(greenhouse, channel, 'a'));
      const all = await store.receiveAll(
        ['a', 'b', null, 'b'].map((id) => incoming(greenhouse, channel, id)),
      );
      expect(all.map(({ isNew }) => isNew)).toEqual([false, true, true, false]);
      expect(all[0]?.no).toBe(before.no);
      expect(all[3]?.no).toBe(all[1]?.no);
      expect(await store.receiveAll([])).toEqual([]);
    });

    it('receives and handles in one, all of it or nothing, and each thing once', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await store.receive(incoming(greenhouse, channel, 'a'));
      const raws = ['a', 'b', 'u\u0000'].map((id) => incoming(greenhouse, channel, id));
      const failing = store.receiveAndTransact(greenhouse, raws, () =>
        Promise.reject(new Error('cannot decide')),
      );
      await expect(failing).rejects.toThrow();
      expect(await store.unhandled(channel)).toHaveLength(1);
      const taken = await store.receiveAndTransact(greenhouse, raws, (_, received) =>
        Promise.resolve({ writes: writes({}), result: received.map(({ isNew }) => isNew) }),
      );
      expect(taken).toEqual([false, true, true]);
      expect((await store.unhandled(channel)).map(({ platformId }) => platformId)).toEqual(['a']);
      const again = await store.receiveAndTransact(greenhouse, raws, () =>
        Promise.reject(new Error('handled twice')),
      );
      expect(again).toBeNull();
    });

    it('hands many to one handling, those handled before left out', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const all = await store.receiveAll(
        ['a', 'b', 'c'].map((id) => incoming(greenhouse, channel, id)),
      );
      const nos = all.map(({ no }) => no);
      await write(store, greenhouse, {}, nos[1]);
      const handled = await store.transactAll(greenhouse, nos, (_, open) =>
        Promise.resolve({ writes: writes({}), result: [...open] }),
      );
      expect(handled).toEqual([nos[0], nos[2]]);
      expect(await store.unhandled(channel)).toEqual([]);
      const again = await store.transactAll(greenhouse, nos, () =>
        Promise.reject(new Error('handled twice')),
      );
      expect(again).toBeNull();
    });
  });
}
