import type { DutyKind } from '../../greenhouse/duty.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';

/** First and last day. */
export interface Days {
  readonly from: LocalDate;
  readonly until: LocalDate;
}

/** What a clause settles, or asks, about who goes when. */
export type Arranging =
  /** days null: not said. */
  | {
      readonly kind: 'away';
      readonly handle: string;
      readonly days: Days | null;
      /** From when was not said: as it was told before, or from today. */
      readonly isEndOnly?: true;
    }
  /** `isToCome`: not yet, and no day is said. */
  | {
      readonly kind: 'back';
      readonly handle: string;
      readonly on: LocalDate | null;
      readonly isToCome?: true;
    }
  | {
      readonly kind: 'cannot-go';
      readonly handle: string | null;
      /** null: on none of the days that are theirs. */
      readonly days: Days | null;
      /** The work of one system that is not done then; null: none is named. */
      readonly system: SystemId | null;
      readonly reason: string | null;
    }
  /** They can go after all; days null: on those on which they could not. */
  | { readonly kind: 'can-go'; readonly handle: string; readonly days: Days | null }
  /** handles empty: nobody; days null: all that are asked about. */
  | {
      readonly kind: 'covers';
      readonly handles: readonly string[];
      readonly days: Days | null;
      /** In the place of whoever was put down last: on those days, or where none are said on today. */
      readonly isInstead?: true;
      /** `my Monday`: on the next such day that is the speaker's. */
      readonly isOwn?: true;
    }
  | { readonly kind: 'rota'; readonly handle: string; readonly weekdays: readonly number[] }
  /** handle null: whoever will. */
  | {
      readonly kind: 'claim';
      readonly handle: string;
      readonly system: SystemId | null;
      readonly duty: DutyKind | null;
      readonly days: Days;
      readonly isEvening: boolean;
      /** `it`, `that`: what was spoken of last, and nothing else is named. */
      readonly isIt?: true;
    }
  | { readonly kind: 'release'; readonly system: SystemId | null; readonly on: LocalDate }
  | { readonly kind: 'news'; readonly every: 'day' | 'never' }
  | { readonly kind: 'who-goes'; readonly days: Days | null }
  /** When somebody is there again. */
  | { readonly kind: 'when-back'; readonly handle: string }
  /** Somebody is asked to do one piece of work that belongs to no system named: what cannot be settled so. */
  | { readonly kind: 'one-chore'; readonly handle: string; readonly days: Days }
  /** days: an absence that is only thought of. */
  | { readonly kind: 'plan'; readonly days: Days | null }
  /** probes: which of them it speaks of, by name. */
  | {
      readonly kind: 'how-to';
      readonly system: SystemId | null;
      readonly duty: DutyKind | null;
      readonly probes: readonly string[];
    };
