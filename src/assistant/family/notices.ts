import { localDateOf } from '../../greenhouse/local-time.ts';
import { mayHandleAcids } from '../../greenhouse/member.ts';
import { nudgesOf } from '../../planning/family/nudges.ts';
import type { Roster } from '../../planning/roster.ts';
import type { Reminder } from '../reminders-due.ts';
import type { Standing } from '../standing.ts';
import { type Notice, notice, nudgeRows } from './notice.ts';
import { noticesOfArrangements } from './notices-of-arrangements.ts';
import { noticesOfDeeds } from './notices-of-deeds.ts';
import { noticesOfLeaving } from './notices-of-leaving.ts';
import { noticesOfRelief } from './notices-of-relief.ts';
import { noticesOfTroubles } from './notices-of-troubles.ts';
import { rosterOf } from './roster-of.ts';

/**
 * All that is to be said unasked around `nowMs`, whether it was said before or not, earliest first;
 * what takes long to reckon is left out where it is among the keys `told`.
 */
export function noticesOf(
  standing: Standing,
  nowMs: number,
  reminders: readonly Reminder[],
  told: ReadonlySet<string>,
): readonly Notice[] {
  const roster = rosterOf(standing);
  return [
    ...ofReminders(reminders, standing, roster, nowMs),
    ...ofNudges(standing, roster, nowMs),
    ...noticesOfArrangements(standing, roster, nowMs),
    ...noticesOfDeeds(standing, roster, nowMs),
    ...noticesOfTroubles(standing, roster, nowMs),
    ...noticesOfRelief(standing, nowMs),
    ...noticesOfLeaving(standing, roster, nowMs, told),
  ].toSorted((one, other) => one.atMs - other.atMs || (one.key < other.key ? -1 : 1));
}

/** Whoever covers hears it as well; a grower who is away hears no more of a dose that others can give. */
function ofReminders(
  reminders: readonly Reminder[],
  { greenhouse }: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const today = localDateOf(nowMs, greenhouse.timeZone);
  return reminders.flatMap(({ key, atMs, to, alert, heardBy }) => {
    const isAnyAway = to.some((handle) => roster.absenceOn(handle, today));
    const shown = greenhouse.members
      .filter((member) => mayHandleAcids(member) && roster.canGo(member.handle, today))
      .map(({ handle }) => handle);
    const settling = alert.kind === 'dose-wanted' && shown.length > 0 ? shown : null;
    const covers = alert.kind === 'dose-wanted' ? [] : roster.coversOn(today);
    const readers = isAnyAway ? (settling ?? [...new Set([...to, ...covers])]) : to;
    return readers
      .filter((handle) => handle !== heardBy)
      .map((handle) => notice(`${key}:${handle}`, atMs, handle, alert));
  });
}

/** What was not said at its time, since nothing ran or it was not yet so, is not said late. */
const NUDGE_HOLDS_MS = 30 * 60_000;

function ofNudges(
  { greenhouse, logbook, rounds }: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const round = rounds.at(-1);
  if (!round) return [];
  return nudgesOf(rounds, greenhouse, logbook, roster)
    .filter(({ atMs }) => nowMs - atMs <= NUDGE_HOLDS_MS)
    .map(({ stage, atMs, to, of, duties }) =>
      notice(
        `undone:${stage}:${round.date}:${atMs}:${to}`,
        atMs,
        to,
        { kind: 'undone', stage, of, duties },
        stage === 'tell' ? [] : nudgeRows(duties, stage, to, round.date, round.sentAtMs),
      ),
    );
}
