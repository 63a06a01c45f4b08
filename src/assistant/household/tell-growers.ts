import type { Desk } from '../desk.ts';
import type { OutgoingNo } from '../outgoing.ts';
import type { ChannelName, GreenhouseId } from '../ports/store.ts';
import type { Alert } from '../replies/reply.ts';
import type { HouseholdChange } from './household.ts';

export interface Told {
  readonly alert: Alert;
  /** Said once for this key, however often it happens. */
  readonly onceFor: string;
  /** Not to this member, whom it is about. */
  readonly except: string | null;
}

/**
 * Warns the growers who can be reached on a channel, and writes what has changed about the household
 * in the same transaction.
 */
export async function tellGrowers(
  desk: Desk,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  { alert, onceFor, except }: Told,
  changes: readonly HouseholdChange[],
  nowMs: number,
): Promise<void> {
  await desk.transact(greenhouse, null, nowMs, async (standing, ledger) => {
    const wasTold = await ledger.hasNotice(onceFor);
    const { accounts } = await ledger.directory(channel);
    const growers = standing.greenhouse.members.filter(
      ({ role, handle }) =>
        role === 'grower' &&
        handle !== except &&
        accounts.some((account) => account.handle === handle && account.canBeReached),
    );
    const outgoing = (wasTold ? [] : growers).map(({ handle }, position) => ({
      no: (ledger.counters.lastOutgoingNo + position + 1) as OutgoingNo,
      atMs: nowMs,
      channel,
      to: handle,
      inReplyTo: null,
      reply: { kind: 'alert' as const, alert },
      buttons: [],
    }));
    const notices = outgoing.length > 0 ? [onceFor] : [];
    return { standing, writes: { outgoing, notices, household: changes }, result: undefined };
  });
}

/** Only the changes, with nobody told. */
export async function changeHousehold(
  desk: Desk,
  greenhouse: GreenhouseId,
  changes: readonly HouseholdChange[],
  nowMs: number,
): Promise<void> {
  await desk.transact(greenhouse, null, nowMs, (standing) =>
    Promise.resolve({ standing, writes: { household: changes }, result: undefined }),
  );
}
