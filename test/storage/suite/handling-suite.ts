import { describe, expect, it } from 'vitest';
import { newConversation } from '../../../src/assistant/conversation.ts';
import type { InboxNo, Ledger } from '../../../src/assistant/ports/store.ts';
import type { LocalDate } from '../../../src/greenhouse/local-time.ts';
import {
  entry,
  incoming,
  look,
  message,
  newPlace,
  type Subject,
  startMs,
  write,
  writes,
} from './storage-under-test.ts';

export function handlingSuite(subject: Subject): void {
  describe('a handling', () => {
    it('writes nothing of what it began where it fails', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const { no } = await store.receive(incoming(greenhouse, channel, 'u1'));
      const failed = store.transact(greenhouse, no, () =>
        Promise.reject(new Error('a fault of ours')),
      );
      await expect(failed).rejects.toThrow('a fault of ours');
      expect((await store.unhandled(channel)).map((stored) => stored.no)).toEqual([no]);
      expect(await look(store, greenhouse, ({ counters }) => counters)).toEqual({
        revision: 0,
        lastEntryNo: 0,
        lastOutgoingNo: 0,
        clockMs: startMs,
      });
    });

    it('takes everything back where its last write is refused', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const morning = {
        date: '2027-05-04' as LocalDate,
        sentAtMs: startMs,
        duties: [],
        outgoing: [],
      };
      await write(store, greenhouse, { morning });
      const { no } = await store.receive(incoming(greenhouse, channel, 'u1'));
      const parts = {
        entries: [entry(1)],
        outgoing: [message(1, channel)],
        notices: ['n'],
        morning,
      };
      await expect(write(store, greenhouse, parts, no)).rejects.toThrow();
      expect(await store.unhandled(channel)).toHaveLength(1);
      expect(await store.pending(channel, startMs + 99, 9)).toEqual([]);
      const seen = await look(store, greenhouse, async (ledger) => ({
        entries: (await ledger.changesSince(-1)).entries,
        notice: await ledger.hasNotice('n'),
        revision: ledger.counters.revision,
      }));
      expect(seen).toEqual({ entries: [], notice: false, revision: 1 });
    });

    it('is done once for one incoming thing', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const { no } = await store.receive(incoming(greenhouse, channel, 'u1'));
      let calls = 0;
      const handle = () =>
        store.transact(greenhouse, no, ({ counters }) => {
          calls += 1;
          const entries = [entry(counters.lastEntryNo + 1)];
          return Promise.resolve({ writes: writes({ entries }), result: 'handled' });
        });
      const results = await Promise.all([handle(), handle(), handle(), handle()]);
      expect(results.toSorted()).toEqual(['handled', null, null, null]);
      expect(calls).toBe(1);
      expect(await handle()).toBeNull();
    });

    it('has numbers of its own among many at once', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const seen = await Promise.all(
        Array.from({ length: 8 }, () =>
          store.transact(greenhouse, null, ({ counters }: Ledger) =>
            Promise.resolve({
              writes: writes({
                clockMs: startMs + counters.lastEntryNo,
                entries: [entry(counters.lastEntryNo + 1), entry(counters.lastEntryNo + 2)],
                outgoing: [message(counters.lastOutgoingNo + 1, channel)],
              }),
              result: counters,
            }),
          ),
        ),
      );
      expect(seen.map((counters) => counters?.lastEntryNo).toSorted((a, b) => a! - b!)).toEqual([
        0, 2, 4, 6, 8, 10, 12, 14,
      ]);
      expect(await look(store, greenhouse, ({ counters }) => counters)).toEqual({
        revision: 8,
        lastEntryNo: 16,
        lastOutgoingNo: 8,
        clockMs: startMs + 14,
      });
    });

    it('never turns the clock back', async () => {
      const { store, greenhouse } = await newPlace(subject);
      await write(store, greenhouse, { clockMs: startMs + 500 });
      await write(store, greenhouse, { clockMs: startMs + 100 });
      expect(await look(store, greenhouse, ({ counters }) => counters.clockMs)).toBe(startMs + 500);
    });

    it('refuses an incoming thing of another greenhouse', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const other = await newPlace(subject);
      const { no } = await store.receive(incoming(other.greenhouse, channel, 'u1'));
      await expect(write(store, greenhouse, {}, no)).rejects.toThrow('no inbox row');
      await expect(write(store, greenhouse, {}, 99_999_999 as InboxNo)).rejects.toThrow(
        'no inbox row',
      );
    });

    it('replaces a conversation whole', async () => {
      const { store, greenhouse } = await newPlace(subject);
      const blank = newConversation('ines');
      const talked = { ...blank, receipts: [{ messageId: 'm1', entries: [entry(1).no] }] };
      const read = (handle: string) =>
        look(store, greenhouse, (ledger) => ledger.conversation(handle));
      expect(await read('ines')).toBeNull();
      await write(store, greenhouse, { conversations: [talked, newConversation('olli')] });
      expect(await read('ines')).toEqual(talked);
      await write(store, greenhouse, { conversations: [blank] });
      expect(await read('ines')).toEqual(blank);
      expect(await read('olli')).toEqual(newConversation('olli'));
    });

    it('remembers what is said once', async () => {
      const { store, greenhouse } = await newPlace(subject);
      const has = (key: string) => look(store, greenhouse, (ledger) => ledger.hasNotice(key));
      await write(store, greenhouse, { notices: ['frost 2027-05-04'] });
      await write(store, greenhouse, { notices: ['frost 2027-05-04', 'frost 2027-05-05'] });
      expect(await has('frost 2027-05-04')).toBe(true);
      expect(await has('frost 2027-05-06')).toBe(false);
    });
  });
}
