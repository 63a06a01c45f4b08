import { type Conversation, newConversation, withWorkTold } from '../conversation.ts';
import type { Outgoing, OutgoingNo } from '../outgoing.ts';
import type { ChannelName, Ledger } from '../ports/store.ts';
import {
  doseWantedKey,
  nextReminderMs,
  readingsOfHelpers,
  remindersDue,
} from '../reminders-due.ts';
import type { Standing } from '../standing.ts';
import { nextMorning } from '../use-cases/morning-round.ts';
import type { Notice } from './notice.ts';
import { noticesOf } from './notices.ts';

/** What this process knows to have been said unasked, and until when it has looked. */
export interface Told {
  readonly keys: Set<string>;
  lookedUntilMs: number;
}

export function newTold(fromMs: number): Told {
  return { keys: new Set(), lookedUntilMs: fromMs };
}

/** What is to be said by `nowMs` and was not, as far as this process knows. */
export function noticesDue(standing: Standing, told: Told, nowMs: number): readonly Notice[] {
  const reminders = remindersDue(standing, nowMs, told.keys);
  const due = noticesOf(standing, nowMs, reminders, told.keys).filter(
    ({ key, atMs }) => atMs <= nowMs && !told.keys.has(key),
  );
  // What a reading calls for does not change any more: it is looked at once.
  for (const entry of readingsOfHelpers(standing, nowMs)) {
    if (!due.some(({ key }) => key.startsWith(`${doseWantedKey(entry)}:`))) {
      told.keys.add(doseWantedKey(entry));
    }
  }
  return due;
}

/** The next round or notice due up to `nowMs`, and its time; null: nothing is left. */
export function nextDue(
  standing: Standing,
  told: Told,
  nowMs: number,
): { readonly kind: 'round' | 'notices'; readonly atMs: number } | null {
  const fromMs = Math.min(nowMs, Math.max(told.lookedUntilMs, standing.nowMs));
  told.lookedUntilMs = fromMs;
  if (noticesDue(standing, told, fromMs).length > 0) return { kind: 'notices', atMs: fromMs };
  const roundMs = nextMorning(standing).atMs;
  const later = noticesOf(standing, fromMs, [], told.keys)
    .filter(({ key, atMs }) => atMs > fromMs && !told.keys.has(key))
    .map(({ atMs }) => atMs);
  const reminderMs = nextReminderMs(standing, fromMs);
  const noticeMs = Math.min(...later, reminderMs ?? Number.POSITIVE_INFINITY);
  const atMs = Math.min(roundMs, noticeMs);
  if (atMs > nowMs) return null;
  told.lookedUntilMs = Math.max(fromMs, atMs);
  return { kind: roundMs <= noticeMs ? 'round' : 'notices', atMs };
}

/** The messages of notices that nobody has sent yet, and the keys to be kept. */
export async function noticesOut(
  due: readonly Notice[],
  ledger: Pick<Ledger, 'hasNotice' | 'counters' | 'conversation'>,
  nowMs: number,
  channelOf: (handle: string) => ChannelName,
): Promise<{
  readonly outgoing: readonly Outgoing[];
  readonly keys: readonly string[];
  readonly conversations: readonly Conversation[];
}> {
  const fresh: Notice[] = [];
  for (const notice of due) if (!(await ledger.hasNotice(notice.key))) fresh.push(notice);
  return {
    conversations: await withNudges(fresh, ledger, nowMs),
    keys: fresh.map(({ key }) => key),
    outgoing: fresh.map(({ to, alert, buttons }, position) => ({
      no: (ledger.counters.lastOutgoingNo + position + 1) as OutgoingNo,
      atMs: nowMs,
      channel: channelOf(to),
      to,
      inReplyTo: null,
      reply: { kind: 'alert', alert },
      buttons,
    })),
  };
}

/** Where the talk stands with those who are spoken to about open duties, with buttons for them. */
async function withNudges(
  fresh: readonly Notice[],
  ledger: Pick<Ledger, 'conversation'>,
  nowMs: number,
): Promise<readonly Conversation[]> {
  const told = new Map<string, Conversation>();
  for (const { to, alert, buttons } of fresh) {
    if (!('duties' in alert) || buttons.length === 0) continue;
    const before = told.get(to) ?? (await ledger.conversation(to)) ?? newConversation(to);
    told.set(to, withWorkTold(before, alert.duties, nowMs));
  }
  return [...told.values()];
}
