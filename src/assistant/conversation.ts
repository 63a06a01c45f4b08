import type { EntryNo } from '../greenhouse/entry.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { Doubt } from '../understanding/doubt.ts';

/** Where the talk with one member stands: a row, plain data, replaced whole. */
export interface Conversation {
  readonly handle: string;
  /** The one system last named, and when that was written. */
  readonly named: { readonly system: SystemId; readonly atMs: number } | null;
  /** Open questions, latest first. */
  readonly questions: readonly AskedQuestion[];
  /** What the member's last receipts logged, latest first, for undoing them one by one. */
  readonly receipts: readonly LoggedMessage[];
}

export interface AskedQuestion {
  readonly questionId: string;
  readonly doubt: Doubt;
  readonly askedAtMs: number;
  /** The member's message that raised it. */
  readonly messageId: string;
}

export interface LoggedMessage {
  readonly messageId: string;
  readonly entries: readonly EntryNo[];
}
