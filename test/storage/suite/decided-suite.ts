import { describe, expect, it } from 'vitest';
import { newConversation } from '../../../src/assistant/conversation.ts';
import { countersAfter } from '../../../src/assistant/ports/counters-after.ts';
import type { Store } from '../../../src/assistant/ports/store.ts';
import {
  entry,
  incoming,
  leaseMs,
  look,
  message,
  newPlace,
  type Subject,
  startMs,
  write,
  writes,
} from './storage-under-test.ts';

const fresh = { revision: 0, lastEntryNo: 0, lastOutgoingNo: 0, clockMs: startMs };

async function pendingNos(store: Store, channel: string, nowMs: number) {
  return (await store.pending(channel, nowMs, 9)).map(({ outgoing }) => outgoing.no);
}

export function decidedSuite(subject: Subject): void {
  describe('what was decided without a lock', () => {
    it('is received and written whole where nobody has written since', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const raws = ['a', 'b'].map((id) => incoming(greenhouse, channel, id));
      const conversation = { ...newConversation('ines'), cautioned: ['acid'] };
      const decided = writes({
        clockMs: startMs + 9,
        entries: [entry(1), entry(2, { system: 'jars' as never, note: 'half "full"' })],
        strikes: [{ entry: entry(1).no, byHandle: 'ines', atMs: startMs + 3 }],
        conversations: [conversation],
        outgoing: [message(1, channel), message(2, channel, { inReplyTo: 'b', to: 'omar' })],
      });
      const received = await store.receiveDecided(greenhouse, fresh, raws, decided, []);
      const { nos, leased } = received!;
      expect(leased).toEqual([]);
      expect(nos).toHaveLength(2);
      expect(nos[0]).toBeLessThan(nos[1]!);
      expect(await store.unhandled(channel)).toEqual([]);
      const seen = await look(store, greenhouse, async (ledger) => ({
        counters: ledger.counters,
        entries: (await ledger.changesSince(0)).entries,
        conversation: await ledger.conversation('ines'),
        incoming: await ledger.incoming(channel, 'b'),
        outgoing: [
          await ledger.outgoing(message(1, channel).no),
          await ledger.outgoing(message(2, channel).no),
        ],
      }));
      expect(seen).toEqual({
        counters: countersAfter(fresh, decided),
        entries: [
          { ...decided.entries[0], struck: { byHandle: 'ines', atMs: startMs + 3 } },
          decided.entries[1],
        ],
        conversation,
        incoming: { ...raws[1], no: nos[1] },
        outgoing: decided.outgoing,
      });
      const pending = await store.pending(channel, startMs + 99, 9);
      expect(pending.map(({ outgoing }) => outgoing)).toEqual(decided.outgoing);
    });

    it('is passed over where the greenhouse has gone on, and nothing of it received', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await write(store, greenhouse, { entries: [entry(1)] });
      const raws = [incoming(greenhouse, channel, 'a')];
      const decided = writes({ entries: [entry(1)], outgoing: [message(1, channel)] });
      expect(await store.receiveDecided(greenhouse, fresh, raws, decided, [])).toBeNull();
      expect(await store.unhandled(channel)).toEqual([]);
      expect(await look(store, greenhouse, (ledger) => ledger.incoming(channel, 'a'))).toBeNull();
      expect(await store.pending(channel, startMs + 99, 9)).toEqual([]);
    });

    it('is passed over where one of the things was received before', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await store.receive(incoming(greenhouse, channel, 'a\u0000'));
      const raws = ['a\u0000', 'b'].map((id) => incoming(greenhouse, channel, id));
      const decided = writes({ entries: [entry(1)] });
      expect(await store.receiveDecided(greenhouse, fresh, raws, decided, [])).toBeNull();
      expect((await store.unhandled(channel)).map(({ platformId }) => platformId)).toEqual([
        'a\ufffd',
      ]);
      const { counters } = await look(store, greenhouse, (ledger) => ledger);
      expect(counters).toEqual(fresh);
    });

    it('is written by one of several that decided at the same time', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const results = await Promise.all(
        [1, 2, 3, 4, 5].map((n) =>
          store.receiveDecided(
            greenhouse,
            fresh,
            [incoming(greenhouse, channel, `u${n}`)],
            writes({ entries: [entry(1)], outgoing: [message(1, channel)] }),
            [],
          ),
        ),
      );
      expect(results.filter((received) => received !== null)).toHaveLength(1);
      const { counters } = await look(store, greenhouse, (ledger) => ledger);
      expect(counters).toMatchObject({ revision: 1, lastEntryNo: 1, lastOutgoingNo: 1 });
    });

    it('comes back as it went in, with characters that databases stumble over', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const body = { text: 'a\u0000b \ud800 "\\u0000" 🌱', none: null };
      const raws = [incoming(greenhouse, channel, 'x🌱', body)];
      const reply = { kind: 'refusal', because: { kind: 'cannot-handle' }, words: 'n\u0000' };
      const outgoing = [message(1, channel, { reply: reply as never })];
      const written = writes({ outgoing });
      const received = await store.receiveDecided(greenhouse, fresh, raws, written, []);
      expect(received?.nos).toHaveLength(1);
      const seen = await look(store, greenhouse, async (ledger) => [
        (await ledger.incoming(channel, 'x🌱'))?.body,
        (await ledger.outgoing(outgoing[0]!.no))?.reply,
      ]);
      expect(seen).toEqual([body, reply]);
    });

    it('leases the one message that is asked for, and only that', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const outgoing = [message(1, channel), message(2, channel, { to: 'olli' })];
      const raws = [incoming(greenhouse, channel, 'a')];
      const written = writes({ clockMs: startMs + 9, outgoing });
      const one = outgoing[0]!.no;
      const received = await store.receiveDecided(greenhouse, fresh, raws, written, [one]);
      expect(received?.leased).toEqual([one]);
      expect(await pendingNos(store, channel, startMs + 99)).toEqual([2]);
      const overMs = startMs + 9 + leaseMs;
      const [again] = await store.pending(channel, overMs, 1);
      expect(again).toMatchObject({ outgoing: { no: 1 }, attempts: 1, unanswered: 1 });
    });

    it('counts a message leased by a process that died as one in doubt', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const one = message(1, channel);
      const raws = [incoming(greenhouse, channel, 'a')];
      await store.receiveDecided(greenhouse, fresh, raws, writes({ outgoing: [one] }), [one.no]);
      await store.endLeases(channel);
      expect(await store.pending(channel, startMs + 99, 9)).toMatchObject([
        { outgoing: one, attempts: 1, unanswered: 1 },
      ]);
    });

    it('leases several together, those of one chat as well', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await write(store, greenhouse, { outgoing: [message(1, channel, { to: 'uwe' })] });
      const after = { ...fresh, revision: 1, lastOutgoingNo: 1 };
      const outgoing = [
        message(2, channel),
        message(3, channel, { to: 'uwe' }),
        message(4, channel),
        message(5, channel, { to: 'olli' }),
      ];
      const raws = [incoming(greenhouse, channel, 'a')];
      const nos = outgoing.map(({ no }) => no);
      const received = await store.receiveDecided(
        greenhouse,
        after,
        raws,
        writes({ outgoing }),
        nos,
      );
      expect(received?.leased).toEqual([2, 4, 5]);
      expect(await pendingNos(store, channel, startMs + 99)).toEqual([1]);
    });

    it('doubts of what was leased together the first only that is not settled', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const outgoing = ['ines', 'olli', 'tomas'].map((to, n) => message(n + 1, channel, { to }));
      const raws = [incoming(greenhouse, channel, 'a')];
      const nos = outgoing.map(({ no }) => no);
      await store.receiveDecided(greenhouse, fresh, raws, writes({ outgoing }), nos);
      const { handedOn, done } = store.beginToSettle(greenhouse, nos[0]!, {
        kind: 'sent',
        platformId: 'p1',
        atMs: startMs,
      });
      await handedOn;
      await done;
      await store.endLeases(channel);
      expect(await store.pending(channel, startMs + 99, 9)).toMatchObject([
        { outgoing: { no: 2 }, unanswered: 1 },
        { outgoing: { no: 3 }, unanswered: 0 },
      ]);
    });

    it('gives back what was leased and not tried, as if nobody had taken it up', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const outgoing = [message(1, channel), message(2, channel)];
      const raws = [incoming(greenhouse, channel, 'a')];
      const nos = outgoing.map(({ no }) => no);
      await store.receiveDecided(greenhouse, fresh, raws, writes({ outgoing }), nos);
      await store.giveBack(greenhouse, nos);
      expect(await store.lease(greenhouse, nos[1]!, startMs + 99)).toBe(false);
      expect(await store.lease(greenhouse, nos[0]!, startMs + 99)).toBe(true);
      await store.endLeases(channel);
      expect(await store.pending(channel, startMs + 99, 9)).toMatchObject([
        { outgoing: { no: 1 }, attempts: 1, unanswered: 1 },
      ]);
    });

    it('leases nothing that another of its chat waits before, put off or not', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await write(store, greenhouse, { outgoing: [message(1, channel)] });
      await store.pending(channel, startMs + 99, 9);
      await store.settle(greenhouse, message(1, channel).no, {
        kind: 'retry',
        notBeforeMs: startMs + 60_000,
        because: 'too many messages at once',
      });
      const after = { ...fresh, revision: 1, lastOutgoingNo: 1 };
      const two = message(2, channel);
      const raws = [incoming(greenhouse, channel, 'a')];
      const written = writes({ outgoing: [two] });
      const received = await store.receiveDecided(greenhouse, after, raws, written, [two.no]);
      expect(received?.leased).toEqual([]);
      expect(await pendingNos(store, channel, startMs + 99)).toEqual([]);
      expect(await pendingNos(store, channel, startMs + 60_000)).toEqual([1]);
    });

    it('leases nothing that takes the place of an earlier message', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await write(store, greenhouse, { outgoing: [message(1, channel)] });
      await store.pending(channel, startMs + 99, 9);
      await store.settle(greenhouse, message(1, channel).no, {
        kind: 'sent',
        platformId: 'p1',
        atMs: startMs,
      });
      const after = { ...fresh, revision: 1, lastOutgoingNo: 1 };
      const edit = message(2, channel, { edits: message(1, channel).no });
      const raws = [incoming(greenhouse, channel, 'a')];
      const written = writes({ outgoing: [edit] });
      const received = await store.receiveDecided(greenhouse, after, raws, written, [edit.no]);
      expect(received?.leased).toEqual([]);
      expect(await store.pending(channel, startMs + 99, 9)).toMatchObject([
        { editsPlatformId: 'p1' },
      ]);
    });

    it('goes the other way where it writes what is seldom written', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      const raws = [incoming(greenhouse, channel, 'a')];
      const seldom = [
        writes({ notices: ['n'] }),
        writes({ household: [{ kind: 'account-unbound', channel, handle: 'ines' }] }),
      ];
      for (const decided of seldom) {
        expect(await store.receiveDecided(greenhouse, fresh, raws, decided, [])).toBeNull();
      }
      const nameless = [incoming(greenhouse, channel, null)];
      expect(await store.receiveDecided(greenhouse, fresh, nameless, writes({}), [])).toBeNull();
      expect(await look(store, greenhouse, ({ counters }) => counters)).toEqual(fresh);
    });

    it('may be decided on what is read without a lock', async () => {
      const { store, greenhouse, channel } = await newPlace(subject);
      await write(store, greenhouse, {
        entries: [entry(1)],
        outgoing: [message(1, channel)],
        notices: ['n'],
      });
      const ledger = store.look(greenhouse, { ...fresh, revision: 1 });
      expect(ledger.counters.revision).toBe(1);
      expect(await ledger.hasNotice('n')).toBe(true);
      expect((await ledger.latestOutgoing('ines'))?.no).toBe(1);
      expect((await ledger.changesSince(0)).entries).toHaveLength(1);
    });
  });
}
