import type { Desk } from '../desk.ts';
import type { OutgoingNo } from '../outgoing.ts';
import type { ChannelName, GreenhouseId, Ledger, Writes } from '../ports/store.ts';
import type { Alert } from '../replies/reply.ts';
import type { Standing } from '../standing.ts';
import type { Directory, HouseholdChange } from './household.ts';

export interface Told {
  readonly alert: Alert;
  /** Said once for this key, however often it happens. */
  readonly onceFor: string;
  /** Not to this member, whom it is about. */
  readonly except: string | null;
}

/** Warns the growers who can be reached on a channel. */
export async function tellGrowers(
  desk: Desk,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  told: Told,
  nowMs: number,
): Promise<void> {
  await desk.transact(greenhouse, null, nowMs, async (standing, ledger) => {
    const { accounts } = await ledger.directory(channel);
    const writes = await warningOf(standing, ledger, accounts, channel, told, nowMs);
    return { standing, writes, result: undefined };
  });
}

/**
 * Notes that a member or a group can be reached no more, and warns the growers of it: once, however
 * many ways there are to notice.
 */
export async function tellShutOut(
  desk: Desk,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  to: string,
  told: Omit<Told, 'except'>,
  nowMs: number,
): Promise<void> {
  await desk.transact(greenhouse, null, nowMs, async (standing, ledger) => {
    const { accounts, rooms } = await ledger.directory(channel);
    const known =
      accounts.find(({ handle }) => handle === to) ?? rooms.find(({ name }) => name === to);
    if (known?.canBeReached === false) return { standing, writes: {}, result: undefined };
    const household = [{ kind: 'reach-changed', channel, to, canBeReached: false }] as const;
    const warned = { ...told, except: to };
    const warning = await warningOf(standing, ledger, accounts, channel, warned, nowMs);
    return { standing, writes: { ...warning, household }, result: undefined };
  });
}

async function warningOf(
  { greenhouse }: Standing,
  ledger: Ledger,
  accounts: Directory['accounts'],
  channel: ChannelName,
  { alert, onceFor, except }: Told,
  nowMs: number,
): Promise<Pick<Writes, 'outgoing' | 'notices'>> {
  if (await ledger.hasNotice(onceFor)) return { outgoing: [], notices: [] };
  const growers = greenhouse.members.filter(
    ({ role, handle }) =>
      role === 'grower' &&
      handle !== except &&
      accounts.some((account) => account.handle === handle && account.canBeReached),
  );
  const outgoing = growers.map(({ handle }, position) => ({
    no: (ledger.counters.lastOutgoingNo + position + 1) as OutgoingNo,
    atMs: nowMs,
    channel,
    to: handle,
    inReplyTo: null,
    reply: { kind: 'alert' as const, alert },
    buttons: [],
  }));
  return { outgoing, notices: outgoing.length > 0 ? [onceFor] : [] };
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
