import { describe, expect, it } from 'vitest';
import type {
  Directory,
  HouseholdChange,
  Invitation,
} from '../../../src/assistant/household/household.ts';
import { look, message, newPlace, type Subject, startMs, write } from './storage-under-test.ts';

export function householdSuite(subject: Subject): void {
  type Place = Awaited<ReturnType<typeof newPlace>>;
  const change = ({ store, greenhouse }: Place, household: readonly HouseholdChange[]) =>
    write(store, greenhouse, { household });
  const directory = ({ store, greenhouse, channel }: Place): Promise<Directory> =>
    look(store, greenhouse, (ledger) => ledger.directory(channel));

  describe('the household', () => {
    it('has one account a member and one member an account, in each greenhouse', async () => {
      const place = await newPlace(subject);
      const { channel } = place;
      const other = { ...(await newPlace(subject)), channel };
      const bound = (handle: string, accountId: string): HouseholdChange => ({
        kind: 'account-bound',
        channel,
        accountId,
        handle,
      });
      const pairs = async () =>
        (await directory(place)).accounts
          .map(({ handle, accountId }) => `${handle} ${accountId}`)
          .toSorted();
      await change(place, [bound('ines', '1'), bound('olli', '2')]);
      await change(other, [bound('ines', '1')]);
      await change(place, [bound('ines', '3')]);
      expect(await pairs()).toEqual(['ines 3', 'olli 2']);
      await change(place, [bound('ines', '2')]);
      expect(await pairs()).toEqual(['ines 2']);
      await change(place, [{ kind: 'account-unbound', channel, handle: 'ines' }]);
      expect(await pairs()).toEqual([]);
      expect((await directory(other)).accounts).toHaveLength(1);
    });

    it('has one current greenhouse an account', async () => {
      const one = await newPlace(subject);
      const { channel } = one;
      const two = { ...(await newPlace(subject)), channel };
      const turned: HouseholdChange = { kind: 'account-turned', channel, accountId: '1' };
      const bound: HouseholdChange = {
        kind: 'account-bound',
        channel,
        accountId: '1',
        handle: 'ines',
      };
      await change(one, [bound, turned]);
      await change(two, [bound, turned]);
      const { accounts } = await one.store.household.directory(channel);
      expect(accounts.map(({ greenhouse, isCurrent }) => [greenhouse, isCurrent])).toEqual([
        [one.greenhouse, false],
        [two.greenhouse, true],
      ]);
    });

    it('gives up what waits for who is taken out, but not what is said on parting', async () => {
      const place = await newPlace(subject);
      const { channel, store, greenhouse } = place;
      const bound = { kind: 'account-bound', channel, accountId: '8', handle: 'omar' } as const;
      await change(place, [bound]);
      const outgoing = [
        message(1, channel, { to: 'omar' }),
        message(2, channel),
        message(3, channel, { to: 'omar' }),
      ];
      await write(store, greenhouse, { outgoing });
      const [inHand] = await store.pending(channel, startMs + 99, 1);
      expect(inHand?.outgoing.to).toBe('omar');
      await write(store, greenhouse, {
        household: [{ kind: 'account-unbound', channel, handle: 'omar' }],
        outgoing: [message(4, channel, { to: 'omar' }), message(5, channel)],
      });
      // Somebody else comes in under the handle before anything is sent.
      await change(place, [{ ...bound, accountId: '9' }]);
      const sent: number[] = [];
      for (;;) {
        const [next] = await store.pending(channel, startMs + 99, 1);
        if (!next) break;
        sent.push(next.outgoing.no);
        const { no } = next.outgoing;
        await store.settle(greenhouse, no, { kind: 'sent', platformId: `p${no}`, atMs: startMs });
      }
      expect(sent.toSorted()).toEqual([2, 4, 5]);
    });

    it('ties a group to one greenhouse, and follows it where it moves', async () => {
      const place = await newPlace(subject);
      const { channel, store, greenhouse } = place;
      const room = { greenhouse, channel, roomId: '-2', name: 'Quarry', canBeReached: true };
      await change(place, [{ kind: 'room-tied', channel, roomId: '-1', name: 'Quarry' }]);
      await store.household.moveRoom(channel, '-1', '-2');
      await store.household.moveRoom(channel, '-1', '-2');
      expect((await directory(place)).rooms).toEqual([room]);
      await change(place, [{ kind: 'reach-changed', channel, to: 'Quarry', canBeReached: false }]);
      expect((await directory(place)).rooms).toEqual([{ ...room, canBeReached: false }]);
      await change(place, [{ kind: 'room-untied', channel, name: 'Quarry' }]);
      expect((await directory(place)).rooms).toEqual([]);
    });

    it('lets an invitation be used once, and a claim be replaced by the next', async () => {
      const place = await newPlace(subject);
      const { store, greenhouse } = place;
      const invitation = (codeHash: string, more: Partial<Invitation> = {}): Invitation => ({
        greenhouse,
        codeHash: `${codeHash} ${greenhouse}`,
        role: 'helper',
        handle: null,
        madeBy: 'ines',
        expiresAtMs: startMs + 1,
        usedAtMs: null,
        ...more,
      });
      const one = invitation('one');
      await change(place, [{ kind: 'invitation-made', invitation: one }]);
      expect(await store.household.invitation(one.codeHash)).toEqual(one);
      const used: HouseholdChange = {
        kind: 'invitation-used',
        codeHash: one.codeHash,
        atMs: startMs,
      };
      await change(place, [used]);
      expect((await store.household.invitation(one.codeHash))?.usedAtMs).toBe(startMs);
      await expect(change(place, [used])).rejects.toThrow('used twice');
      const claims = [invitation('a', { madeBy: null }), invitation('b', { madeBy: null })];
      for (const claim of claims) await store.household.keepClaim(claim);
      expect(await store.household.invitation(claims[0]!.codeHash)).toBeNull();
      expect(await store.household.invitation(claims[1]!.codeHash)).toEqual(claims[1]);
    });

    it('remembers strangers, and when a channel was last heard', async () => {
      const { store, channel } = await newPlace(subject);
      const { household } = store;
      expect(await household.strangerToldAtMs(channel, '7')).toBeNull();
      await household.tellStranger(channel, '7', startMs);
      await household.tellStranger(channel, '7', startMs + 1);
      expect(await household.strangerToldAtMs(channel, '7')).toBe(startMs + 1);
      expect(await household.heardAtMs(channel)).toBeNull();
      await household.hear(channel, startMs);
      await household.hear(channel, startMs + 2);
      expect(await household.heardAtMs(channel)).toBe(startMs + 2);
    });
  });
}
