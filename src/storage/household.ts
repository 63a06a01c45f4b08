import { and, eq, isNull } from 'drizzle-orm';
import type { Directory, Invitation } from '../assistant/household/household.ts';
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
