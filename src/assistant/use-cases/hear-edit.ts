import type { Entry } from '../../greenhouse/entry.ts';
import { entriesOfMessage, successorsOf } from '../../logbook/logbook.ts';
import type { Statement, TakingBack } from '../../understanding/statement.ts';
import { type AnsweredBy, withoutMessage } from '../conversation.ts';
import { tellOfDangers } from '../family/tell-of-dangers.ts';
import type { Handling } from '../handling.ts';
import {
  acknowledgeSilence,
  actOnRest,
  noteContext,
  readReport,
  recordStatements,
  rememberAnswer,
  type Surroundings,
} from './hear-message.ts';
import { hearWish } from './hear-wish.ts';
import { logAgain, putBackStruckByMessage } from './put-back.ts';
import { recordAnswer } from './record-answer.ts';
import { replaceEntries } from './replace-entries.ts';
import { takeBack } from './take-back.ts';
import { refusesOthers } from './taken-back.ts';

/**
 * An edited message replaces all that came of it, at the time it was first written: what it logged, and
 * what was put in the place of that since; what it answered; what it corrected or struck out.
 * `handling.heard` carries the first message's id and time.
 */
export function hearEdit(handling: Handling, text: string, around: Surroundings): void {
  hearWordsAnew(handling, text, around);
  tellOfDangers(handling, text, around);
}

function hearWordsAnew(handling: Handling, text: string, around: Surroundings): void {
  const { messageId } = handling.heard;
  const { logbook } = handling.standing;
  const answered = handling.conversation.answered?.find((each) => each.messageId === messageId);
  if (answered && stillHolds(handling, answered))
    return hearOtherAnswer(handling, text, around, answered);
  const cameOfIt = withSuccessors(handling, entriesOfMessage(logbook, messageId));
  const old = cameOfIt.filter(({ struck }) => struck === null);
  if (refusesOthers(handling, old)) return;
  handling.conversation = withoutMessage(handling.conversation, messageId);
  if (old.length === 0 && hearWish(handling, text, around)) return;
  const understood = readReport(handling, text, around);
  noteContext(handling, understood.statements, understood.named);
  const back = takingBackIn(understood.statements);
  const corrected = old.length > 0 ? correctedBy(handling, cameOfIt) : [];
  const other = corrected.length > 0 && back ? correctedAnew(back, old) : null;
  if (other) return takeBack(handling, other, old);
  putBackStruckByMessage(handling);
  if (old.length === 0) recordStatements(handling, understood.statements);
  else replaceOld(handling, old, corrected, understood.statements);
  actOnRest(handling, understood.statements, around);
  tellOfDangers(handling, text, around);
  acknowledgeSilence(handling, understood.statements);
}

/** Strikes out what stood there, and logs in its place what is told now and what a correction had corrected. */
function replaceOld(
  handling: Handling,
  old: readonly Entry[],
  corrected: readonly Entry[],
  statements: readonly Statement[],
): void {
  const drafts = statements.flatMap((statement) =>
    statement.kind === 'entry' ? [statement.draft] : [],
  );
  if (corrected.length === 0) {
    replaceEntries(handling, old, drafts);
    return;
  }
  const struck = handling.strike(old);
  handling.say({
    kind: 'correction',
    struck,
    logged: logAgain(handling, corrected),
    remarks: [],
  });
  recordStatements(handling, statements);
}

function withSuccessors({ standing }: Handling, entries: readonly Entry[]): readonly Entry[] {
  return [...entries, ...successorsOf(standing.logbook, entries)];
}

/** The entries of other messages in whose place these were put. */
function correctedBy({ standing, heard }: Handling, cameOfIt: readonly Entry[]): readonly Entry[] {
  const own = new Set(cameOfIt.map(({ no }) => no));
  const nos = new Set(cameOfIt.flatMap(({ inPlaceOf }) => inPlaceOf ?? []));
  return [...nos]
    .filter((no) => !own.has(no))
    .map((no) => standing.logbook.all[no - 1]!)
    .filter(({ source }) => source.messageId !== heard.messageId);
}

/** `sorry 5.9`, edited into `sorry 6.0`: the same correction with another end; null: it is no such. */
function correctedAnew(back: TakingBack, old: readonly Entry[]): TakingBack | null {
  if (back.kind === 'move') return back;
  if (back.kind !== 'correct') return null;
  const fits = old.some(({ quantity }) => back.to.some((to) => to.quantity === quantity));
  return fits ? { ...back, from: null } : null;
}

function takingBackIn(statements: readonly Statement[]): TakingBack | null {
  return statements.find((statement) => statement.kind === 'taking-back')?.back ?? null;
}

/** What the answer logged, as it stands now. */
function answeredStill(handling: Handling, { entries }: AnsweredBy): readonly Entry[] {
  const { all } = handling.standing.logbook;
  const logged = entries.map((no) => all[no - 1]!);
  return withSuccessors(handling, logged).filter(({ struck }) => struck === null);
}

/** Not where what it logged was taken back since, or the message that raised the question was edited. */
function stillHolds(handling: Handling, answered: AnsweredBy): boolean {
  return answered.entries.length === 0 || answeredStill(handling, answered).length > 0;
}

/** `bench`, edited into `buckets`: the question is as open as it was, and this is the answer to it. */
function hearOtherAnswer(
  handling: Handling,
  text: string,
  around: Surroundings,
  answered: AnsweredBy,
): void {
  const { question } = answered;
  const old = answeredStill(handling, answered);
  if (refusesOthers(handling, old)) return;
  const { questionId, doubt } = question;
  const repliedTo = { kind: 'question' as const, questionId, doubt };
  const read = readReport(handling, text, { ...around, repliedTo });
  const answer = read.statements.find((statement) => statement.kind === 'answered');
  if (answer) {
    const { drafts } = answer;
    const logged =
      old.length > 0
        ? replaceEntries(handling, old, drafts, question.messageId)
        : recordAnswer(handling, drafts, question);
    return rememberAnswer(handling, question, logged);
  }
  if (old.length > 0) replaceEntries(handling, old, [], question.messageId);
  noteContext(handling, read.statements, read.named);
  recordStatements(handling, read.statements);
  actOnRest(handling, read.statements, around);
  tellOfDangers(handling, text, around);
  acknowledgeSilence(handling, read.statements);
}
