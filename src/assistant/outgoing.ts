import type { ArrangementDraft } from '../greenhouse/arrangement.ts';
import type { Duty } from '../greenhouse/duty.ts';
import type { EntryNo } from '../greenhouse/entry.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { ChoiceLabel } from '../understanding/statement.ts';
import type { GuideOption } from './guide/guide.ts';
import type { HouseholdWish } from './household/wish.ts';
import type { PictureKind } from './replies/picture.ts';
import type { Reply } from './replies/reply.ts';

export type OutgoingNo = number & { readonly __brand: 'OutgoingNo' };

/** A message to be sent: data until the channel words it. The number is the greenhouse's own, from 1. */
export interface Outgoing {
  readonly no: OutgoingNo;
  readonly atMs: number;
  /** The channel it leaves by. */
  readonly channel: string;
  /** A member's handle, or a group's name. */
  readonly to: string;
  /** The message it answers, by the platform's id. */
  readonly inReplyTo: string | null;
  readonly reply: Reply;
  readonly buttons: readonly (readonly Button[])[];
  /** The earlier message whose place it takes; only on channels that can edit. */
  readonly edits?: OutgoingNo;
  /** What it says shows elsewhere too: a channel may say it by a reaction or in passing. */
  readonly inPassing?: true;
}

export interface Button {
  readonly label: ButtonLabel;
  readonly action: Action;
}

export type ButtonLabel =
  | { readonly kind: 'strike-out' }
  | { readonly kind: 'choice'; readonly choice: ChoiceLabel }
  | { readonly kind: 'log-nothing' }
  | { readonly kind: 'leave-as-is' }
  | { readonly kind: 'guide'; readonly option: GuideOption }
  | { readonly kind: 'tick' | 'cannot' | 'untick'; readonly duty: Duty }
  | { readonly kind: 'how-to'; readonly duty: Duty }
  | { readonly kind: 'how' }
  | { readonly kind: 'no-reason' }
  /** These step in; none: nobody does. */
  | { readonly kind: 'cover'; readonly handles: readonly string[]; readonly isAll: boolean }
  | { readonly kind: 'news'; readonly every: 'day' | 'never' }
  | { readonly kind: 'take-over'; readonly duty: Duty }
  | PictureWish
  | { readonly kind: 'household'; readonly wish: HouseholdWish };

/** What pressing a button does. */
export type Action =
  | { readonly kind: 'strike'; readonly entries: readonly EntryNo[] }
  | { readonly kind: 'choose'; readonly questionId: string; readonly choice: number }
  | { readonly kind: 'decline'; readonly questionId: string }
  /** Takes back the change of the set-up that a message made. */
  | { readonly kind: 'undo-set-up'; readonly messageId: string }
  /** Takes back what a message settled among the household's people. */
  | { readonly kind: 'undo-settled'; readonly messageId: string }
  /** An answer to the guided set-up, at the step that it was offered for. */
  | { readonly kind: 'guide'; readonly answers: number; readonly option: GuideOption }
  /** A duty of the round that went out at `askedAtMs` was done, or could not be. */
  | { readonly kind: 'tick' | 'cannot'; readonly duty: Duty; readonly askedAtMs: number }
  /** The steps of a duty. */
  | { readonly kind: 'how-to'; readonly duty: Duty }
  | { readonly kind: 'household'; readonly wish: HouseholdWish }
  | { readonly kind: 'settle'; readonly drafts: readonly ArrangementDraft[] }
  | PictureWish;

/** A picture to be sent when the button is pressed, of how things stand then. */
export interface PictureWish {
  readonly kind: 'picture';
  readonly system: SystemId;
  readonly of: PictureKind;
}

/** The token that a channel sends back when a button is pressed: `12.0`, at most 20 characters. */
export function pressToken(no: OutgoingNo, position: number): string {
  return `${no}.${position}`;
}

/** The button that a token names, where the token is one of ours. */
export function readPressToken(token: string): { no: OutgoingNo; position: number } | null {
  const found = /^(\d{1,12})\.(\d{1,3})$/.exec(token);
  if (!found) return null;
  return { no: Number(found[1]) as OutgoingNo, position: Number(found[2]) };
}
