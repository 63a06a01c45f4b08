import type { Duty } from '../../greenhouse/duty.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { instantOf, type LocalTime } from '../../greenhouse/local-time.ts';
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

/** Everything that could be said about the open duties of a round; earliest first. */
export function nudgesOf(
  round: PastRound,
  before: PastRound | undefined,
  greenhouse: Greenhouse,
  logbook: Logbook,
  roster: Roster,
): readonly Nudge[] {
  const { date, sentAtMs } = round;
  const quietMs = instantOf(date, QUIET_FROM, greenhouse.timeZone);
  const isAway = greenhouse.members.some(
    ({ role, handle }) => role === 'grower' && roster.absenceOn(handle, date),
  );
  const open = round.duties.filter((duty) => {
    if (dutyMark(duty, logbook, sentAtMs)) return false;
    const claim = roster.claimOf(duty, date);
    if (claim) return true;
    if (duty.alongside === true) return false;
    // Roots want water; all else can wait for the next round.
    if (duty.kind !== 'top-up') return false;
    const isUrgent = duty.latestOn !== undefined && duty.latestOn <= date;
    // Whoever is at home and was asked yesterday needs no second word, unless it turns urgent.
    return isAway || isUrgent || !wasAsked(duty, before);
  });
  const nudges = open.flatMap((duty) =>
    ofDuty(duty, round, greenhouse, roster, isAway).filter(
      ({ atMs }) => atMs < quietMs && atMs - sentAtMs >= LEAST_AFTER_ROUND_MS,
    ),
  );
  return together(nudges).toSorted((one, other) => one.atMs - other.atMs);
}

function ofDuty(
  duty: Duty,
  { date }: PastRound,
  greenhouse: Greenhouse,
  roster: Roster,
  isAway: boolean,
): readonly Nudge[] {
  const claim = roster.claimOf(duty, date);
  const covers = roster.coversOn(date);
  const of = claim?.handle ?? covers[0] ?? null;
  const isUrgent = duty.latestOn !== undefined && duty.latestOn <= date;
  const hours = claim?.isEvening ? HOURS.evening : isUrgent ? HOURS.urgent : HOURS.calm;
  const at = (stage: NudgeStage): number => instantOf(date, hours[stage], greenhouse.timeZone);
  const growers = greenhouse.members.filter(({ role }) => role === 'grower');
  // With the grower at home, helpers are troubled only where harm is near or somebody had taken it.
  const isOffered = duty.kind === 'top-up' && (isAway || isUrgent || claim !== null);
  const others = (isOffered ? roster.ableOn(date) : []).filter(
    (handle) => handle !== of && !growers.some((grower) => grower.handle === handle),
  );
  const nudge = (stage: NudgeStage, to: string): Nudge => ({
    stage,
    atMs: at(stage),
    to,
    of,
    duties: [duty],
  });
  return [
    ...(of === null ? [] : [nudge('ask', of)]),
    ...others.map((handle) => nudge('offer', handle)),
    ...growers
      .filter(({ handle }) => isOffered && handle !== of)
      .map(({ handle }) => nudge('tell', handle)),
  ];
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

function wasAsked(duty: Duty, before: PastRound | undefined): boolean {
  return (
    before?.duties.some(
      ({ kind, system, chore, product }) =>
        kind === duty.kind &&
        system === duty.system &&
        chore === duty.chore &&
        product === duty.product,
    ) === true
  );
}

function time(text: string): LocalTime {
  return text as LocalTime;
}
