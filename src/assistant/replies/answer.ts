import type { Entry, Supply } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Cautions } from '../../planning/caution.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { WhatIf } from '../../planning/what-if/what-if.ts';
import type { ExplainedTerm } from '../../understanding/wishes/wish.ts';
import type { AdviceAnswer } from './advice.ts';
import type { FamilyAnswer } from './family.ts';
import type { HouseholdNews } from './household-news.ts';
import type { KeepingAnswer } from './keeping.ts';
import type { Picture } from './picture.ts';
import type { PlainAnswer } from './plain.ts';

/** How long a system's water lasts, in local dates; null: not within 60 days. */
export interface Lasting {
  readonly system: SystemId;
  readonly litres: number;
  readonly usePerDayL: number;
  readonly lowOnEarly: LocalDate | null;
  readonly lowOnLikely: LocalDate | null;
  readonly lowOnLate: LocalDate | null;
}

export type Answer =
  | AdviceAnswer
  | FamilyAnswer
  | KeepingAnswer
  | PlainAnswer
  | {
      readonly kind: 'due';
      readonly system: SystemId | null;
      readonly today: LocalDate;
      readonly duties: readonly DutyLine[];
      /** The next ones, where nothing is due today. */
      readonly next: readonly DutyLine[];
      /** Work with strong acid or alkali that the member was not shown. */
      readonly leftToGrower?: readonly DutyLine[];
    }
  | { readonly kind: 'why'; readonly duties: readonly DutyLine[]; readonly exactly: boolean }
  | { readonly kind: 'what-if'; readonly told: WhatIf }
  | {
      readonly kind: 'when-next';
      readonly duties: readonly DutyLine[];
      /** All that is due up to this day. */
      readonly by?: LocalDate;
      /** With how often each comes round. */
      readonly isOften?: true;
    }
  | { readonly kind: 'how-full'; readonly systems: readonly HowFull[] }
  | { readonly kind: 'how-long'; readonly systems: readonly Lasting[] }
  | {
      readonly kind: 'last-reading';
      readonly quantity: Quantity;
      readonly entries: readonly Entry[];
    }
  | {
      readonly kind: 'use';
      readonly from: LocalDate;
      readonly to: LocalDate;
      /** By how much each uses a day, most first. */
      readonly isRanked?: true;
      readonly systems: readonly {
        readonly system: SystemId;
        readonly toppedUpL: number;
        readonly usePerDayL: number;
      }[];
    }
  | {
      readonly kind: 'is-it-right';
      readonly quantity: Quantity;
      readonly systems: readonly {
        readonly system: SystemId;
        readonly value: number | null;
        readonly lowest: number;
        readonly highest: number;
      }[];
    }
  /** `setUp`: what the set-up says of it, where nobody has logged it. */
  | {
      readonly kind: 'who';
      readonly entries: readonly Entry[];
      readonly setUp: readonly { readonly name: string; readonly on: LocalDate }[];
    }
  /** `picture`: the system's water, where one alone is shown. */
  | { readonly kind: 'show'; readonly systems: readonly Portrait[]; readonly picture?: Picture }
  | { readonly kind: 'picture'; readonly picture: Picture }
  | { readonly kind: 'nothing-to-take-back' }
  /** `I meant the bench`, where nothing was told that it would be about. */
  | { readonly kind: 'nothing-to-put-right' }
  /** Nothing that was struck out waits to be put back. */
  | { readonly kind: 'nothing-to-put-back' }
  | { readonly kind: 'nothing-open' }
  /** The question had been answered or had lapsed. */
  | { readonly kind: 'too-late' }
  | { readonly kind: 'left-out' }
  | { readonly kind: 'thanks' }
  | { readonly kind: 'greeted' }
  /** Chatter that asks for nothing. */
  | { readonly kind: 'heard' }
  | { readonly kind: 'cannot-tell'; readonly because: 'not-built' | 'nothing-logged' }
  | { readonly kind: 'household'; readonly news: HouseholdNews }
  | { readonly kind: 'help' }
  | { readonly kind: 'introduction' }
  /** Something was to be reminded of once, which is not done. */
  | { readonly kind: 'no-single-reminder' }
  | { readonly kind: 'explained'; readonly term: ExplainedTerm }
  /** What is out, else what was out last; none: nothing of it was ever told. */
  | {
      readonly kind: 'supply';
      readonly of: Supply;
      readonly outages: readonly {
        readonly system: SystemId | null;
        readonly sinceMs: number;
        readonly untilMs: number | null;
      }[];
    }
  /** Notes that name what somebody looks for. */
  | { readonly kind: 'where'; readonly what: string; readonly notes: readonly Entry[] }
  | { readonly kind: 'safety'; readonly cautions: Cautions }
  | { readonly kind: 'unknown' };

/** A system as it stands: its water, its last readings, its next duties. */
export interface Portrait {
  readonly lasting: Lasting;
  readonly readings: readonly Entry[];
  readonly duties: readonly DutyLine[];
}

/** How much a system holds by now, and what that rests on. */
export interface HowFull {
  readonly system: SystemId;
  /** Nine in ten times between the bounds; null: nobody has said yet. */
  readonly now: { readonly litres: number; readonly leastL: number; readonly mostL: number } | null;
  /** The last level or change of solution. */
  readonly last: Entry | null;
  /** The top-ups after it. */
  readonly topUps: readonly Entry[];
}
