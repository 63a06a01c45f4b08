import { and, eq, isNull, sql } from 'drizzle-orm';
import type { HouseholdChange } from '../assistant/household/household.ts';
import type { ChannelName, GreenhouseId } from '../assistant/ports/store.ts';
import type { Database } from './schema/database.ts';
import { accounts, invitations, rooms } from './schema/household-tables.ts';

/**
 * Writes what a handling changed about a household.
 *
 * @throws Error where an invitation had been used: the transaction is undone.
 */
export async function writeHousehold(
  transaction: Database,
  greenhouse: GreenhouseId,
  changes: readonly HouseholdChange[],
): Promise<void> {
  for (const change of changes) await writeChange(transaction, greenhouse, change);
}

async function writeChange(
  transaction: Database,
  greenhouse: GreenhouseId,
  change: HouseholdChange,
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
