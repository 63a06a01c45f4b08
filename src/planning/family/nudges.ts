import type { Duty, DutyKind } from '../../greenhouse/duty.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { instantOf, type LocalDate, type LocalTime } from '../../greenhouse/local-time.ts';
import { mayHandleAcids } from '../../greenhouse/member.ts';
import type { Logbook } from '../../logbook/logbook.ts';
import type { PastRound } from '../../logbook/rounds.ts';
import { dutyMark } from '../duty-mark.ts';
import type { Roster } from '../roster.ts';

/** First the one whose turn it is, then the others, then the grower. */
export type NudgeStage = 'ask' | 'offer' | 'tell';

/** Duties of one round that are still open at an instant, and who is spoken to about them. */
export interface Nudge {
  readonly stage: NudgeStage;
  readonly atMs: number;
  readonly to: string;
  /** Whose turn it was. */
  readonly of: string | null;
  readonly duties: readonly Duty[];
}

/** By when a thing of the morning should be done, and when the others hear of it. Common practice. */
const HOURS: Readonly<
  Record<'calm' | 'urgent' | 'evening', Readonly<Record<NudgeStage, LocalTime>>>
> = {
  calm: { ask: time('17:00'), offer: time('18:30'), tell: time('20:00') },
  // Harm is hours away: there must be daylight left for somebody else to go.
  urgent: { ask: time('11:00'), offer: time('13:00'), tell: time('15:00') },
  evening: { ask: time('20:15'), offer: time('20:45'), tell: time('21:15') },
};
/** Nobody is spoken to after this, or before the next morning's round. */
const QUIET_FROM = time('21:30');
/** A round gives at least so long before it is asked about. */
const LEAST_AFTER_ROUND_MS = 2 * 3_600_000;

/** Left undone past their latest day, these harm within hours; all else is only late. */
const harmful: readonly DutyKind[] = ['top-up', 'check', 'dose', 'aeration'];

/** What can wait is asked about on its first day, offered to others on the next, told on the one after. */
const STAGE_OF_DAY: readonly NudgeStage[] = ['ask', 'offer', 'tell'];

/**
 * Everything that could be said about the open duties of the latest round; earliest first. Water and
 * what is urgent goes from one to the others and to the grower within a day; what can wait takes a
 * day for each. With the grower at home, others are troubled only where harm is near or somebody had
 * taken it.
 */
export function nudgesOf(
  rounds: readonly PastRound[],
  greenhouse: Greenhouse,
  logbook: Logbook,
  roster: Roster,
): readonly Nudge[] {
  const round = rounds.at(-1);
  if (!round) return [];
  const { date, sentAtMs } = round;
  const quietMs = instantOf(date, QUIET_FROM, greenhouse.timeZone);
  const nudges = round.duties
    .filter((duty) => !dutyMark(duty, logbook, sentAtMs))
    .flatMap((duty) => ofDuty(duty, askedBefore(duty, rounds), date, greenhouse, roster))
    .filter(({ atMs }) => atMs < quietMs && atMs - sentAtMs >= LEAST_AFTER_ROUND_MS);
  return together(nudges).toSorted((one, other) => one.atMs - other.atMs);
}

function ofDuty(
  duty: Duty,
  daysAsked: number,
  date: LocalDate,
  greenhouse: Greenhouse,
  roster: Roster,
): readonly Nudge[] {
  const claim = roster.claimOf(duty, date);
  if (!claim && duty.alongside === true) return [];
  const { members, timeZone } = greenhouse;
  const growers = members.filter(({ role }) => role === 'grower').map(({ handle }) => handle);
  const isAway = growers.some((handle) => roster.absenceOn(handle, date));
  const isUrgent =
    harmful.includes(duty.kind) && duty.latestOn !== undefined && duty.latestOn <= date;
  const isSoon = claim !== null || isUrgent || (isAway && duty.kind === 'top-up');
  const stages = isSoon ? STAGE_OF_DAY : STAGE_OF_DAY.slice(daysAsked, daysAsked + 1);
  // With the grower at home, others are troubled only where harm is near or somebody had taken it.
  const isOffered = isSoon || isAway;
  const able = roster.ableOn(date).filter((handle) => mayDo(duty, handle, greenhouse));
  const of = claim?.handle ?? roster.coversOn(date).find((each) => able.includes(each)) ?? null;
  const hours = claim?.isEvening ? HOURS.evening : isUrgent ? HOURS.urgent : HOURS.calm;
  const readers: Readonly<Record<NudgeStage, readonly string[]>> = {
    ask: of === null ? [] : [of],
    offer: isOffered ? able.filter((each) => each !== of && !growers.includes(each)) : [],
    tell: isOffered ? growers.filter((each) => each !== of) : [],
  };
  return stages.flatMap((stage) =>
    readers[stage].map((to) => ({
      stage,
      atMs: instantOf(date, hours[stage], timeZone),
      to,
      of,
      duties: [duty],
    })),
  );
}

/** Nobody is asked to handle what they were not shown. */
function mayDo({ kind }: Duty, handle: string, { members }: Greenhouse): boolean {
  const member = members.find((each) => each.handle === handle);
  return member !== undefined && (kind !== 'dose' || mayHandleAcids(member));
}

/** On how many mornings in a row before this one the same was asked for. */
function askedBefore(duty: Duty, rounds: readonly PastRound[]): number {
  const earlier = rounds.slice(0, -1);
  const last = earlier.findLastIndex(({ duties }) => !duties.some((other) => isSame(duty, other)));
  return earlier.length - 1 - last;
}

/** One message for all that a member is to be told at once. */
function together(nudges: readonly Nudge[]): readonly Nudge[] {
  const byPlace = new Map<string, Nudge>();
  for (const nudge of nudges) {
    const place = `${nudge.stage}|${nudge.to}|${nudge.of ?? ''}|${nudge.atMs}`;
    const known = byPlace.get(place);
    byPlace.set(place, known ? { ...known, duties: [...known.duties, ...nudge.duties] } : nudge);
  }
  return [...byPlace.values()];
}

function isSame(one: Duty, other: Duty): boolean {
  return (
    one.kind === other.kind &&
    one.system === other.system &&
    one.chore === other.chore &&
    one.product === other.product &&
    one.probe === other.probe &&
    other.alongside !== true
  );
}

function time(text: string): LocalTime {
  return text as LocalTime;
}
