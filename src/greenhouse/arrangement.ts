import type { DutyKind } from './duty.ts';
import type { LocalDate } from './local-time.ts';
import type { SystemId } from './system.ts';

/** What the household settles among its people: who is away, who goes when, who takes what. Days are inclusive. */
export type ArrangementDraft =
  | {
      readonly kind: 'away';
      readonly handle: string;
      readonly from: LocalDate;
      readonly until: LocalDate;
    }
  /** There again from this day on: what is left of an absence is over. */
  | { readonly kind: 'back'; readonly handle: string; readonly on: LocalDate }
  /** What the member wants to hear while away, besides alerts. */
  | { readonly kind: 'news'; readonly handle: string; readonly every: 'day' | 'never' }
  /** These go on those days, one after the other where there are several. */
  | {
      readonly kind: 'covers';
      readonly handles: readonly string[];
      readonly from: LocalDate;
      readonly until: LocalDate;
    }
  /** handle null: nobody can go. */
  | {
      readonly kind: 'cannot-go';
      readonly handle: string | null;
      readonly from: LocalDate;
      readonly until: LocalDate;
      readonly reason: string | null;
    }
  /** Can go on those days after all, whatever was told before. */
  | {
      readonly kind: 'can-go';
      readonly handle: string;
      readonly from: LocalDate;
      readonly until: LocalDate;
    }
  /** The weekdays on which the member goes, Monday 1 to Sunday 7. */
  | { readonly kind: 'rota'; readonly handle: string; readonly weekdays: readonly number[] }
  /** Takes the duties of one system, or of one kind; both null: all of that day. */
  | {
      readonly kind: 'claim';
      readonly handle: string;
      readonly system: SystemId | null;
      readonly duty: DutyKind | null;
      readonly on: LocalDate;
      readonly isEvening: boolean;
    }
  /** Gives back what was taken. */
  | {
      readonly kind: 'release';
      readonly handle: string;
      readonly system: SystemId | null;
      readonly on: LocalDate;
      readonly reason: string | null;
    };

/** What was settled is as if it had never been: by its places among all that was ever settled, from 0. */
export interface TakenBack {
  readonly kind: 'taken-back';
  readonly places: readonly number[];
  /** What stood in this place until then, and the place that took it back; folded, never stored. */
  readonly stood?: { readonly settled: Arrangement; readonly until: number };
}

/** One thing settled. Append-only: what is settled later stands over what was settled before. */
export type Arrangement = (ArrangementDraft | TakenBack) & {
  readonly byHandle: string;
  readonly atMs: number;
};

/** All that was settled, in its place; where something was taken back, that it was and what it was. */
export function withSettled(
  before: readonly Arrangement[],
  more: readonly Arrangement[],
): readonly Arrangement[] {
  const all = [...before, ...more];
  for (const [i, each] of more.entries()) {
    if (each.kind !== 'taken-back') continue;
    for (const place of each.places) {
      const settled = all[place];
      if (!settled) continue;
      const until = before.length + i;
      all[place] = { ...each, places: [], stood: { settled, until } };
    }
  }
  return all;
}

/** All that was settled before the one in a place, as it stood then. */
export function settledBefore(all: readonly Arrangement[], place: number): readonly Arrangement[] {
  return all.slice(0, place).map((each) => {
    const stood = each.kind === 'taken-back' ? each.stood : undefined;
    return stood && stood.until >= place ? stood.settled : each;
  });
}
