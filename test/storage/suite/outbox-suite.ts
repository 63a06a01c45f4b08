import { describe, expect, it } from 'vitest';
import type { OutgoingNo } from '../../../src/assistant/outgoing.ts';
import type { Settled } from '../../../src/assistant/ports/store.ts';
import {
  incoming,
  leaseMs,
  look,
  message,
  newPlace,
  type Subject,
  startMs,
  write,
} from './storage-under-test.ts';

const laterMs = startMs + 1000;

export function outboxSuite(subject: Subject): void {
  async function withMessages(chats: readonly string[]) {
    const place = await newPlace(subject);
    const { store, greenhouse, channel } = place;
    const outgoing = chats.map((to, i) => message(i + 1, channel, { to }));
    await write(store, greenhouse, { outgoing });
    return {
      ...place,
      outgoing,
      pendingNos: async (nowMs = laterMs, most = 99) =>
        (await store.pending(channel, nowMs, most)).map((each) => each.outgoing.no),
      settle: (no: number, outcome: Settled) => store.settle(greenhouse, no as OutgoingNo, outcome),
    };
  }
  const sent = (platformId: string | null = null): Settled => ({
    kind: 'sent',
    platformId,
    atMs: laterMs,
  });
  const retry = (notBeforeMs: number, more: object = {}): Settled => ({
    kind: 'retry',
    notBeforeMs,
    because: 'no answer',
    ...more,
  });

  describe('the outbox', () => {
    it('hands out one message of each chat at a time, in order', async () => {
      const { pendingNos, settle, store, channel, outgoing, greenhouse } = await withMessages([
        'ines',
        'ines',
        'olli',
        'ines',
      ]);
      const first = await store.pending(channel, laterMs, 99);
      expect(first).toEqual([
        {
          greenhouse,
          outgoing: outgoing[0],
          attempts: 0,
          unanswered: 0,
          partsSent: 0,
          editsPlatformId: null,
        },
        {
          greenhouse,
          outgoing: outgoing[2],
          attempts: 0,
          unanswered: 0,
          partsSent: 0,
          editsPlatformId: null,
        },
      ]);
      expect(await pendingNos()).toEqual([]);
      await settle(1, sent());
      expect(await pendingNos()).toEqual([2]);
      await settle(2, sent());
      await settle(3, sent());
      expect(await pendingNos()).toEqual([4]);
    });

    it('lets a chat wait behind a message that is to be tried again, and no other chat', async () => {
      const { pendingNos, settle, store, channel } = await withMessages(['ines', 'ines', 'olli']);
      expect(await pendingNos()).toEqual([1, 3]);
      await settle(1, retry(laterMs + 5000));
      await settle(3, sent());
      expect(await pendingNos(laterMs + 4999)).toEqual([]);
      const [again] = await store.pending(channel, laterMs + 5000, 9);
      expect(again).toMatchObject({ outgoing: { no: 1 }, attempts: 1, unanswered: 0 });
    });

    it('goes on behind a message that is given up', async () => {
      const { pendingNos, settle } = await withMessages(['ines', 'ines']);
      expect(await pendingNos()).toEqual([1]);
      await settle(1, { kind: 'given-up', because: 'blocked', atMs: laterMs });
      expect(await pendingNos()).toEqual([2]);
    });

    it('hands out again what was never settled, once its lease is over', async () => {
      const { pendingNos, store, channel } = await withMessages(['ines']);
      expect(await pendingNos()).toEqual([1]);
      expect(await pendingNos(laterMs + leaseMs - 1)).toEqual([]);
      const [again] = await store.pending(channel, laterMs + leaseMs, 9);
      expect(again).toMatchObject({ attempts: 1, unanswered: 1 });
    });

    it('gives out one that is known, as the first of its chat and once only', async () => {
      const { pendingNos, settle, store, greenhouse } = await withMessages([
        'ines',
        'ines',
        'olli',
      ]);
      const lease = (no: number, nowMs = laterMs) =>
        store.lease(greenhouse, no as OutgoingNo, nowMs);
      expect(await lease(2)).toBe(false);
      expect(await lease(3, startMs)).toBe(false);
      expect(await lease(3)).toBe(true);
      expect(await lease(3)).toBe(false);
      expect(await pendingNos()).toEqual([1]);
      expect(await lease(2)).toBe(false);
      await settle(1, sent());
      expect(await lease(2)).toBe(true);
      await settle(2, retry(laterMs));
      expect(await lease(2)).toBe(false);
      expect(await lease(9)).toBe(false);
      expect(await pendingNos(laterMs + leaseMs)).toEqual([2, 3]);
    });

    it('gives out no edit by its number, since what it edits has to be looked up', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const edit = message(2, channel, { edits: 1 as OutgoingNo });
      await write(store, greenhouse, { outgoing: [edit] });
      expect(await store.lease(greenhouse, edit.no, laterMs)).toBe(false);
      expect(await store.pending(channel, laterMs, 9)).toHaveLength(1);
    });

    it('goes on with a long message behind the parts that have arrived', async () => {
      const { pendingNos, store, channel, greenhouse } = await withMessages(['ines']);
      expect(await pendingNos()).toEqual([1]);
      await store.keepPartsSent(greenhouse, 1 as OutgoingNo, 2);
      const [again] = await store.pending(channel, laterMs + leaseMs, 9);
      expect(again).toMatchObject({ partsSent: 2, unanswered: 1 });
    });

    it('takes leases back where their process is known to be gone', async () => {
      const { pendingNos, store, channel } = await withMessages(['ines', 'olli']);
      expect(await pendingNos()).toEqual([1, 2]);
      await store.endLeases(`${channel}-other`);
      expect(await pendingNos()).toEqual([]);
      await store.endLeases(channel);
      const again = await store.pending(channel, laterMs, 9);
      expect(again.map(({ attempts, unanswered }) => [attempts, unanswered])).toEqual([
        [1, 1],
        [1, 1],
      ]);
    });

    it('counts the attempts that the platform may have taken without an answer', async () => {
      const { settle, store, channel } = await withMessages(['ines']);
      await store.pending(channel, laterMs, 9);
      await settle(1, retry(laterMs, { isUnanswered: true }));
      await store.pending(channel, laterMs, 9);
      await settle(1, retry(laterMs));
      expect(await store.pending(channel, laterMs, 9)).toMatchObject([
        { attempts: 2, unanswered: 1 },
      ]);
    });

    it('hands out nothing before its time, of another channel, or above the number asked', async () => {
      const { pendingNos, store, channel } = await withMessages(['a', 'b', 'c', 'd']);
      expect(await pendingNos(startMs)).toEqual([]);
      expect(await store.pending(`${channel}-other`, laterMs, 9)).toEqual([]);
      expect(await pendingNos(laterMs, 3)).toEqual([1, 2, 3]);
      expect(await pendingNos(laterMs, 3)).toEqual([4]);
    });

    it('keeps the first outcome of a message', async () => {
      const { pendingNos, settle, store, greenhouse, channel } = await withMessages(['ines']);
      await pendingNos();
      await settle(1, sent('p1'));
      await settle(1, retry(laterMs));
      await settle(1, sent('p2'));
      expect(await pendingNos(laterMs + 9999)).toEqual([]);
      const known = (id: string) =>
        look(store, greenhouse, (ledger) => ledger.outgoingByPlatformId(channel, 'ines', id));
      expect((await known('p1'))?.no).toBe(1);
      expect(await known('p2')).toBeNull();
    });

    it('gives a message whole, with its buttons and what it edits', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const whole = message(2, channel, {
        inReplyTo: 'm7',
        edits: 1 as OutgoingNo,
        inPassing: true,
        buttons: [[{ label: { kind: 'strike-out' }, action: { kind: 'strike', entries: [] } }]],
      });
      await write(store, greenhouse, { outgoing: [message(1, channel), whole] });
      const read = (no: number) =>
        look(store, greenhouse, (ledger) => ledger.outgoing(no as OutgoingNo));
      expect(await read(2)).toEqual(whole);
      expect(await read(3)).toBeNull();
    });

    it('tells under which id the message goes that is to be edited', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const edit = message(2, channel, { edits: 1 as OutgoingNo });
      await write(store, greenhouse, { outgoing: [message(1, channel), edit] });
      await store.pending(channel, laterMs, 9);
      await store.settle(greenhouse, message(1, channel).no, sent('p1'));
      expect(await store.pending(channel, laterMs, 9)).toMatchObject([{ editsPlatformId: 'p1' }]);
      const renewed: Settled = { ...sent('p9'), renews: 1 } as Settled;
      await store.settle(greenhouse, edit.no, renewed);
      await write(store, greenhouse, {
        outgoing: [message(3, channel, { edits: 1 as OutgoingNo })],
      });
      expect(await store.pending(channel, laterMs, 9)).toMatchObject([{ editsPlatformId: 'p9' }]);
    });

    it('finds the latest message of a chat, of any kind or of one, edits left out', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const round = { kind: 'round', date: '2027-05-04', isLate: false, duties: [] } as never;
      await write(store, greenhouse, {
        outgoing: [
          message(1, channel, { reply: round }),
          message(2, channel),
          message(3, channel, { to: 'olli' }),
          message(4, channel, { edits: 1 as OutgoingNo, reply: round }),
        ],
      });
      const latest = (chat: string, kind?: 'round' | 'receipt') =>
        look(store, greenhouse, async (ledger) => (await ledger.latestOutgoing(chat, kind))?.no);
      expect(await latest('ines')).toBe(2);
      expect(await latest('ines', 'round')).toBe(1);
      expect(await latest('ines', 'receipt')).toBeUndefined();
      expect(await latest('olli')).toBe(3);
    });

    it('gives the latest of a chat both ways, oldest first', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await store.receive(incoming(greenhouse, channel, 'q1'));
      await store.receive({ ...incoming(greenhouse, channel, 'x'), chat: 'olli' });
      await write(store, greenhouse, {
        outgoing: [
          message(1, channel, { atMs: startMs + 5 }),
          message(2, channel, { to: 'olli' }),
          message(3, `${channel}-other`),
          message(4, channel, { atMs: startMs + 7 }),
        ],
      });
      await store.receive({ ...incoming(greenhouse, channel, 'q2'), receivedAtMs: startMs + 6 });
      const history = async (most: number) =>
        (await store.history(greenhouse, channel, 'ines', most)).map((item) =>
          item.kind === 'incoming' ? item.incoming.platformId : item.outgoing.no,
        );
      expect(await history(9)).toEqual(['q1', 1, 'q2', 4]);
      expect(await history(2)).toEqual(['q2', 4]);
    });
  });
}
