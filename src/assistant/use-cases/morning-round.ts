import { instantOf, type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { PastRound } from '../../logbook/rounds.ts';
import { boardOf } from '../board-of.ts';
import type { Outgoing, OutgoingNo } from '../outgoing.ts';
import type { Counters, Morning } from '../ports/store.ts';
import type { Standing } from '../standing.ts';

/** The morning whose round is next, and the instant it is due. */
export function nextMorning(standing: Standing): { date: LocalDate; atMs: number } {
  const { greenhouse, createdAtMs, rounds } = standing;
  const { morning, timeZone } = greenhouse;
  const last: PastRound | undefined = rounds.at(-1);
  if (last) {
    const date = plusDays(last.date, 1);
    return { date, atMs: instantOf(date, morning, timeZone) };
  }
  const firstDay = localDateOf(createdAtMs, timeZone);
  const firstAtMs = instantOf(firstDay, morning, timeZone);
  if (firstAtMs > createdAtMs) return { date: firstDay, atMs: firstAtMs };
  const date = plusDays(firstDay, 1);
  return { date, atMs: instantOf(date, morning, timeZone) };
}

/** Sent later than this after its time, a round says so. */
const lateAfterMs = 30 * 60_000;

/** The round of one local date: what needs doing and why, to every grower. */
export function morningRound(
  standing: Standing,
  counters: Counters,
  due: { readonly date: LocalDate; readonly atMs: number },
  nowMs: number,
  channelOf: (handle: string) => string,
): { readonly morning: Morning; readonly outgoing: readonly Outgoing[] } {
  const { today } = boardOf(standing, nowMs);
  const isLate = nowMs - due.atMs > lateAfterMs;
  const receivers = standing.greenhouse.members.filter(({ role }) => role === 'grower');
  const outgoing = receivers.map(
    ({ handle }, position): Outgoing => ({
      no: (counters.lastOutgoingNo + position + 1) as OutgoingNo,
      atMs: nowMs,
      channel: channelOf(handle),
      to: handle,
      inReplyTo: null,
      reply: { kind: 'round', date: due.date, isLate, duties: today },
      buttons: [],
    }),
  );
  return {
    morning: {
      date: due.date,
      sentAtMs: nowMs,
      duties: today.map(({ duty }) => duty),
      outgoing: outgoing.map(({ no }) => no),
    },
    outgoing,
  };
}
