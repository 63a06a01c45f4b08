import type { Member } from '../../greenhouse/member.ts';
import type { Handling } from '../handling.ts';
import type { Directory } from '../household/household.ts';
import { invitationTermMs } from '../household/invitation-term.ts';
import type { HouseholdWish } from '../household/wish.ts';
import type { Button, Outgoing } from '../outgoing.ts';
import { may } from '../permissions.ts';
import type { GreenhouseId } from '../ports/store.ts';
import type { HouseholdNews } from '../replies/household-news.ts';
import { freeRoomName } from './room-name.ts';

/** What a wish about the household is decided on. */
export interface HouseholdDesk {
  readonly greenhouse: GreenhouseId;
  /** The accounts and groups of this greenhouse on this channel. */
  readonly directory: Directory;
  /** The hash of the code of an invitation made now; null: the channel makes none. */
  readonly invitationHash: string | null;
}

/** Grants a wish about who is in the household, or says who may have it. */
export function keepHousehold(
  handling: Handling,
  wish: HouseholdWish,
  household: HouseholdDesk,
): void {
  const { member } = handling.heard;
  if (!may(member, `household-${wish.kind}`, true)) {
    tell(handling, { kind: 'growers-only' });
    return;
  }
  switch (wish.kind) {
    case 'invite':
      return invite(handling, wish, household);
    case 'show':
      return showHousehold(handling, household);
    case 'remove':
      return remove(handling, wish.handle, household);
    case 'leave':
      return leave(handling, household);
    case 'stay':
      tell(handling, { kind: 'stays' });
      return;
    case 'turn-to': {
      const { accountId } = wish;
      handling.householdChanges.push({
        kind: 'account-turned',
        channel: channelOf(handling),
        accountId,
      });
      tell(handling, { kind: 'turned-to' });
      return;
    }
    case 'tie-room': {
      const { roomId, title, readsAll } = wish;
      const name = freeRoomName(title, roomId, handling.standing.greenhouse.members, household);
      handling.householdChanges.push({
        kind: 'room-tied',
        channel: channelOf(handling),
        roomId,
        name,
      });
      tell(handling, { kind: 'room-tied', readsAll }, [], name);
      return;
    }
    case 'untie-room':
      return untieRoom(handling, household);
    case 'no-words':
      tell(handling, { kind: 'no-words' });
      return;
  }
}

function invite(
  handling: Handling,
  { role, handle }: Extract<HouseholdWish, { kind: 'invite' }>,
  { greenhouse, invitationHash }: HouseholdDesk,
): void {
  if (invitationHash === null) return;
  const invited = memberOf(handling, handle);
  const expiresAtMs = handling.nowMs + invitationTermMs;
  const { handle: madeBy } = handling.heard.member;
  handling.householdChanges.push({
    kind: 'invitation-made',
    invitation: {
      greenhouse,
      codeHash: invitationHash,
      role: invited?.role ?? role,
      handle: invited?.handle ?? null,
      madeBy,
      expiresAtMs,
      usedAtMs: null,
    },
  });
  const news: HouseholdNews = {
    kind: 'invited',
    role: invited?.role ?? role,
    name: invited?.name ?? null,
    expiresAtMs,
  };
  // Whoever reads the link can use it: it is shown to the grower alone.
  tell(handling, news, [], madeBy);
  if (handling.heard.chat !== null) tell(handling, { kind: 'invited-in-private' });
}

function showHousehold(handling: Handling, { directory }: HouseholdDesk): void {
  const { members } = handling.standing.greenhouse;
  const reachOf = ({ handle }: Member) => {
    const account = directory.accounts.find((each) => each.handle === handle);
    if (!account) return 'no-account';
    return account.canBeReached ? 'reached' : 'blocked';
  };
  const news: HouseholdNews = {
    kind: 'who-is-in',
    members: members.map((member) => ({
      name: member.name,
      role: member.role,
      reach: reachOf(member),
    })),
    rooms: directory.rooms.filter(({ canBeReached }) => canBeReached).map(({ name }) => name),
  };
  const invites = may(handling.heard.member, 'household-invite', true);
  tell(handling, news, invites ? householdButtons(handling, members, reachOf) : []);
}

function householdButtons(
  handling: Handling,
  members: readonly Member[],
  reachOf: (member: Member) => 'reached' | 'blocked' | 'no-account',
): readonly (readonly Button[])[] {
  const own = handling.heard.member.handle;
  const ofMembers = members
    .filter(({ handle }) => handle !== own)
    .map((member) => {
      const { handle, role } = member;
      return reachOf(member) === 'no-account'
        ? wishButton({ kind: 'invite', role, handle })
        : wishButton({ kind: 'remove', handle });
    });
  return [
    [
      wishButton({ kind: 'invite', role: 'helper', handle: null }),
      wishButton({ kind: 'invite', role: 'grower', handle: null }),
    ],
    ...ofMembers.map((button) => [button]),
  ];
}

/** Whoever names themselves leaves, and is asked first; anybody else is told who took them out. */
function remove(handling: Handling, handle: string, household: HouseholdDesk): void {
  const { member } = handling.heard;
  if (handle === member.handle) return leave(handling, household);
  const name = memberOf(handling, handle)?.name ?? handle;
  const account = household.directory.accounts.find((each) => each.handle === handle);
  if (!account) {
    tell(handling, { kind: 'not-in', name });
    return;
  }
  handling.householdChanges.push({ kind: 'account-unbound', channel: channelOf(handling), handle });
  tell(handling, { kind: 'removed', name });
  if (!account.canBeReached) return;
  const { accountId } = account;
  tell(handling, { kind: 'taken-out', by: member.name, accountId }, [], handle);
}

/** Asked first by word, then done by the button under the question. */
function leave(handling: Handling, { directory }: HouseholdDesk): void {
  const { member } = handling.heard;
  const growers = handling.standing.greenhouse.members.filter(({ role }) => role === 'grower');
  const reachable = growers.filter(({ handle }) =>
    directory.accounts.some((account) => account.handle === handle),
  );
  const isLastGrower = member.role === 'grower' && reachable.length <= 1;
  if (!handling.heard.isPress) {
    tell(handling, { kind: 'really-leave', isLastGrower }, [
      [wishButton({ kind: 'leave' }), wishButton({ kind: 'stay' })],
    ]);
    return;
  }
  const { handle, name } = member;
  handling.householdChanges.push({ kind: 'account-unbound', channel: channelOf(handling), handle });
  tell(handling, { kind: 'farewell' });
  for (const grower of reachable.filter((each) => each.handle !== handle)) {
    tell(handling, { kind: 'has-left', name }, [], grower.handle);
  }
}

function untieRoom(handling: Handling, { directory }: HouseholdDesk): void {
  const name = handling.heard.chat;
  if (name === null || !directory.rooms.some((room) => room.name === name)) {
    tell(handling, { kind: 'room-untied' });
    return;
  }
  handling.householdChanges.push({ kind: 'room-untied', channel: channelOf(handling), name });
  tell(handling, { kind: 'room-untied' });
}

function wishButton(wish: HouseholdWish): Button {
  return { label: { kind: 'household', wish }, action: { kind: 'household', wish } };
}

function memberOf(handling: Handling, handle: string | null): Member | undefined {
  return handling.standing.greenhouse.members.find((member) => member.handle === handle);
}

function channelOf(handling: Handling): string {
  return handling.heard.channel;
}

function tell(
  handling: Handling,
  news: HouseholdNews,
  buttons: readonly (readonly Button[])[] = [],
  to?: string,
): Outgoing {
  return handling.say({ kind: 'answer', answer: { kind: 'household', news } }, buttons, to);
}
