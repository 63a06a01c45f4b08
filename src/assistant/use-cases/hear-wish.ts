import type { EntryDraft } from '../../greenhouse/entry.ts';
import { instantOf, type LocalTime, localDateOf } from '../../greenhouse/local-time.ts';
import { mixingCautions } from '../../planning/cautions-for.ts';
import { type RainLine, rainLine } from '../../planning/rain-left.ts';
import { stockOutlook, toBuy } from '../../planning/stock-outlook.ts';
import { readAmended } from '../../understanding/wishes/read-amended.ts';
import { readGuideAnswer } from '../../understanding/wishes/read-guide-answer.ts';
import { readWish } from '../../understanding/wishes/read-wish.ts';
import { stockOfTwo } from '../../understanding/wishes/stock-of-two.ts';
import type { Wish } from '../../understanding/wishes/wish.ts';
import { askedAsides, stockAside } from '../../understanding/wishes/wish-aside.ts';
import { answerQuestion } from '../answers/answer-question.ts';
import { choresAnswer } from '../answers/chores-answer.ts';
import { howFull } from '../answers/how-full.ts';
import { isItRight } from '../answers/is-it-right.ts';
import { lastReadings } from '../answers/last-readings.ts';
import { lastingOf } from '../answers/lasting-of.ts';
import { loggedBy } from '../answers/logged-by.ts';
import { seasonAnswer } from '../answers/season-answer.ts';
import { supplyState } from '../answers/supply-state.ts';
import { whatIfAnswer } from '../answers/what-if.ts';
import { whereKept } from '../answers/where-kept.ts';
import {
  type AskedQuestion,
  openQuestions,
  withoutQuestion,
  withQuestionsLapsed,
} from '../conversation.ts';
import { answerWhoIsAway } from '../family/answer-family.ts';
import { answerMyTurns } from '../family/my-turns.ts';
import { tellHowTo } from '../family/tell-how-to.ts';
import type { Handling } from '../handling.ts';
import type { Answer } from '../replies/answer.ts';
import type { KeepingAnswer } from '../replies/keeping.ts';
import { answersStock, askStock } from './ask-stock.ts';
import { answersWherePlanted, askWherePlanted } from './ask-where-planted.ts';
import { proposeChange, settleChange } from './change-set-up.ts';
import { changeOfSpoken } from './chore-spoken-of.ts';
import { hearGuide, startGuide } from './guide-set-up.ts';
import type { Surroundings } from './hear-message.ts';
import { attachNote, dropNotes, showNotes } from './keep-notes.ts';
import { recordEntries } from './record-entries.ts';

/**
 * Hears what is about the set-up, the stock or the season: a yes or no to a change that was shown, an
 * answer to the guided set-up, a wish. False: it is none of these, and nothing was done.
 */
export function hearWish(handling: Handling, text: string, around: Surroundings): boolean {
  if (handling.heard.isOverheard) return false;
  if (answersChange(handling, text, around)) return true;
  if (hearGuide(handling, text, around)) return true;
  const { heard } = handling;
  if (around.repliedTo?.kind === 'question') return false;
  const wish = readWish(text, handling.spoken, heard.member, heard.writtenAtMs);
  if (wish?.kind === 'chore-spoken-of') return changeSpokenOf(handling, wish.everyDays);
  const wishes = wish ? [wish] : stockOfTwo(text, handling.spoken, heard.member, heard.writtenAtMs);
  if (!wishes) return false;
  handling.conversation = withQuestionsLapsed(handling.conversation);
  for (const each of wishes) grant(handling, each, text, around);
  return true;
}

/**
 * Hears the report of a message that ends in something about the stock, and then that; false: it does not end so,
 * or its report cannot stand alone.
 */
export function hearStockAside(
  handling: Handling,
  text: string,
  around: Surroundings,
  hearReport: (report: string) => boolean,
): boolean {
  const { heard, spoken } = handling;
  if (heard.isOverheard) return false;
  const aside = stockAside(text, spoken, heard.member, heard.writtenAtMs);
  if (!aside || !hearReport(aside.report)) return false;
  grant(handling, aside.wish, text, around);
  return true;
}

/** Hears the report of a message that also asks to look something up, and then answers that; false: it is no such message. */
export function hearAskedAside(
  handling: Handling,
  text: string,
  around: Surroundings,
  hearReport: (report: string) => boolean,
): boolean {
  const { heard, spoken } = handling;
  if (heard.isOverheard || around.repliedTo?.kind === 'question') return false;
  for (const aside of askedAsides(text, spoken, heard.member, heard.writtenAtMs)) {
    if (!hearReport(aside.report)) continue;
    grant(handling, aside.wish, aside.said, around);
    return true;
  }
  return false;
}

function answersChange(handling: Handling, text: string, around: Surroundings): boolean {
  const question = lastAsked(handling, around);
  if (!question) return false;
  if (answersStock(handling, question, text)) return true;
  if (answersWherePlanted(handling, question, text, around)) return true;
  if (question.doubt.reason.kind !== 'change-set-up') return false;
  const { heard } = handling;
  const said = readGuideAnswer('summary', text, handling.spoken, heard.member, handling.nowMs);
  if (said?.kind !== 'yes' && said?.kind !== 'no' && said?.kind !== 'stop') {
    return amendsChange(handling, question, text);
  }
  for (const each of askedTogether(handling, question, around))
    settleChange(handling, each, said.kind === 'yes');
  return true;
}

/** `no, 3 l`: the change that was shown is shown anew with this figure; it corrects nothing that was logged. */
function amendsChange(handling: Handling, question: AskedQuestion, text: string): boolean {
  const { reason } = question.doubt;
  if (reason.kind !== 'change-set-up') return false;
  const { member, writtenAtMs } = handling.heard;
  const amended = readAmended(reason.change, text, handling.spoken, member, writtenAtMs);
  if (!amended) return false;
  handling.conversation = withoutQuestion(handling.conversation, question.questionId);
  proposeChange(handling, amended);
  return true;
}

/** `yes`, where one message told of two bottles that were bought: of both, in the order in which they were asked about. */
function askedTogether(
  { conversation, heard }: Handling,
  question: AskedQuestion,
  { repliedTo }: Surroundings,
): readonly AskedQuestion[] {
  if (repliedTo !== null) return [question];
  return openQuestions(conversation, heard.writtenAtMs)
    .filter(
      ({ messageId, doubt }) =>
        messageId === question.messageId && doubt.reason.kind === 'change-set-up',
    )
    .toReversed();
}

/** The question that is replied to, or the last that is open. */
function lastAsked(handling: Handling, { repliedTo }: Surroundings): AskedQuestion | null {
  const { conversation, heard } = handling;
  if (repliedTo === null) return openQuestions(conversation, heard.writtenAtMs)[0] ?? null;
  if (repliedTo.kind !== 'question') return null;
  return (
    conversation.questions.find(({ questionId }) => questionId === repliedTo.questionId) ?? null
  );
}

/** False: no chore was spoken of, and nothing was done. */
function changeSpokenOf(handling: Handling, everyDays: number | null): boolean {
  const change = changeOfSpoken(handling, everyDays);
  if (!change) return false;
  handling.conversation = withQuestionsLapsed(handling.conversation);
  proposeChange(handling, change);
  return true;
}

function grant(handling: Handling, wish: Wish, text: string, around: Surroundings): void {
  switch (wish.kind) {
    case 'change':
      return proposeChange(handling, wish.change);
    case 'chore-spoken-of':
      changeSpokenOf(handling, wish.everyDays);
      return;
    case 'chores':
      return answer(handling, choresAnswer(handling.standing, wish.name, handling.nowMs));
    case 'guide':
      return startGuide(handling, wish.of);
    case 'stock':
      return answer(handling, stockAnswer(handling, wish.product));
    case 'stock-unsaid':
      return askStock(handling, wish.product, wish.is);
    case 'stock-opened':
      return answer(handling, openedAnswer(handling, wish.product));
    case 'planted-somewhere':
      return askWherePlanted(handling, wish.planting);
    case 'ask':
      return answerQuestion(handling, wish.ask, wish.systems);
    case 'introduction':
      return answer(handling, { kind: 'introduction' });
    case 'explain':
      return explain(handling, wish);
    case 'wanted':
      return answer(handling, wantedOf(handling, wish));
    case 'how-full': {
      const systems = howFull(handling.standing, wish.systems, handling.nowMs);
      return answer(handling, { kind: 'how-full', systems });
    }
    case 'how-long': {
      const all = handling.standing.greenhouse.systems.map(({ id }) => id);
      const systems = lastingOf(handling.standing, all, handling.nowMs);
      return answer(handling, { kind: 'how-long', systems });
    }
    case 'who-is-away':
      return answerWhoIsAway(handling, wish.ofOneself ? handling.heard.member.handle : null);
    case 'logged':
      return answer(handling, loggedBy(handling.standing, wish.handle, wish.on, wish.systems));
    case 'supply':
      return answer(handling, supplyState(handling.standing, wish.of));
    case 'where':
      return answer(handling, whereKept(handling.standing, wish.what));
    case 'mixing':
      return answer(handling, {
        kind: 'safety',
        cautions: mixingCautions(wish.products.some(isReagent)),
      });
    case 'remind-once':
      return answer(handling, { kind: 'no-single-reminder' });
    case 'my-turns':
      return answerMyTurns(handling);
    case 'last':
      return answer(handling, lastReadings(handling.standing, wish.quantity, wish.systems));
    case 'season':
      return answer(handling, seasonAnswer(handling.standing, handling.nowMs, wish.asks));
    case 'rain':
      return answer(handling, { kind: 'rain', rain: rainOf(handling) });
    case 'attach-note':
      return attachNote(handling, wish);
    case 'how-to':
      return tellHowTo(handling, wish.about, around.askedDuties ?? null, wish.probes);
    case 'drop-notes':
      return dropNotes(handling, wish.about);
    case 'notes':
      return showNotes(handling, wish.about);
    case 'first-fruit':
      recordEntries(handling, [firstFruit(handling, wish, text)]);
      return;
    case 'what-if':
      return answer(handling, whatIfAnswer(handling.standing, wish.scenario, handling.nowMs));
  }
}

function answer(handling: Handling, told: Answer): void {
  handling.say({ kind: 'answer', answer: told });
}

/** `what is EC` may ask for the word, or for what was read. */
function explain(handling: Handling, { term, isBare }: Extract<Wish, { kind: 'explain' }>): void {
  answer(handling, { kind: 'explained', term });
  if (!isBare || (term !== 'ec' && term !== 'ph')) return;
  const read = lastReadings(handling.standing, term, null);
  if (read.kind === 'last-reading' && read.entries.length > 0) answer(handling, read);
}

function wantedOf(
  { standing }: Handling,
  { quantity, systems }: Extract<Wish, { kind: 'wanted' }>,
): Answer {
  const all = standing.greenhouse.systems.map(({ id }) => id);
  const ask = { kind: 'is-it-right', system: null, quantity, value: null } as const;
  return isItRight(standing, ask, systems ?? all);
}

function stockAnswer({ standing, nowMs }: Handling, product: string | null): KeepingAnswer {
  const all = stockOutlook(standing.greenhouse, standing.logbook, nowMs);
  const lines = product === null ? all : all.filter((line) => line.product === product);
  const rain = product === null ? rainLine(standing.greenhouse, standing.logbook, nowMs) : null;
  return { kind: 'stock', product, lines, buy: toBuy(lines), rain };
}

function isReagent(product: string): boolean {
  return product === 'ph-down' || product === 'ph-up';
}

function openedAnswer({ standing, nowMs }: Handling, product: string): KeepingAnswer {
  const all = stockOutlook(standing.greenhouse, standing.logbook, nowMs);
  const line = all.find((each) => each.product === product) ?? null;
  return { kind: 'stock-opened', product, line };
}

function rainOf({ standing, nowMs }: Handling): RainLine | null {
  return rainLine(standing.greenhouse, standing.logbook, nowMs);
}

/** On the day it was told, now; on an earlier one, at noon. */
function firstFruit(
  { standing, heard }: Handling,
  { system, on }: Extract<Wish, { kind: 'first-fruit' }>,
  text: string,
): EntryDraft {
  const { timeZone } = standing.greenhouse;
  const isToday = on === localDateOf(heard.writtenAtMs, timeZone);
  const atMs = isToday ? heard.writtenAtMs : instantOf(on, noon, timeZone);
  const note = text.trim();
  return { system, quantity: 'note', value: 1, atMs, note, milestone: 'first-fruit' };
}

const noon = '12:00' as LocalTime;
