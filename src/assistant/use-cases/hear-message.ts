import { type Entry, isDanger } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { RepliedTo } from '../../understanding/context.ts';
import type {
  Assumption,
  DoneStatement,
  DoubtReason,
  Statement,
  Understanding,
  WorkNamed,
} from '../../understanding/statement.ts';
import { understand } from '../../understanding/understand.ts';
import { withWaterSaid } from '../../understanding/wishes/water-said.ts';
import { answerQuestion } from '../answers/answer-question.ts';
import {
  type AskedQuestion,
  type Talk,
  withAnswered,
  withNamed,
  withoutQuestion,
  withQuestionsLapsed,
} from '../conversation.ts';
import { hearArrangings } from '../family/hear-arrangings.ts';
import { askAboutDoubles, hearCount, withoutDoubles } from '../family/same-top-up.ts';
import { hearersOfDanger, isToldFirst, tellOfDangers } from '../family/tell-of-dangers.ts';
import type { Handling } from '../handling.ts';
import { contextOf, stillRepliedTo } from '../reading-context.ts';
import type { AlertTold } from '../replies/family.ts';
import type { Standing } from '../standing.ts';
import { acknowledge, giveThanks, leftOut } from './acknowledge.ts';
import { askBack } from './ask-back.ts';
import { hearReason } from './cannot-do-duty.ts';
import { type AskedDuties, askWhich, closeDuties, isBareDone } from './close-duties.ts';
import { hasNothingToCorrect } from './correct-entry.ts';
import { withoutFailedAfterDone } from './failed-after-done.ts';
import { hearPhoto } from './hear-photo.ts';
import { hearAskedAside, hearStockAside, hearWish } from './hear-wish.ts';
import { asChangeSpokenOf, withoutLitresOfChange } from './litres-of-change.ts';
import { noteNamed } from './note-named.ts';
import { recordAnswer } from './record-answer.ts';
import { recordEntries } from './record-entries.ts';
import { takeBack } from './take-back.ts';
import {
  forgetAsked,
  lastTalk,
  noteAsked,
  noteTalk,
  noteWorkAsked,
  workSpokenOf,
} from './work-spoken-of.ts';

/** What is known around a message before it is read. */
export interface Surroundings {
  readonly repliedTo: RepliedTo | null;
  /** The duties of the message replied to, or of this morning's round. */
  readonly askedDuties: AskedDuties | null;
  readonly round: AskedDuties | null;
  /** What was said to the member unasked during the absence that a word may end. */
  readonly alerts: readonly AlertTold[];
}

/** Reads a member's message and does what each of its statements calls for, in order. */
export function hearMessage(handling: Handling, text: string, around: Surroundings): void {
  const { asked } = handling.conversation;
  hearWords(handling, text, around);
  forgetAsked(handling, asked);
  tellOfDangers(handling, text, around);
  noteTalk(handling);
}

function hearWords(handling: Handling, text: string, around: Surroundings): void {
  if (hearPhoto(handling, text, around)) return;
  const hearBeside = (report: string, isReport: (statement: Statement) => boolean): boolean => {
    const { statements } = readReport(handling, report, around);
    const standsAlone = statements.every(isClear) && statements.some(isReport);
    if (standsAlone) hearReport(handling, report, around, []);
    return standsAlone;
  };
  const isAsked = hearAskedAside(handling, text, around, (report) =>
    hearBeside(report, tellsValue),
  );
  if (isAsked || hearWish(handling, text, around)) return noteNamed(handling, text, around);
  if (hearStockAside(handling, text, around, (report) => hearBeside(report, isClear))) return;
  const context = contextOf(handling, around);
  if (hearCount(handling, text, context)) return;
  const left = hearArrangings(handling, text, around, context);
  if (left.text === null) return noteNamed(handling, text, around);
  hearReport(handling, left.text, around, left.putOff, text);
}

/** A value, whether it is logged or has to be asked about first. */
function tellsValue(statement: Statement): boolean {
  if (statement.kind === 'entry') return true;
  return statement.kind === 'doubt' && ofValues.includes(statement.reason.kind);
}

const ofValues: readonly DoubtReason['kind'][] = [
  'which-quantity',
  'which-unit',
  'in-it-or-added',
  'out-of-range',
  'conflict',
];

/** All that is to be done for a system. */
function allOf(system: SystemId): WorkNamed {
  return { systems: [system], duty: null, chore: null };
}

/** `200 ml A and 300 ml B left`: what needs its system asked may be no report at all. */
function isClear(statement: Statement): boolean {
  return (
    statement.kind === 'entry' ||
    statement.kind === 'done' ||
    statement.kind === 'answered' ||
    (statement.kind === 'doubt' &&
      !isOfSomeSystem(statement.reason) &&
      statement.reason.kind !== 'unclear')
  );
}

function isOfSomeSystem(reason: DoubtReason): boolean {
  return reason.kind === 'which-system' && (reason.quantity ?? 'dose') === 'dose';
}

function hearReport(
  handling: Handling,
  text: string,
  around: Surroundings,
  putOff: readonly SystemId[],
  /** The message that it is a part of. */
  whole: string = text,
): void {
  const { statements: read, named } = readReport(handling, text, around);
  const statements = read.map((statement) =>
    statement.kind === 'done'
      ? { ...statement, except: [...statement.except, ...putOff.map(allOf)] }
      : statement,
  );
  if (hearReason(handling, text, statements, around)) return;
  if (handling.heard.isOverheard && statements.every(concernsNobody)) return;
  noteContext(handling, statements, named);
  // `undo that, bench ph 6.0`: what was told last goes before anything else is told.
  const [first, ...others] = statements;
  const isPutRight = first?.kind === 'taking-back' && others.length > 0;
  if (isPutRight) act(handling, first, around);
  const rest = isPutRight ? others : statements;
  // `done, took 45 l` after `how do I top up the bench`: what is told is what was done.
  const { systems } = workSpokenOf(handling) ?? { systems: null };
  const isTold = rest.some(
    (each) =>
      each.kind === 'entry' && each.draft.system !== null && systems?.includes(each.draft.system),
  );
  recordStatements(handling, rest);
  actOnRest(handling, isTold ? rest.filter((each) => !isBareDone(each)) : rest, around);
  tellOfDangers(handling, whole, around);
  acknowledgeSilence(handling, statements);
}

/** What a message reports, asks and takes back. */
export function readReport(handling: Handling, text: string, around: Surroundings): Understanding {
  const read = understand(text, contextOf(handling, around));
  const told = read.statements.flatMap((statement) => {
    if (statement.kind !== 'taking-back' || !statement.otherwise) return [statement];
    const isNews = hasNothingToCorrect(handling, statement.back, repliedEntries(around));
    return isNews ? statement.otherwise : [statement];
  });
  return { ...read, statements: withWaterSaid(told, read.foldedText, handling.spoken) };
}

/** Remembers the systems named; questions that were passed by take no typed answer any more. */
export function noteContext(
  handling: Handling,
  statements: readonly Statement[],
  named: Understanding['named'],
): void {
  if (!statements.some((statement) => statement.kind === 'answered')) {
    handling.conversation = withQuestionsLapsed(handling.conversation);
  }
  const { messageId, writtenAtMs: atMs } = handling.heard;
  handling.conversation = withNamed(handling.conversation, named, { messageId, atMs });
}

/** Logs the clear parts of a message under one receipt. */
export function recordStatements(handling: Handling, statements: readonly Statement[]): void {
  const entries = statements.filter((statement) => statement.kind === 'entry');
  const drafts = withoutLitresOfChange(
    handling,
    entries.map((statement) => asChangeSpokenOf(handling, statement)),
  );
  const clear = withoutDoubles(handling, withoutFailedAfterDone(handling, drafts));
  recordEntries(handling, clear, distinct(entries.flatMap((statement) => statement.assumptions)));
  askAboutDoubles(
    handling,
    drafts.filter((draft) => !clear.includes(draft) && draft.quantity !== 'duty-failed'),
  );
}

/** Does what the statements other than entries call for, in order. */
export function actOnRest(
  handling: Handling,
  statements: readonly Statement[],
  around: Surroundings,
): void {
  for (const statement of statements) act(handling, statement, around);
}

/** Where nothing was logged, asked or answered: says so in a word, or returns a thank-you. */
export function acknowledgeSilence(handling: Handling, statements: readonly Statement[]): void {
  if (handling.outgoing.length === 0) acknowledge(handling, statements);
}

/** Others need not wait for a note to be kept where somebody may get hurt. */
function asToldAtOnce(handling: Handling, reason: DoubtReason): DoubtReason {
  if (reason.kind !== 'trouble' || !isDanger(reason.of)) return reason;
  return { ...reason, tells: hearersOfDanger(handling), told: true };
}

/** Among people, what the bot makes nothing of is no business of its own. */
function concernsNobody(statement: Statement): boolean {
  if (statement.kind === 'passed-over') return true;
  if (statement.kind === 'ask') return statement.ask.kind === 'unknown';
  return statement.kind === 'doubt' && statement.reason.kind === 'unclear';
}

function distinct(assumptions: readonly Assumption[]): readonly Assumption[] {
  const seen = new Map(assumptions.map((assumption) => [JSON.stringify(assumption), assumption]));
  return [...seen.values()];
}

function act(handling: Handling, statement: Statement, around: Surroundings): void {
  switch (statement.kind) {
    case 'entry':
    case 'passed-over':
      return;
    case 'answered': {
      const question = handling.conversation.questions.find(
        ({ questionId }) => questionId === statement.questionId,
      );
      handling.conversation = withoutQuestion(handling.conversation, statement.questionId);
      const logged = recordAnswer(handling, statement.drafts, question);
      if (question) rememberAnswer(handling, question, logged);
      if (statement.drafts.length === 0) leftOut(handling);
      return;
    }
    case 'doubt': {
      const { choices, waiting, insteadOf } = statement;
      if (insteadOf !== undefined)
        handling.conversation = withoutQuestion(handling.conversation, insteadOf);
      if (statement.reason.kind === 'which-duties' && choices.length === 0)
        return askWhich(handling);
      const reason = asToldAtOnce(handling, statement.reason);
      return askBack(handling, { reason, choices, waiting });
    }
    case 'ask':
      if (statement.ask.kind === 'first-aid' && isToldFirst(handling, statement.ask.of)) return;
      answerQuestion(
        handling,
        statement.ask,
        statement.systems ?? repliedSystems(around, handling.standing),
      );
      noteAsked(handling, statement.ask);
      return noteWorkAsked(handling, statement.ask);
    case 'done':
      if (statement.isSign && isAboutNoDuty(around)) return giveThanks(handling);
      return closeDuties(handling, statement, around.askedDuties ?? around.round, {
        work: around.askedDuties ? null : workSpokenOf(handling),
        isOfList: around.askedDuties !== null || isOfList(statement, lastTalk(handling)),
      });
    case 'taking-back':
      return takeBack(handling, statement.back, repliedEntries(around));
  }
}

/** So that an edited answer takes the place of what it was. */
export function rememberAnswer(
  handling: Handling,
  question: AskedQuestion,
  logged: readonly Entry[],
): void {
  handling.conversation = withAnswered(handling.conversation, {
    messageId: handling.heard.messageId,
    question,
    entries: logged.map(({ no }) => no),
  });
}

function repliedEntries(around: Surroundings): readonly Entry[] | null {
  const { repliedTo } = around;
  return repliedTo?.kind === 'message' && repliedTo.entries.length > 0 ? repliedTo.entries : null;
}

function repliedSystems(around: Surroundings, standing: Standing): readonly SystemId[] {
  const repliedTo = stillRepliedTo(around.repliedTo, standing);
  return repliedTo?.kind === 'message' ? repliedTo.systems : [];
}

/** Whether `done` is of the list, by what was said last: a thumb after a receipt may be no more than a nod. */
function isOfList({ isSign }: DoneStatement, talk: Talk | null): boolean {
  return talk === null || talk === 'list' || (talk === 'receipt' && isSign !== 'thumb');
}

/** A receipt or a warning that a thumb was put under asks for no work. */
function isAboutNoDuty({ repliedTo, askedDuties }: Surroundings): boolean {
  return repliedTo?.kind === 'message' && askedDuties === null;
}
