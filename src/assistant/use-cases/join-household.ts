import type { Language, Member, Role } from '../../greenhouse/member.ts';
import type { Directory, HouseholdChange, Invitation } from '../household/household.ts';
import type { Outgoing, OutgoingNo } from '../outgoing.ts';
import type { ChannelName, Counters } from '../ports/store.ts';
import type { HouseholdNews } from '../replies/household-news.ts';
import type { Standing } from '../standing.ts';

/** Somebody at the door with an invitation. */
export interface Newcomer {
  readonly channel: ChannelName;
  readonly accountId: string;
  readonly name: string;
  readonly language: Language;
  /** The id under which the code was received. */
  readonly messageId: string;
}

export interface Joined {
  readonly member: Member;
  /** Present where the member is new to the set-up. */
  readonly members: readonly Member[] | null;
  readonly changes: readonly HouseholdChange[];
  readonly outgoing: readonly Outgoing[];
}

/** Lets a newcomer in by a valid invitation, greets them, and tells the growers. */
export function joinHousehold(
  standing: Standing,
  counters: Counters,
  directory: Directory,
  invitation: Invitation,
  newcomer: Newcomer,
  nowMs: number,
): Joined {
  const { members } = standing.greenhouse;
  const { channel, accountId } = newcomer;
  const known = directory.accounts.find((account) => account.accountId === accountId);
  const present = members.find(({ handle }) => handle === known?.handle);
  const saying = newsTo(counters, channel, newcomer.messageId, nowMs);
  if (present && invitation.handle !== null && invitation.handle !== present.handle) {
    // Somebody's own invitation for another: it stays good.
    const { name, role } = present;
    const news: HouseholdNews = { kind: 'already-in', name, role };
    return {
      member: present,
      members: null,
      changes: [],
      outgoing: saying([[present.handle, news]]),
    };
  }
  if (present && rank(present.role) >= rank(invitation.role)) {
    const { name, role } = present;
    const news: HouseholdNews = { kind: 'already-in', name, role };
    return {
      member: present,
      members: null,
      changes: [],
      outgoing: saying([[present.handle, news]]),
    };
  }
  const invited = members.find(({ handle }) => handle === invitation.handle);
  const member: Member = present
    ? { ...present, role: invitation.role }
    : (invited ?? newMember(newcomer, invitation.role, members));
  const { name, role, handle } = member;
  const isChanged = member !== invited;
  const growers = members.filter(
    (each) =>
      each.role === 'grower' &&
      each.handle !== handle &&
      directory.accounts.some((account) => account.handle === each.handle),
  );
  return {
    member,
    members: isChanged ? [...members.filter((each) => each.handle !== handle), member] : null,
    changes: [
      { kind: 'account-bound', channel, accountId, handle },
      { kind: 'account-turned', channel, accountId },
      { kind: 'invitation-used', codeHash: invitation.codeHash, atMs: nowMs },
    ],
    outgoing: saying([
      [handle, { kind: 'welcome', name, role }],
      ...growers.map((grower): readonly [string, HouseholdNews] => [
        grower.handle,
        { kind: 'has-joined', name, role },
      ]),
    ]),
  };
}

/** Whether an invitation still opens the door. */
export function isOpen({ usedAtMs, expiresAtMs }: Invitation, nowMs: number): boolean {
  return usedAtMs === null && nowMs < expiresAtMs;
}

function rank(role: Role): number {
  return role === 'grower' ? 1 : 0;
}

function newMember({ name, language }: Newcomer, role: Role, members: readonly Member[]): Member {
  const shown =
    name
      .replace(/[\p{Cc}\p{Cf}]/gu, '')
      .trim()
      .slice(0, mostInName) || 'Guest';
  const wanted =
    shown
      .normalize('NFKD')
      .toLowerCase()
      .replace(/[^a-z0-9]+/gu, '-')
      .replace(/^-+|-+$/gu, '') || 'guest';
  const taken = new Set(members.map(({ handle }) => handle));
  let handle = wanted;
  for (let count = 2; taken.has(handle); count += 1) handle = `${wanted}-${count}`;
  return { handle, name: shown, role, language };
}

const mostInName = 60;

function newsTo(counters: Counters, channel: ChannelName, inReplyTo: string, atMs: number) {
  return (told: readonly (readonly [string, HouseholdNews])[]): readonly Outgoing[] =>
    told.map(([to, news], position) => ({
      no: (counters.lastOutgoingNo + position + 1) as OutgoingNo,
      atMs,
      channel,
      to,
      inReplyTo: position === 0 ? inReplyTo : null,
      reply: { kind: 'answer', answer: { kind: 'household', news } },
      buttons: [],
    }));
}
