import type { Desk } from '../desk.ts';
import type { HouseholdStore } from '../ports/household-store.ts';
import type { InboxNo } from '../ports/store.ts';
import { withChanges } from '../standing.ts';
import { isOpen, joinHousehold, type Newcomer } from '../use-cases/join-household.ts';
import type { Invitation } from './household.ts';

/**
 * Lets a newcomer in, once, however often it is called with the same inbox row.
 *
 * @throws Error where somebody else used the invitation in the same moment; trying again tells so.
 */
export async function letIn(
  desk: Desk,
  invitation: Invitation,
  inboxNo: InboxNo,
  newcomer: Newcomer,
  nowMs: number,
): Promise<void> {
  await desk.transact(invitation.greenhouse, inboxNo, nowMs, async (standing, ledger) => {
    const directory = await ledger.directory(newcomer.channel);
    const joined = joinHousehold(standing, ledger.counters, directory, invitation, newcomer, nowMs);
    const { members, changes, outgoing } = joined;
    const greenhouse = members && { ...standing.greenhouse, members };
    const next = {
      entries: [],
      strikes: [],
      weather: [],
      mornings: [],
      arrangements: [],
      greenhouse,
    };
    return {
      standing: withChanges(standing, next, standing.revision, nowMs),
      writes: { greenhouse, outgoing, household: changes },
      result: undefined,
    };
  });
}

/** The invitation of a code, where it still opens the door. */
export async function openInvitation(
  household: HouseholdStore,
  codeHash: string,
  nowMs: number,
): Promise<Invitation | null> {
  const invitation = await household.invitation(codeHash);
  return invitation && isOpen(invitation, nowMs) ? invitation : null;
}
