import type { Arrangement } from '../greenhouse/arrangement.ts';
import type { Duty } from '../greenhouse/duty.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { daysBetween, type LocalDate, localTimeOf, plusDays } from '../greenhouse/local-time.ts';

export interface Absence {
  readonly handle: string;
  readonly from: LocalDate;
  /** The last day away. */
  readonly until: LocalDate;
  /** When it was told. */
  readonly toldAtMs: number;
}

type Of<Kind extends Arrangement['kind']> = Extract<Arrangement, { readonly kind: Kind }>;

/** Who is there, who goes and who took what: folded from all that was settled, the latest standing. */
export class Roster {
  readonly #members: Greenhouse['members'];
  readonly #settled: readonly Arrangement[];
  readonly #unjoined: readonly string[];
  readonly absences: readonly Absence[];

  /** `unjoined`: members whom nothing reaches yet; they go where somebody named them, and not else. */
  constructor(
    greenhouse: Pick<Greenhouse, 'members'>,
    settled: readonly Arrangement[],
    unjoined: readonly string[] = [],
  ) {
    this.#members = greenhouse.members;
    this.#settled = settled;
    this.#unjoined = unjoined;
    this.absences = absencesOf(settled);
  }

  absenceOn(handle: string, date: LocalDate): Absence | null {
    return this.absences.find((each) => each.handle === handle && isWithin(date, each)) ?? null;
  }

  /** The day on which the first grower is there again; null: one is there on `date`. */
  growerBackOn(date: LocalDate): LocalDate | null {
    const absences = this.#members
      .filter(({ role }) => role === 'grower')
      .map(({ handle }) => this.absenceOn(handle, date));
    const untils = absences.flatMap((absence) => absence?.until ?? []).toSorted();
    const [soonest] = untils;
    return soonest === undefined || untils.length < absences.length ? null : plusDays(soonest, 1);
  }

  /** Neither away nor hindered on that day. */
  canGo(handle: string, date: LocalDate): boolean {
    if (this.absenceOn(handle, date)) return false;
    const declined = this.#settled.findLastIndex(
      (each) =>
        (each.kind === 'cannot-go' || each.kind === 'can-go') &&
        isWithin(date, each) &&
        isOf(each, handle),
    );
    const last = this.#settled[declined];
    if (last?.kind !== 'cannot-go') return true;
    const isOwn = last.handle !== null;
    // Whoever takes a day over after having declined it can go after all.
    return this.#settled
      .slice(declined + 1)
      .some(
        (each) =>
          each.kind === 'covers' &&
          isWithin(date, each) &&
          each.handles.includes(handle) &&
          (!isOwn || isMeantFor(each, handle)),
      );
  }

  /**
   * Whose turn it is to go on a day; empty: nobody can. Where nobody said who, the
   * grower goes, and while all growers are away the helpers take turns, some days each.
   */
  coversOn(date: LocalDate): readonly string[] {
    const named = this.#settled.findLast(
      (each): each is Of<'covers'> => each.kind === 'covers' && isWithin(date, each),
    );
    if (named) {
      const turn = this.#inTurn(named.handles, named, date);
      if (turn.length > 0) return turn;
      if (named.handles.length === 0 && !this.#growerOn(date)) return [];
    }
    const regular = this.#regularsOn(date);
    if (regular.length > 0) return regular;
    const grower = this.#growerOn(date);
    if (grower) return [grower];
    const growers = this.#members.filter(({ role }) => role === 'grower');
    const absence = growers.flatMap(({ handle }) => this.absenceOn(handle, date) ?? [])[0];
    return this.#inTurn(this.#helpers(), absence ?? { from: date, until: date }, date);
  }

  /** All who could be asked to go on a day, whoever's turn it is. */
  ableOn(date: LocalDate): readonly string[] {
    return this.#members
      .map(({ handle }) => handle)
      .filter((handle) => !this.#unjoined.includes(handle) && this.canGo(handle, date));
  }

  /** Days ahead of `today`, 0 being today: can anybody go? */
  canGoAhead(today: LocalDate, days: number): readonly boolean[] {
    if (this.#settled.length === 0) return Array.from({ length: days }, () => true);
    return Array.from(
      { length: days },
      (_, ahead) => this.coversOn(plusDays(today, ahead)).length > 0,
    );
  }

  /** Who took this duty for that day; null: nobody, or it was given back. */
  claimOf(duty: Duty, date: LocalDate): Of<'claim'> | null {
    const last = this.#settled.findLast((each): each is Of<'claim'> | Of<'release'> => {
      if (each.kind === 'claim') return each.on === date && isAbout(each, duty);
      return each.kind === 'release' && each.on === date && isAboutSystem(each, duty);
    });
    return last?.kind === 'claim' ? last : null;
  }

  claimsOn(date: LocalDate): readonly Of<'claim'>[] {
    return this.#settled.filter((each): each is Of<'claim'> => {
      if (each.kind !== 'claim' || each.on !== date) return false;
      return !this.#settled.some(
        (other) =>
          other.kind === 'release' &&
          other.handle === each.handle &&
          other.on === date &&
          other.atMs >= each.atMs &&
          (other.system === null || other.system === each.system),
      );
    });
  }

  /** Whether the last word on these days is that the member goes, said by the member. */
  tookOver(handle: string, { from, until }: { from: LocalDate; until: LocalDate }): boolean {
    const last = this.#settled.findLast(
      (each): each is Of<'covers'> =>
        each.kind === 'covers' && each.from <= until && from <= each.until,
    );
    const isTheirs = last?.byHandle === handle && last.handles.every((each) => each === handle);
    return isTheirs && last.handles.length > 0 && last.from <= from && until <= last.until;
  }

  /** The weekdays on which somebody said to go, Monday 1; null: nothing was said. */
  rotaOf(handle: string): readonly number[] | null {
    const last = this.#settled.findLast(
      (each): each is Of<'rota'> => each.kind === 'rota' && each.handle === handle,
    );
    return last && last.weekdays.length > 0 ? last.weekdays : null;
  }

  /** Whether the member wants a line a day while away: yes, unless told otherwise. */
  wantsNews(handle: string): boolean {
    const last = this.#settled.findLast(
      (each): each is Of<'news'> => each.kind === 'news' && each.handle === handle,
    );
    return last?.every !== 'never';
  }

  #regularsOn(date: LocalDate): readonly string[] {
    const weekday = weekdayOf(date);
    return this.#members
      .map(({ handle }) => handle)
      .filter(
        (handle) => this.rotaOf(handle)?.includes(weekday) === true && this.canGo(handle, date),
      );
  }

  #growerOn(date: LocalDate): string | null {
    const growers = this.#members.filter(({ role }) => role === 'grower');
    return growers.find(({ handle }) => this.canGo(handle, date))?.handle ?? null;
  }

  /** Whoever keeps to weekdays of their own is not asked on others, nor who would hear of nothing. */
  #helpers(): readonly string[] {
    return this.#members
      .filter(({ role, handle }) => role === 'helper' && this.rotaOf(handle) === null)
      .map(({ handle }) => handle)
      .filter((handle) => !this.#unjoined.includes(handle));
  }

  /** Of several the one whose day it is, or who comes next where that one cannot; empty: none can. */
  #inTurn(
    handles: readonly string[],
    { from, until }: { readonly from: LocalDate; readonly until: LocalDate },
    date: LocalDate,
  ): readonly string[] {
    const daysEach = Math.min(
      MOST_DAYS_IN_TURN,
      Math.ceil((daysBetween(from, until) + 1) / handles.length),
    );
    const first = Math.floor(daysBetween(from, date) / daysEach);
    const inOrder = handles.map((_, i) => handles[(first + i) % handles.length]!);
    const able = inOrder.find((handle) => this.canGo(handle, date));
    return able === undefined ? [] : [able];
  }
}

/** Some days in a row are easier to keep in mind, and trips a few days apart go round fairly. */
const MOST_DAYS_IN_TURN = 3;

export function weekdayOf(date: LocalDate): number {
  return localTimeOf(Date.parse(`${date}T12:00:00Z`), 'utc').weekday;
}

function isWithin(date: LocalDate, days: { from: LocalDate; until: LocalDate }): boolean {
  return days.from <= date && date <= days.until;
}

/** Said by themselves, or of them alone for that one day: no stretch that others fill overrides `I can't on Friday`. */
function isMeantFor({ byHandle, handles, from, until }: Of<'covers'>, handle: string): boolean {
  return byHandle === handle || (handles.length === 1 && from === until);
}

function isOf({ handle }: Of<'cannot-go'> | Of<'can-go'>, member: string): boolean {
  return handle === null || handle === member;
}

function isAbout(claim: Of<'claim'>, duty: Duty): boolean {
  return isAboutSystem(claim, duty) && (claim.duty === null || claim.duty === duty.kind);
}

function isAboutSystem({ system }: Of<'claim'> | Of<'release'>, duty: Duty): boolean {
  return system === null || system === duty.system;
}

/** Absences as they turned out: an earlier return shortens them, a later word replaces them. */
function absencesOf(settled: readonly Arrangement[]): readonly Absence[] {
  let absences: readonly Absence[] = [];
  for (const each of settled) {
    if (each.kind === 'away') {
      const { handle, from, until, atMs } = each;
      // Told anew with another end, it is the same absence.
      const same = absences.find((other) => other.handle === handle && other.from === from);
      const others = absences.filter(
        (other) => other.handle !== handle || other.until < from || other.from > until,
      );
      absences = [...others, { handle, from, until, toldAtMs: same?.toldAtMs ?? atMs }];
    }
    if (each.kind === 'back') {
      absences = absences.flatMap((absence): Absence[] => {
        if (absence.handle !== each.handle || !isWithin(each.on, absence)) return [absence];
        return absence.from === each.on ? [] : [{ ...absence, until: plusDays(each.on, -1) }];
      });
    }
  }
  return absences;
}
