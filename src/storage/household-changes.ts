import { and, eq, isNull, sql } from 'drizzle-orm';
import type { HouseholdChange } from '../assistant/household/household.ts';
import type { ChannelName, GreenhouseId } from '../assistant/ports/store.ts';
import type { Database } from './schema/database.ts';
import { accounts, invitations, rooms } from './schema/household-tables.ts';
import { outbox } from './schema/traffic-tables.ts';

/**
 * Writes what a handling changed about a household.
 *
 * @throws Error where an invitation had been used: the transaction is undone.
 */
export async function writeHousehold(
  transaction: Database,
  greenhouse: GreenhouseId,
  changes: readonly HouseholdChange[],
  atMs: number,
): Promise<void> {
  for (const change of changes) await writeChange(transaction, greenhouse, change, atMs);
}

async function writeChange(
  transaction: Database,
  greenhouse: GreenhouseId,
  change: HouseholdChange,
  atMs: number,
): Promise<void> {
  switch (change.kind) {
    case 'account-bound': {
      const { channel, accountId, handle } = change;
      await transaction
        .delete(accounts)
        .where(
          and(
            ofHousehold(accounts, greenhouse, channel),
            sql`(${accounts.accountId} = ${accountId} or ${accounts.handle} = ${handle})`,
          ),
        );
      await transaction
        .insert(accounts)
        .values({ greenhouse, channel, accountId, handle, isCurrent: false });
      return;
    }
    case 'account-unbound': {
      const { channel, handle } = change;
      await transaction
        .delete(accounts)
        .where(and(ofHousehold(accounts, greenhouse, channel), eq(accounts.handle, handle)));
      await giveUpWaiting(transaction, greenhouse, channel, handle, atMs);
      return;
    }
    case 'account-turned': {
      const { channel, accountId } = change;
      await transaction
        .update(accounts)
        .set({ isCurrent: sql`${accounts.greenhouse} = ${greenhouse}` })
        .where(and(eq(accounts.channel, channel), eq(accounts.accountId, accountId)));
      return;
    }
    case 'reach-changed': {
      const { channel, to, canBeReached } = change;
      await transaction
        .update(accounts)
        .set({ canBeReached })
        .where(and(ofHousehold(accounts, greenhouse, channel), eq(accounts.handle, to)));
      await transaction
        .update(rooms)
        .set({ canBeReached })
        .where(and(ofHousehold(rooms, greenhouse, channel), eq(rooms.name, to)));
      return;
    }
    case 'room-tied': {
      const { channel, roomId, name } = change;
      await transaction
        .insert(rooms)
        .values({ channel, roomId, greenhouse, name })
        .onConflictDoUpdate({
          target: [rooms.channel, rooms.roomId],
          set: { greenhouse, name, canBeReached: true },
        });
      return;
    }
    case 'room-untied': {
      const { channel, name } = change;
      await transaction
        .delete(rooms)
        .where(and(ofHousehold(rooms, greenhouse, channel), eq(rooms.name, name)));
      return;
    }
    case 'invitation-made':
      // The same handling tried again makes the same invitation.
      await transaction.insert(invitations).values(change.invitation).onConflictDoNothing();
      return;
    case 'invitation-used': {
      const used = await transaction
        .update(invitations)
        .set({ usedAtMs: change.atMs })
        .where(and(eq(invitations.codeHash, change.codeHash), isNull(invitations.usedAtMs)))
        .returning({ codeHash: invitations.codeHash });
      if (used.length === 0) throw new Error('an invitation was used twice');
      return;
    }
  }
}

function ofHousehold(
  table: typeof accounts | typeof rooms,
  greenhouse: GreenhouseId,
  channel: ChannelName,
) {
  return and(eq(table.greenhouse, greenhouse), eq(table.channel, channel));
}

/**
 * What waits for somebody who is in no longer is not for them any more, nor for whoever may come in
 * under the same handle. What is said on parting is written after this, and goes out.
 */
async function giveUpWaiting(
  transaction: Database,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  to: string,
  atMs: number,
): Promise<void> {
  await transaction
    .update(outbox)
    .set({ status: 'given-up', settledAtMs: atMs, because: `${to} is in no longer` })
    .where(
      and(
        eq(outbox.greenhouse, greenhouse),
        eq(outbox.channel, channel),
        eq(outbox.to, to),
        eq(outbox.status, 'waiting'),
      ),
    );
}
