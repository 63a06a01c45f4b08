import type { Outgoing, OutgoingNo } from '../outgoing.ts';
import type { ChannelName, Counters } from '../ports/store.ts';
import type { Reminder } from '../reminders-due.ts';

/** Alerts of what falls due, each to all who get it. */
export function sayReminders(
  reminders: readonly Reminder[],
  counters: Counters,
  nowMs: number,
  channelOf: (handle: string) => ChannelName,
): readonly Outgoing[] {
  return reminders
    .flatMap(({ to, alert }) => to.map((handle) => ({ handle, alert })))
    .map(
      ({ handle, alert }, position): Outgoing => ({
        no: (counters.lastOutgoingNo + position + 1) as OutgoingNo,
        atMs: nowMs,
        channel: channelOf(handle),
        to: handle,
        inReplyTo: null,
        reply: { kind: 'alert', alert },
        buttons: [],
      }),
    );
}
