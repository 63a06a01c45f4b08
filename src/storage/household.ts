import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Directory, HouseholdChange, Invitation } from '../assistant/household/household.ts';
import type { HouseholdStore } from '../assistant/ports/household-store.ts';
import type { ChannelName, GreenhouseId } from '../assistant/ports/store.ts';
import type { Database } from './schema/database.ts';
import {
  accounts,
  channelPulses,
  invitations,
  rooms,
  strangers,
} from './schema/household-tables.ts';

export function householdStore(database: Database): HouseholdStore {
  return {
    directory: (channel) => selectDirectory(database, channel),
    invitation: async (codeHash) => {
      const [row] = await database
        .select()
        .from(invitations)
        .where(eq(invitations.codeHash, codeHash));
      return row ? { ...row, greenhouse: row.greenhouse as GreenhouseId } : null;
    },
    keepClaim: (claim) => keepClaim(database, claim),
    moveRoom: async (channel, fromId, toId) => {
      await database.transaction(async (transaction) => {
        const target = and(eq(rooms.channel, channel), eq(rooms.roomId, toId));
        const [taken] = await transaction.select().from(rooms).where(target);
        // Both sides of the move are told of it; the second time there is nothing left to do.
        if (taken) return;
        await transaction
          .update(rooms)
          .set({ roomId: toId, canBeReached: true })
          .where(and(eq(rooms.channel, channel), eq(rooms.roomId, fromId)));
      });
    },
    strangerToldAtMs: async (channel, accountId) => {
      const [row] = await database
        .select()
        .from(strangers)
        .where(and(eq(strangers.channel, channel), eq(strangers.accountId, accountId)));
      return row?.toldAtMs ?? null;
    },
    tellStranger: async (channel, accountId, toldAtMs) => {
      await database
        .insert(strangers)
        .values({ channel, accountId, toldAtMs })
        .onConflictDoUpdate({
          target: [strangers.channel, strangers.accountId],
          set: { toldAtMs },
        });
    },
    heardAtMs: async (channel) => {
      const [row] = await database
        .select()
        .from(channelPulses)
        .where(eq(channelPulses.channel, channel));
      return row?.heardAtMs ?? null;
    },
    hear: async (channel, heardAtMs) => {
      await database
        .insert(channelPulses)
        .values({ channel, heardAtMs })
        .onConflictDoUpdate({ target: channelPulses.channel, set: { heardAtMs } });
    },
  };
}

/** All of a channel, or only of one greenhouse. */
export async function selectDirectory(
  database: Database,
  channel: ChannelName,
  greenhouse?: GreenhouseId,
): Promise<Directory> {
  const accountRows = await database
    .select()
    .from(accounts)
    .where(
      and(
        eq(accounts.channel, channel),
        greenhouse === undefined ? undefined : eq(accounts.greenhouse, greenhouse),
      ),
    );
  const roomRows = await database
    .select()
    .from(rooms)
    .where(
      and(
        eq(rooms.channel, channel),
        greenhouse === undefined ? undefined : eq(rooms.greenhouse, greenhouse),
      ),
    );
  return {
    accounts: accountRows.map((row) => ({ ...row, greenhouse: row.greenhouse as GreenhouseId })),
    rooms: roomRows.map((row) => ({ ...row, greenhouse: row.greenhouse as GreenhouseId })),
  };
}

async function keepClaim(database: Database, claim: Invitation): Promise<void> {
  await database.transaction(async (transaction) => {
    await transaction
      .delete(invitations)
      .where(
        and(
          eq(invitations.greenhouse, claim.greenhouse),
          isNull(invitations.madeBy),
          isNull(invitations.usedAtMs),
        ),
      );
    await transaction.insert(invitations).values(claim);
  });
}

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
