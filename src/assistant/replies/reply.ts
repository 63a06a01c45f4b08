import type { Entry } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { SetUpChange, UnfitChange } from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { DutyMark } from '../../planning/duty-mark.ts';
import type { RainLine } from '../../planning/rain-left.ts';
import type { StockLine } from '../../planning/stock-outlook.ts';
import type { Doubt } from '../../understanding/doubt.ts';
import type { Assumption } from '../../understanding/statement.ts';
import type { AdviceAlert, AdviceRemark } from './advice.ts';
import type { Answer } from './answer.ts';
import type { FamilyAlert } from './family.ts';
import type { NotDelivered } from './household-news.ts';

/** What the bot says, as data; `wording/` turns it into sentences for the reader. */
export type Reply =
  | Receipt
  | { readonly kind: 'question'; readonly questionId: string; readonly doubt: Doubt }
  | { readonly kind: 'answer'; readonly answer: Answer }
  | Round
  | { readonly kind: 'alert'; readonly alert: Alert }
  | { readonly kind: 'refusal'; readonly because: Refusal }
  | Correction;

/** Something was written into the logbook. */
export interface Receipt {
  readonly kind: 'receipt';
  readonly logged: readonly Entry[];
  readonly assumptions: readonly Assumption[];
  readonly remarks: readonly Remark[];
}

/** Entries were struck out, and perhaps others stand in their place. */
export interface Correction {
  readonly kind: 'correction';
  readonly struck: readonly Entry[];
  readonly logged: readonly Entry[];
  readonly remarks: readonly Remark[];
}

export interface Round {
  readonly kind: 'round';
  readonly date: LocalDate;
  /** Sent after its time, since nothing ran at its time. */
  readonly isLate: boolean;
  readonly duties: readonly DutyLine[];
  /** What is to be bought. */
  readonly shopping?: readonly StockLine[];
  /** The rain butt, when it is nearly empty. */
  readonly rain?: RainLine;
  /** Who goes today, where it is not the grower. */
  readonly covers?: readonly string[];
  /** One line only: the reader is away, and others see to it. */
  readonly isBrief?: true;
  /** What is to be done without the reckoning: the reader steps in for the one who knows. */
  readonly isPlain?: true;
  /** What became of each duty since, in their order; absent when it goes out. */
  readonly marks?: readonly (DutyMark | null)[];
}

/** What a receipt adds: what the reading means, and what is next. */
export type Remark =
  | AdviceRemark
  | {
      readonly kind: 'outside-range';
      readonly entry: Entry;
      readonly lowest: number;
      readonly highest: number;
    }
  /** In range of belief, but far from what the last readings allow: please measure again. */
  | { readonly kind: 'far-from-expected'; readonly entry: Entry; readonly expected: number }
  /** Something is wrong, and these are told of it. */
  | { readonly kind: 'trouble'; readonly told: readonly string[] }
  | { readonly kind: 'already-known' }
  | { readonly kind: 'lasts-until'; readonly system: SystemId; readonly date: LocalDate };

export type Alert =
  | AdviceAlert
  | FamilyAlert
  | NotDelivered
  | { readonly kind: 'messages-may-be-lost'; readonly hours: number };

export type Refusal =
  /** A message was changed that the member never sent to the bot. */
  | { readonly kind: 'edit-of-unknown' }
  | { readonly kind: 'not-yours'; readonly entries: readonly Entry[] }
  /** `isReport`: it was told what was done, and not wished for. */
  | { readonly kind: 'growers-change-set-up'; readonly isReport?: true }
  | {
      readonly kind: 'unfit-change';
      readonly change: SetUpChange;
      readonly because: UnfitChange;
    }
  /** It is for the grower, or for whoever it is about. */
  | { readonly kind: 'not-for-you' }
  | { readonly kind: 'cannot-handle' };
