import { type Arrangement, settledBefore } from '../../greenhouse/arrangement.ts';
import { type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { Absence, Roster } from '../../planning/roster.ts';
import { inDaytime } from '../quiet-hours.ts';
import type { FamilyAlert } from '../replies/family.ts';
import type { Standing } from '../standing.ts';
import { type Notice, newsHoldsMs, notice } from './notice.ts';
import { rosterOf } from './roster-of.ts';

/** To those whom somebody else's word concerns: who steps in, who was named. */
export function noticesOfArrangements(
  standing: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const { greenhouse, arrangements } = standing;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  return arrangements.flatMap((each, n): readonly Notice[] => {
    if (nowMs - each.atMs > newsHoldsMs * 2) return [];
    const atMs = inDaytime(each.atMs, greenhouse.timeZone);
    if (each.kind === 'covers') {
      const absence = roster.absences.find(
        ({ from, until }) => from <= each.until && each.from <= until && until >= today,
      );
      return each.handles
        .filter((handle) => handle !== each.byHandle)
        .map((handle) => {
          const { byHandle: _by, atMs: _at, ...settled } = each;
          const alert: FamilyAlert =
            absence && !isMoreOfTheSame(standing, n, handle, absence)
              ? {
                  kind: 'your-days',
                  away: absence.handle,
                  from: absence.from,
                  until: absence.until,
                  days: daysOf(roster, handle, absence.from, absence.until),
                }
              : { kind: 'named-for', by: each.byHandle, settled };
          return notice(`covers:${n}:${handle}`, atMs, handle, alert);
        });
    }
    if (each.kind === 'cannot-go' && each.handle !== null) {
      const passed = ofTurnsPassed(each, each.handle, n, standing, roster, atMs);
      return [...passed, ...ofDaysDropped(each, each.handle, n, standing, atMs)];
    }
    if (each.kind === 'claim' && each.handle !== each.byHandle) {
      const { byHandle, atMs: _at, ...settled } = each;
      return [
        notice(`claim:${n}`, atMs, each.handle, { kind: 'named-for', by: byHandle, settled }),
      ];
    }
    return [];
  });
}

/** Told of an absence and of their days before, and none of those is another's now. */
function isMoreOfTheSame(
  standing: Standing,
  n: number,
  handle: string,
  { from, until }: Absence,
): boolean {
  const earlier = settledBefore(standing.arrangements, n);
  const wasTold = earlier.some(
    (each) =>
      each.kind === 'covers' &&
      each.handles.includes(handle) &&
      each.from <= until &&
      from <= each.until,
  );
  if (!wasTold) return false;
  const after = settledBefore(standing.arrangements, n + 1);
  const days = daysOf(rosterOf(standing, after), handle, from, until);
  return daysOf(rosterOf(standing, earlier), handle, from, until).every((day) =>
    days.includes(day),
  );
}

/** While the grower is away: to whoever has the turn of somebody who cannot go, or else to the grower. */
function ofTurnsPassed(
  { from, until, reason }: Extract<Arrangement, { kind: 'cannot-go' }>,
  by: string,
  n: number,
  standing: Standing,
  roster: Roster,
  atMs: number,
): readonly Notice[] {
  const { greenhouse, arrangements } = standing;
  const before = rosterOf(standing, arrangements.slice(0, n));
  const growers = greenhouse.members.filter(({ role }) => role === 'grower');
  const passed = new Map<string | null, LocalDate[]>();
  for (let date = from; date <= until; date = plusDays(date, 1)) {
    const isAway = growers.some(({ handle }) => roster.absenceOn(handle, date));
    if (!isAway || before.coversOn(date)[0] !== by) continue;
    const to = roster.coversOn(date)[0] ?? null;
    passed.set(to, [...(passed.get(to) ?? []), date]);
  }
  return [...passed].flatMap(([to, days]) => {
    const alert = { kind: 'turn-passed', by, days, reason, isYours: to !== null } as const;
    const readers = to === null ? growers.map(({ handle }) => handle) : [to];
    return readers
      .filter((handle) => handle !== by)
      .map((handle) => notice(`passed:${n}:${handle}`, atMs, handle, alert));
  });
}

/** To growers, whether they are at home or not: all the days of a helper are given up, and no single one. */
function ofDaysDropped(
  { from, until, reason, byHandle }: Extract<Arrangement, { kind: 'cannot-go' }>,
  by: string,
  n: number,
  standing: Standing,
  atMs: number,
): readonly Notice[] {
  const { greenhouse, arrangements } = standing;
  const before = rosterOf(standing, settledBefore(arrangements, n));
  const after = rosterOf(standing, settledBefore(arrangements, n + 1));
  const last = plusDays(from, daysLookedAt);
  const turns = daysOf(before, by, from, last);
  const isAll = turns.length >= severalTurns && daysOf(after, by, from, last).length === 0;
  if (!isAll || turns.at(-1)! > until) return [];
  const alert = { kind: 'days-dropped', by, from, until, turns: turns.length, reason } as const;
  return greenhouse.members
    .filter(({ role, handle }) => role === 'grower' && handle !== byHandle && handle !== by)
    .map(({ handle }) => notice(`dropped:${n}:${handle}`, atMs, handle, alert));
}

/** Six weeks: as far as turns are given up at once. */
const daysLookedAt = 41;

/** Fewer are a day off. */
const severalTurns = 2;

function daysOf(roster: Roster, handle: string, from: LocalDate, until: LocalDate): LocalDate[] {
  const days: LocalDate[] = [];
  for (let date = from; date <= until; date = plusDays(date, 1)) {
    if (roster.coversOn(date).includes(handle)) days.push(date);
  }
  return days;
}
