import { type Arrangement, settledBefore } from '../../greenhouse/arrangement.ts';
import { type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { Roster } from '../../planning/roster.ts';
import { inDaytime } from '../quiet-hours.ts';
import type { Standing } from '../standing.ts';
import { type Notice, newsHoldsMs, notice } from './notice.ts';
import { rosterOf } from './roster-of.ts';

/** To whoever had been told to go, or had taken something, and need not any more. */
export function noticesOfRelief(standing: Standing, nowMs: number): readonly Notice[] {
  const { arrangements } = standing;
  return arrangements.flatMap((each, place): readonly Notice[] => {
    const isNews = nowMs - each.atMs <= newsHoldsMs * 2 && !isTakenBack(each);
    if (!isNews || isOneWord(arrangements[place - 1], each)) return [];
    let end = place + 1;
    while (isOneWord(arrangements[end], each)) end += 1;
    const change = changeOf(standing, place, end);
    return [...ofDays(change, standing), ...ofClaims(change)];
  });
}

/** What one word of a member changed. */
interface Change {
  readonly place: number;
  readonly by: string;
  readonly on: LocalDate;
  readonly atMs: number;
  readonly settled: readonly Arrangement[];
  /** All that was settled before and after it, as it stood then. */
  readonly earlier: readonly Arrangement[];
  readonly before: Roster;
  readonly after: Roster;
}

function changeOf(standing: Standing, place: number, end: number): Change {
  const { greenhouse, arrangements } = standing;
  const earlier = settledBefore(arrangements, place);
  const { byHandle, atMs } = arrangements[place]!;
  return {
    place,
    by: byHandle,
    on: localDateOf(atMs, greenhouse.timeZone),
    atMs: inDaytime(atMs, greenhouse.timeZone),
    settled: settledBefore(arrangements, end).slice(place),
    earlier,
    before: rosterOf(standing, earlier),
    after: rosterOf(standing, settledBefore(arrangements, end)),
  };
}

function isOneWord(one: Arrangement | undefined, other: Arrangement): boolean {
  if (!one || isTakenBack(one)) return false;
  return one.atMs === other.atMs && one.byHandle === other.byHandle;
}

/** Its place tells of nothing any more; that it was taken back stands in a later one. */
function isTakenBack(each: Arrangement): boolean {
  return each.kind === 'taken-back' && each.stood !== undefined;
}

function ofDays(change: Change, standing: Standing): readonly Notice[] {
  const { place, by, atMs, settled } = change;
  const growers = standing.greenhouse.members
    .filter(({ role }) => role === 'grower')
    .map(({ handle }) => handle);
  return standing.greenhouse.members
    .filter(({ handle }) => handle !== by)
    .flatMap(({ handle }): readonly Notice[] => {
      const told = daysTold(handle, change, growers);
      const days = told.filter((day) => goerOn(day, change, growers) !== handle);
      const isNamedAnew = settled.some(
        (each) => each.kind === 'covers' && each.handles.includes(handle),
      );
      // Whoever is put down anew is told all the days that are theirs now.
      if (isNamedAnew && days.length < told.length) return [];
      const isUndone = settled.some(({ kind }) => kind === 'taken-back');
      const still = isUndone
        ? told.filter((day) => wasNamed(handle, day, change) && !days.includes(day))
        : [];
      if (days.length === 0 && still.length === 0) return [];
      const instead = new Set(days.flatMap((day) => goerOn(day, change, growers) ?? []));
      const alert = {
        kind: 'relieved',
        by,
        days,
        instead: [...instead],
        still,
      } as const;
      return [notice(`relieved:${place}:${handle}`, atMs, handle, alert)];
    });
}

/** Days still to come on which it was their turn, and that they had been told of. */
function daysTold(
  handle: string,
  change: Change,
  growers: readonly string[],
): readonly LocalDate[] {
  const { before, earlier, on } = change;
  const days = earlier.flatMap((each) => {
    const said = each.kind === 'taken-back' ? each.stood?.settled : each;
    if (!said || !isToldTo(said, handle)) return [];
    const days = daysBetweenBoth(said.from < on ? on : said.from, said.until);
    if (said.kind === 'covers') return days;
    // That somebody cannot go is told to whoever comes next only while a grower is away.
    return days.filter((day) => growers.some((each) => before.absenceOn(each, day)));
  });
  return [...new Set(days)].toSorted().filter((day) => before.coversOn(day).includes(handle));
}

/** By whoever put them down, or by whoever could not go, so that their turn came. */
function isToldTo(
  said: Arrangement,
  handle: string,
): said is Extract<Arrangement, { kind: 'covers' | 'cannot-go' }> {
  if (said.kind === 'covers') return said.handles.includes(handle);
  return said.kind === 'cannot-go' && said.handle !== null && said.handle !== handle;
}

/** Put down for that day by a word that stood until now. */
function wasNamed(handle: string, day: LocalDate, { earlier, settled }: Change): boolean {
  const places = settled.flatMap((each) => (each.kind === 'taken-back' ? each.places : []));
  return places.some((place) => {
    const each = earlier[place];
    return (
      each?.kind === 'covers' &&
      each.handles.includes(handle) &&
      each.from <= day &&
      day <= each.until
    );
  });
}

/** Who goes on a day after a change: with a grower at home again, nobody steps in. */
function goerOn(day: LocalDate, { before, after }: Change, growers: readonly string[]) {
  const isAnyAway = (roster: Roster) => growers.some((each) => roster.absenceOn(each, day));
  const isHomeAgain = isAnyAway(before) && !isAnyAway(after);
  const home = growers.find((each) => after.canGo(each, day));
  return (isHomeAgain ? home : undefined) ?? after.coversOn(day)[0] ?? null;
}

/** Claims of another that somebody took over, or took back. */
function ofClaims({ place, by, on, atMs, earlier, before, after }: Change): readonly Notice[] {
  const dates = new Set(earlier.flatMap((each) => (each.kind === 'claim' ? [each.on] : [])));
  return [...dates]
    .filter((date) => date >= on)
    .flatMap((date) =>
      before.claimsOn(date).flatMap((claim): readonly Notice[] => {
        const { byHandle: _by, atMs: _at, ...settled } = claim;
        const duty = { kind: claim.duty ?? 'top-up', system: claim.system, dueOn: date } as const;
        const now = after.claimOf(duty, date)?.handle ?? null;
        const isTheirs = before.claimOf(duty, date)?.handle === claim.handle;
        if (claim.handle === by || !isTheirs || now === claim.handle) return [];
        const key = `claim-off:${place}:${claim.handle}:${claim.system}:${date}`;
        const alert = { kind: 'claim-off', by, settled, instead: now } as const;
        return [notice(key, atMs, claim.handle, alert)];
      }),
    );
}

function daysBetweenBoth(from: LocalDate, until: LocalDate): readonly LocalDate[] {
  const days: LocalDate[] = [];
  for (let date = from; date <= until; date = plusDays(date, 1)) days.push(date);
  return days;
}
