import type { ArrangementDraft } from '../../greenhouse/arrangement.ts';
import type { Duty } from '../../greenhouse/duty.ts';
import type { Danger, Entry, Trouble } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { PhotoRef } from '../../greenhouse/photo.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { AwayPlan } from '../../planning/family/away-plan.ts';
import type { HomeStory } from '../../planning/family/home-story.ts';
import type { HowTo } from '../../planning/family/how-to.ts';
import type { NudgeStage } from '../../planning/family/nudges.ts';
import type { AdviceAlert } from './advice.ts';

/** What the bot answers about who goes when. */
export type FamilyAnswer =
  | {
      readonly kind: 'settled';
      readonly items: readonly ArrangementDraft[];
      /** Claims that somebody else had made before: theirs stand no more. */
      readonly instead: readonly { readonly handle: string }[];
      /** Named in it, and not reached by anything: somebody has to tell them. */
      readonly unjoined?: readonly string[];
    }
  /** Of days on which somebody can go after all; `was`: what stood against it, nothing is settled but where they were hindered. */
  | {
      readonly kind: 'after-all';
      readonly handle: string;
      readonly from: LocalDate;
      readonly until: LocalDate;
      readonly was: 'hindered' | 'free' | 'away';
      /** Those of the days that are theirs now. */
      readonly turns: readonly LocalDate[];
      /** Whose the others are. */
      readonly others: readonly string[];
    }
  /** What was settled holds no more. */
  | { readonly kind: 'unsettled'; readonly items: readonly ArrangementDraft[] }
  | {
      readonly kind: 'away-plan';
      readonly handle: string;
      readonly plan: AwayPlan;
      /** Only asked about; nothing was settled. */
      readonly isThought: boolean;
    }
  | {
      readonly kind: 'home-coming';
      readonly story: HomeStory;
      /** What was said unasked meanwhile and stands in no entry. */
      readonly alerts: readonly AlertTold[];
      /** What is due today, and next. */
      readonly today: readonly DutyLine[];
      readonly next: readonly DutyLine[];
    }
  | {
      readonly kind: 'roster';
      readonly days: readonly { readonly date: LocalDate; readonly handles: readonly string[] }[];
      readonly claims: readonly ClaimTold[];
    }
  /** When the asker has to go, and what is due next. */
  | {
      readonly kind: 'my-turns';
      readonly days: readonly LocalDate[];
      /** Nobody else goes: no day is more theirs than another. */
      readonly isEveryDay: boolean;
      readonly claims: readonly ClaimTold[];
      readonly next: readonly DutyLine[];
    }
  | { readonly kind: 'how-to'; readonly how: HowTo }
  /** A photo that was attached, with what was said of it. */
  | {
      readonly kind: 'photo';
      readonly photo: PhotoRef;
      readonly system: SystemId | null;
      readonly text: string;
    }
  /** Which work is meant: one of those on buttons, or it must be said. */
  | { readonly kind: 'no-such-duty'; readonly isChoice: boolean }
  | { readonly kind: 'nobody-away' }
  /** Who is or will be away, the first to go first. */
  | {
      readonly kind: 'who-is-away';
      readonly absences: readonly {
        readonly handle: string;
        readonly from: LocalDate;
        readonly until: LocalDate;
      }[];
    }
  /** Until when somebody is away: the day has to be said of whoever comes back sooner; null: is here. */
  | { readonly kind: 'back-when'; readonly handle: string; readonly until: LocalDate | null }
  /** One chore is not handed over by itself: how a day's work or a system's is. */
  | { readonly kind: 'one-chore'; readonly handle: string; readonly date: LocalDate }
  /** To whoever tells of what may hurt: what to do first, and who was told. */
  | { readonly kind: 'danger'; readonly of: Trouble; readonly told: readonly string[] };

export interface AlertTold {
  readonly atMs: number;
  readonly alert: Extract<AdviceAlert, { kind: 'surprise' | 'outage-reminder' }>;
}

export interface ClaimTold {
  readonly handle: string;
  readonly settled: Extract<ArrangementDraft, { kind: 'claim' }>;
}

/** What the bot says unasked about who goes when. */
export type FamilyAlert =
  | {
      readonly kind: 'undone';
      readonly stage: NudgeStage;
      /** Whose turn it was; null: nobody's. */
      readonly of: string | null;
      readonly duties: readonly Duty[];
    }
  /** To whoever steps in. */
  | {
      readonly kind: 'your-days';
      readonly away: string;
      readonly from: LocalDate;
      readonly until: LocalDate;
      readonly days: readonly LocalDate[];
    }
  /** To whoever had taken it: there is nothing left to do. */
  | { readonly kind: 'done-by-other'; readonly by: string; readonly duty: Duty }
  /** To growers, and to whoever covers: somebody saw that something is wrong. */
  | { readonly kind: 'trouble'; readonly entry: Entry }
  /** To growers, and to whoever covers, at once: somebody tells of what may hurt. */
  | {
      readonly kind: 'danger';
      readonly of: Danger;
      readonly by: string;
      readonly words: string;
      readonly system: SystemId | null;
    }
  /** To the others: it was given back, or could not be done. */
  | {
      readonly kind: 'given-back';
      readonly by: string;
      readonly duties: readonly Duty[];
      readonly reason: string | null;
    }
  /** To whoever's turn it is now that somebody cannot go; not `isYours`: to the grower, nobody can. */
  | {
      readonly kind: 'turn-passed';
      readonly by: string;
      readonly days: readonly LocalDate[];
      readonly reason: string | null;
      readonly isYours: boolean;
    }
  /** To growers: a helper goes on none of the days that were theirs. */
  | {
      readonly kind: 'days-dropped';
      readonly by: string;
      readonly from: LocalDate;
      readonly until: LocalDate;
      /** How many days of theirs that are. */
      readonly turns: number;
      readonly reason: string | null;
    }
  /** To whoever had been put down to go, and is not any more. */
  | {
      readonly kind: 'relieved';
      readonly by: string;
      /** Need not go; may be empty. */
      readonly days: readonly LocalDate[];
      /** Who goes then. */
      readonly instead: readonly string[];
      /** Put down no more, but in turn until somebody else is named. */
      readonly still: readonly LocalDate[];
    }
  /** To whoever had taken it: it is another's now, or nobody's. */
  | {
      readonly kind: 'claim-off';
      readonly by: string;
      readonly settled: Extract<ArrangementDraft, { kind: 'claim' }>;
      readonly instead: string | null;
    }
  /** To a grower who leaves today: what is still to be done. */
  | { readonly kind: 'leaving'; readonly plan: AwayPlan }
  /** To somebody who was named for it by another. */
  | {
      readonly kind: 'named-for';
      readonly by: string;
      readonly settled: Extract<ArrangementDraft, { kind: 'claim' | 'covers' }>;
    };
