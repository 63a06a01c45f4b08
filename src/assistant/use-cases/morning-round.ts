import { instantOf, type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { PastRound } from '../../logbook/rounds.ts';
import { rainOfDay } from '../../planning/rain-left.ts';
import { shoppingOfDay } from '../../planning/stock-outlook.ts';
import { boardOf } from '../board-of.ts';
import { withCautionsOfRound } from '../cautions-told.ts';
import { rosterOf } from '../family/roster-of.ts';
import { forHelper, type RoundReader, roundReaders } from '../family/round-readers.ts';
import type { Outgoing, OutgoingNo } from '../outgoing.ts';
import type { ChannelName, Counters, Morning } from '../ports/store.ts';
import type { Standing } from '../standing.ts';
import { roundButtons } from './renew-rounds.ts';

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

/** A group that is written to by a name of its own. */
export interface RoomAddress {
  readonly name: string;
  readonly channel: ChannelName;
}

/** How those are reached who get the round. */
export interface RoundReach {
  readonly channelOf: (handle: string) => ChannelName;
  readonly rooms: readonly RoomAddress[];
}

/** The round of one local date: what needs doing and why, to every grower and every group, and to whoever covers. */
export function morningRound(
  standing: Standing,
  counters: Counters,
  due: { readonly date: LocalDate; readonly atMs: number },
  nowMs: number,
  { channelOf, rooms }: RoundReach,
): { readonly morning: Morning; readonly outgoing: readonly Outgoing[] } {
  const today = withCautionsOfRound(boardOf(standing, nowMs).today, standing.rounds);
  const shopping = shoppingOfDay(standing.greenhouse, standing.logbook, nowMs);
  const rain = rainOfDay(standing.greenhouse, standing.logbook, nowMs);
  const isLate = nowMs - due.atMs > lateAfterMs;
  const readers = roundReaders(standing, due.date);
  const covers = rosterOf(standing).coversOn(due.date);
  const receivers: readonly (RoomAddress & { readonly reader: RoundReader | null })[] = [
    ...readers.map((reader) => ({
      name: reader.handle,
      channel: channelOf(reader.handle),
      reader,
    })),
    ...rooms.map((room) => ({ ...room, reader: null })),
  ];
  const outgoing = receivers.map(
    ({ name, channel, reader }, position): Outgoing => ({
      no: (counters.lastOutgoingNo + position + 1) as OutgoingNo,
      atMs: nowMs,
      channel,
      to: name,
      inReplyTo: null,
      reply: {
        kind: 'round',
        date: due.date,
        isLate,
        duties: reader?.isHelper ? forHelper(today, reader.handle, standing) : today,
        ...(shopping.length > 0 && reader?.isAway !== true ? { shopping } : {}),
        ...(rain && reader?.isAway !== true ? { rain } : {}),
        ...(readers.some(({ isAway }) => isAway) ? { covers } : {}),
        ...(reader?.isAway ? { isBrief: true as const } : {}),
        ...(reader?.isHelper ? { isPlain: true as const } : {}),
      },
      buttons: reader?.isAway
        ? []
        : roundButtons(
            reader?.isHelper ? forHelper(today, reader.handle, standing) : today,
            [],
            nowMs,
            reader?.isHelper === true,
          ),
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
