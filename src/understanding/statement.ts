/**
 * What a message was understood to say. One message gives any number of statements: each clear part
 * is an entry, each doubt a question back, each question an answer owed.
 */
import type { CleanPart, Duty, DutyKind } from '../greenhouse/duty.ts';
import type { EntryDraft, EntryNo, LevelSaidAs, Supply, Trouble } from '../greenhouse/entry.ts';
import type { ConductivityUnit } from '../greenhouse/greenhouse.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { GuideProblem, GuideStep } from '../greenhouse/set-up/guide-step.ts';
import type { Planting, SetUpChange } from '../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { PlainAsk } from './asking/plain-ask.ts';

/** Half-open range of UTF-16 units in the folded text. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What the reader took for granted; the receipt tells it. */
export type Assumption =
  | { readonly kind: 'system-from-conversation'; readonly system: SystemId }
  | { readonly kind: 'bare-volume'; readonly unit: 'L' | 'gal' }
  | { readonly kind: 'bare-conductivity'; readonly unit: 'mS/cm' | 'µS/cm' }
  | { readonly kind: 'tds-factor'; readonly factor: number }
  | { readonly kind: 'shorthand' }
  | { readonly kind: 'brim-volume' }
  | { readonly kind: 'slip-in-name'; readonly written: string; readonly system: SystemId };

export interface EntryStatement {
  readonly kind: 'entry';
  readonly draft: EntryDraft;
  readonly span: Span;
  /** The recogniser and refiners that made it, for "why" and for debugging. */
  readonly because: readonly string[];
  readonly assumptions: readonly Assumption[];
}

/** Why something could not be logged as it stands. */
export type DoubtReason =
  /** ofSeveral: values that differ, which one system cannot have at once: of which systems, in their order. */
  | {
      readonly kind: 'which-system';
      readonly quantity: Quantity | null;
      /** What is written is the name of no system here. */
      readonly isNoName?: true;
      readonly written?: string;
      readonly ofSeveral?: true;
    }
  | { readonly kind: 'which-quantity'; readonly value: string }
  | { readonly kind: 'in-it-or-added'; readonly litres: number }
  /** `30 ml feed`: of which of the bottles in stock. */
  | { readonly kind: 'which-product'; readonly amount: string }
  | { readonly kind: 'which-unit'; readonly quantity: Quantity; readonly value: string }
  | {
      readonly kind: 'out-of-range';
      readonly quantity: Quantity;
      readonly value: number;
      readonly lowest: number;
      readonly highest: number;
    }
  | { readonly kind: 'conflict'; readonly quantity: Quantity; readonly values: readonly number[] }
  | { readonly kind: 'missing-amount'; readonly quantity: Quantity; readonly product?: string }
  /** `topped up to the brim`: the level was logged, the litres are asked for. */
  | { readonly kind: 'litres-to-brim' }
  | { readonly kind: 'shared-amount'; readonly quantity: Quantity; readonly amount: string }
  | { readonly kind: 'which-time'; readonly written: string }
  | { readonly kind: 'since-when'; readonly of: Supply; readonly written: string }
  /** It was out at some time, and nobody said how long; isUndated: nor when. */
  | { readonly kind: 'how-long-out'; readonly of: Supply; readonly isUndated?: true }
  /** `off at night now`: how it is set from now on, or out? */
  | { readonly kind: 'switched-or-failed'; readonly of: Supply }
  /** `it stopped`, after a pump was heard to labour: it may be the noise. */
  | { readonly kind: 'stopped-altogether'; readonly of: Supply }
  | { readonly kind: 'is-it-a-reading' }
  | { readonly kind: 'shorthand-does-not-fit' }
  | { readonly kind: 'which-duties' }
  /** `cleaned the gutters`: whether it was what is to be cleaned there; system null: in which of several. */
  | {
      readonly kind: 'was-it-cleaned';
      readonly system: SystemId | null;
      readonly parts: readonly CleanPart[];
    }
  /** Something could not be done, and nobody said what. */
  | { readonly kind: 'which-failed' }
  /** A duty could not be done, by a button: why, in the member's own words. */
  | { readonly kind: 'why-not'; readonly duty: Duty; readonly entry: EntryNo }
  /** A change of the set-up as it would be made; `was`: the same with what holds now, where something does. */
  | {
      readonly kind: 'change-set-up';
      readonly change: SetUpChange;
      readonly was: SetUpChange | null;
    }
  /** Something was planted: in which of the systems. */
  | { readonly kind: 'planted-where'; readonly planting: Planting }
  /** How much of a product was bought or is left; `leftMl`: as far as it is reckoned, where it is. */
  | {
      readonly kind: 'how-much-stock';
      readonly product: string;
      readonly is: StockSaid;
      readonly leftMl: number | null;
    }
  /** A step of the guided set-up. */
  | { readonly kind: 'guide'; readonly step: GuideStep; readonly problem: GuideProblem | null }
  /** Somebody else told of the same top-up within minutes. */
  | { readonly kind: 'one-or-two'; readonly entry: EntryNo; readonly by: string }
  /** Somebody goes away: from when to when. */
  | { readonly kind: 'away-when' }
  /** Who goes while the grower is away. */
  | {
      readonly kind: 'who-covers';
      readonly from: LocalDate;
      readonly until: LocalDate;
      /** Who can be asked; absent in what was stored before that was kept. */
      readonly helpers?: readonly string[];
    }
  /** A photo came without a word of what it shows. */
  | { readonly kind: 'whose-photo' }
  /** Something is wrong: to be kept as a note, of which these hear; `told`: they know it already. */
  | {
      readonly kind: 'trouble';
      readonly of: Trouble;
      readonly tells: readonly string[];
      readonly told?: true;
    }
  | { readonly kind: 'unclear' };

/** What is said of a product in stock: so much more than there was, or so much now. */
export type StockSaid = 'bought' | 'left';

/** An answer offered as a button: choosing it logs its drafts. */
export interface Choice {
  readonly label: ChoiceLabel;
  readonly drafts: readonly EntryDraft[];
}

export type ChoiceLabel =
  | { readonly kind: 'system'; readonly system: SystemId }
  | { readonly kind: 'systems'; readonly systems: readonly SystemId[] }
  /** asWater: a top-up, among products that it could be instead. */
  | { readonly kind: 'quantity'; readonly quantity: Quantity; readonly asWater?: true }
  /** The whole amount in, or added to, each of several systems. */
  | { readonly kind: 'quantity-of-each'; readonly quantity: Quantity }
  | { readonly kind: 'value'; readonly quantity: Quantity; readonly value: number }
  | { readonly kind: 'amount'; readonly text: string }
  | { readonly kind: 'product'; readonly product: string }
  | { readonly kind: 'each' }
  | { readonly kind: 'in-all' }
  | { readonly kind: 'time'; readonly atMs: number }
  | { readonly kind: 'yes' }
  | { readonly kind: 'no' }
  /** Of two reports of a top-up: the same one, or another. */
  | { readonly kind: 'one-top-up' }
  | { readonly kind: 'two-top-ups' }
  /** A calibration that was made, and nobody kept its figures. */
  | { readonly kind: 'done-without-figures' }
  /** What had failed has not come back yet. */
  | { readonly kind: 'still-out' }
  | { readonly kind: 'keep-as-note' }
  /** Of the duties that are open: these, or all of them. */
  | { readonly kind: 'work'; readonly duties: readonly Duty[] }
  | { readonly kind: 'all-work' };

/**
 * What a typed answer may complete, where the choices do not hold it: the drafts wait for one thing.
 * `value` and `litres` are put into every waiting draft, a system or time likewise.
 */
export interface Waiting {
  readonly for: 'system' | 'value' | 'time' | 'quantity';
  readonly drafts: readonly EntryDraft[];
}

export interface DoubtStatement {
  readonly kind: 'doubt';
  readonly reason: DoubtReason;
  readonly choices: readonly Choice[];
  readonly waiting: Waiting | null;
  /** The open question whose place it takes: nothing answers that any more, not even its buttons. */
  readonly insteadOf?: string;
  readonly span: Span;
  readonly because: readonly string[];
}

/** A question that the member asks. */
export type Ask =
  | PlainAsk
  /** `by`: up to a day that is still to come. */
  | { readonly kind: 'what-is-due'; readonly system: SystemId | null; readonly by?: LocalDate }
  /** `duty`, `probe`: of such work alone, where any is planned. */
  | {
      readonly duty?: DutyKind;
      readonly probe?: string;
      readonly kind: 'why';
      readonly system: SystemId | null;
      readonly exactly: boolean;
    }
  | {
      readonly kind: 'when-next';
      readonly system: SystemId | null;
      readonly duty: DutyKind | null;
      /** Of this probe alone. */
      readonly probe?: string;
      /** How often it comes round. */
      readonly isOften?: true;
    }
  | { readonly kind: 'how-long'; readonly system: SystemId | null }
  | {
      readonly kind: 'last-reading';
      readonly system: SystemId | null;
      readonly quantity: Quantity;
    }
  | {
      readonly kind: 'use';
      readonly system: SystemId | null;
      readonly from: LocalDate;
      readonly to: LocalDate;
      /** Which uses most, by its use a day. */
      readonly isRanked?: true;
      /** `this season`: as long as anything is in the logbook. */
      readonly isWhole?: true;
    }
  | {
      readonly kind: 'is-it-right';
      readonly system: SystemId | null;
      readonly quantity: Quantity;
      readonly value: number | null;
    }
  /** `wantedMl`: whether so much may be given. `target`: what it is to come to. */
  | {
      readonly target?: DoseTarget;
      readonly kind: 'how-much';
      readonly system: SystemId | null;
      readonly product: string | null;
      readonly wantedMl?: number;
    }
  /** `how much A and B for 120 litres at 1.6`; ecMsPerCm null: the system's own strength. */
  | {
      readonly kind: 'mix';
      readonly system: SystemId | null;
      readonly litres: number;
      readonly ecMsPerCm: number | null;
    }
  /** `what is 900 ppm in EC`: a conductivity on one scale, to be told on the others. */
  | { readonly kind: 'convert'; readonly value: number; readonly unit: ConductivityUnit }
  /** `how long will the bench take to fill with a 3000 pump`. */
  | {
      readonly kind: 'fill-with-pump';
      readonly system: SystemId | null;
      readonly ratedLPerH: number;
    }
  /** `how long can the buckets go without power`. */
  | { readonly kind: 'without-supply'; readonly system: SystemId | null; readonly of: Supply }
  /** Whether it is on. */
  | { readonly kind: 'supply'; readonly of: Supply }
  /** Who did it, or when it was last done; duty and chore: work that leaves no figure of its own. */
  | {
      readonly kind: 'who';
      readonly system: SystemId | null;
      readonly quantity: Quantity | null;
      readonly duty: DutyKind | null;
      readonly chore: string | null;
      /** Measuring, of whatever quantity. */
      readonly isOfReadings?: boolean;
      /** Of this probe alone. */
      readonly probe?: string;
    }
  /** `show me the jars`, `picture of the ph`; quantity null: all that is known. */
  | {
      readonly kind: 'show';
      readonly system: SystemId | null;
      readonly quantity: Quantity | null;
    }
  | { readonly kind: 'how-is-it-going'; readonly system: SystemId | null }
  | { readonly kind: 'help' }
  /** What may hurt, and how to keep from it. */
  | { readonly kind: 'safety' }
  /** `what do I do if the bench leaks`, `what helps against algae`. */
  | { readonly kind: 'first-aid'; readonly of: Trouble }
  | { readonly kind: 'unknown' };

/** `how much nutrient to get to 2.2`. */
export interface DoseTarget {
  readonly quantity: 'ph' | 'ec';
  readonly value: number;
}

export interface AskStatement {
  readonly kind: 'ask';
  readonly ask: Ask;
  /** All that were named, where there are several and the question is about each. */
  readonly systems?: readonly SystemId[];
  readonly span: Span;
  readonly because: readonly string[];
}

/** Which of the duties asked for are spoken of; null: told by the others alone. */
export interface WorkNamed {
  readonly systems: readonly SystemId[] | null;
  readonly duty: DutyKind | null;
  readonly chore: string | null;
}

/** `done`, `did the jars`, `checks done`, `done except gutters`: closes duties that were asked for. */
export interface DoneStatement extends WorkNamed {
  readonly kind: 'done';
  /** What is left open of it. */
  readonly except: readonly WorkNamed[];
  /** `the rest`: what could not be done stays open. */
  readonly isRest?: true;
  /** `all done`: said of all that was asked for. */
  readonly isAll?: true;
  /** `done that`: of one thing, which it does not name. */
  readonly isOne?: true;
  /** A thumb or a tick alone: where no work was asked for, it says no more than `seen`. */
  readonly isSign?: 'tick' | 'thumb';
  readonly span: Span;
  readonly because: readonly string[];
}

export interface Readable {
  readonly quantity: Quantity;
  readonly value: number;
}

export type TakingBack =
  /** `undo the jars`: only what was told of this system. */
  | { readonly kind: 'undo'; readonly system?: SystemId }
  /**
   * `no, it was right`: what was struck out last holds after all. isBare, `no wait`: only what was undone
   * right before; isDenial, `doch nicht`: where nothing was, what was told last is taken back.
   */
  | { readonly kind: 'put-back'; readonly isBare?: true; readonly isDenial?: true }
  /**
   * `sorry, 5.6 not 5.4`: what the numbers can be read as, likeliest first, each in its quantity's
   * unit; the member's last entry that fits is the one corrected. `from`: the value given up.
   */
  | {
      readonly kind: 'correct';
      /** The number meant as it was said, whatever its unit. */
      readonly said: number;
      readonly to: readonly Readable[];
      readonly from: readonly Readable[] | null;
      /** The numbers as they were said, where no unit was: they are of the unit that the entry was said in. */
      readonly bare?: { readonly to: number; readonly from: number | null };
      /** `sorry, 70 %`, `no, 6 cm`: what a level is of its own system. */
      readonly level?: { readonly to: LevelSaidAs; readonly from: LevelSaidAs | null };
      readonly system: SystemId | null;
      /** `sorry, it was the bench and 6.2`: the system that it was of instead. */
      readonly ofSystem?: SystemId;
      /** `sorry, B was 25`. */
      readonly product?: string;
      /** `it was 10 l last night, not 12`: the local date of the entry meant. */
      readonly onDate?: string;
    }
  /** `I meant the gutters`. */
  | {
      readonly kind: 'move';
      readonly system: SystemId;
      /** `ec was the gutters`: only what was told of this. */
      readonly quantity?: Quantity;
      /** `the jars, not the gutters`: only what was told of these. */
      readonly notOf?: SystemId;
      /** `was the gutters`: only what was told just now, of this system. */
      readonly from?: SystemId;
    }
  /** `down, not up`: of what was told just now, the product that it was; `from`: the one given up. */
  | { readonly kind: 'other-product'; readonly product: string; readonly from: string | null }
  /** `that was yesterday`: when the member's last message was true; isVague: to a part of a day. */
  | { readonly kind: 'retime'; readonly atMs: number; readonly isVague: boolean }
  /** `except the jars`, after all was told done: of the work closed by the member's last message. */
  | { readonly kind: 'not-done'; readonly works: readonly WorkNamed[] }
  /** `didn't top up the jars after all`. */
  | {
      readonly kind: 'deny';
      readonly system: SystemId | null;
      readonly quantity: Quantity | null;
      /** Of which product or probe the deed was, where that is said. */
      readonly product?: string;
      readonly probe?: string;
      readonly chore?: string;
      /** `wait, I didn't …`: what was told a moment ago. */
      readonly isOfJustNow?: boolean;
      /** `scrap the 71`: the value that is struck out, as it can be read. */
      readonly given?: readonly Readable[];
    };

export interface TakingBackStatement {
  readonly kind: 'taking-back';
  readonly back: TakingBack;
  /** `9 l instead of 12`: what it tells where nothing was told before that it could correct. */
  readonly otherwise?: readonly Statement[];
  readonly span: Span;
  readonly because: readonly string[];
}

/** An open question of the bot that this message answers; what it logs follows as entry statements. */
export interface AnsweredStatement {
  readonly kind: 'answered';
  readonly questionId: string;
  /** The drafts chosen or completed; empty where the member declined. */
  readonly drafts: readonly EntryDraft[];
  readonly span: Span;
}

/** Said, understood, and nothing to log: negation, intention, condition, hearsay, thanks, a greeting. */
export interface PassedOverStatement {
  readonly kind: 'passed-over';
  readonly why:
    | 'negation'
    | 'intention'
    | 'condition'
    | 'hearsay'
    | 'target'
    | 'forgotten'
    | 'not-a-reading'
    | 'greeting'
    | 'thanks'
    | 'chatter';
  readonly span: Span;
}

export type Statement =
  | EntryStatement
  | DoubtStatement
  | AskStatement
  | DoneStatement
  | TakingBackStatement
  | AnsweredStatement
  | PassedOverStatement;

/** The statements of a message in the order in which they were said; never empty. */
export interface Understanding {
  readonly foldedText: string;
  readonly statements: readonly Statement[];
  /** The systems that the message itself names, each once. */
  readonly named: readonly SystemId[];
}
