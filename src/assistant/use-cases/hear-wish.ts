import { stockOutlook, toBuy } from '../../planning/stock-outlook.ts';
import { readGuideAnswer } from '../../understanding/wishes/read-guide-answer.ts';
import { readWish } from '../../understanding/wishes/read-wish.ts';
import type { Wish } from '../../understanding/wishes/wish.ts';
import { seasonAnswer } from '../answers/season-answer.ts';
import { whatIfAnswer } from '../answers/what-if.ts';
import { type AskedQuestion, openQuestions, withQuestionsLapsed } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import type { Answer } from '../replies/answer.ts';
import type { KeepingAnswer } from '../replies/keeping.ts';
import { proposeChange, settleChange } from './change-set-up.ts';
import { hearGuide, startGuide } from './guide-set-up.ts';
import type { Surroundings } from './hear-message.ts';

/**
 * Hears what is about the set-up, the stock or the season: a yes or no to a change that was shown, an
 * answer to the guided set-up, a wish. False: it is none of these, and nothing was done.
 */
export function hearWish(handling: Handling, text: string, around: Surroundings): boolean {
  if (handling.heard.isOverheard) return false;
  if (answersChange(handling, text, around)) return true;
  if (hearGuide(handling, text, around)) return true;
  const { standing, heard } = handling;
  if (around.repliedTo?.kind === 'question') return false;
  const wish = readWish(text, standing.greenhouse, heard.member, heard.writtenAtMs);
  if (!wish) return false;
  handling.conversation = withQuestionsLapsed(handling.conversation);
  grant(handling, wish);
  return true;
}

function answersChange(handling: Handling, text: string, around: Surroundings): boolean {
  const question = changeAskedOf(handling, around);
  if (!question) return false;
  const { standing, heard } = handling;
  const said = readGuideAnswer('summary', text, standing.greenhouse, heard.member, handling.nowMs);
  if (said?.kind !== 'yes' && said?.kind !== 'no' && said?.kind !== 'stop') return false;
  settleChange(handling, question, said.kind === 'yes');
  return true;
}

/** The change that was shown last, where nothing was asked since. */
function changeAskedOf(handling: Handling, { repliedTo }: Surroundings): AskedQuestion | null {
  const { conversation, heard } = handling;
  const question =
    repliedTo?.kind === 'question'
      ? conversation.questions.find(({ questionId }) => questionId === repliedTo.questionId)
      : repliedTo === null
        ? openQuestions(conversation, heard.writtenAtMs)[0]
        : undefined;
  return question?.doubt.reason.kind === 'change-set-up' ? question : null;
}

function grant(handling: Handling, wish: Wish): void {
  switch (wish.kind) {
    case 'change':
      return proposeChange(handling, wish.change);
    case 'guide':
      return startGuide(handling, wish.of);
    case 'stock':
      return answer(handling, stockAnswer(handling, wish.product));
    case 'season':
      return answer(handling, seasonAnswer(handling.standing, handling.nowMs));
    case 'what-if':
      return answer(handling, whatIfAnswer(handling.standing, wish.scenario, handling.nowMs));
  }
}

function answer(handling: Handling, told: Answer): void {
  handling.say({ kind: 'answer', answer: told });
}

function stockAnswer({ standing, nowMs }: Handling, product: string | null): KeepingAnswer {
  const all = stockOutlook(standing.greenhouse, standing.logbook, nowMs);
  const lines = product === null ? all : all.filter((line) => line.product === product);
  return { kind: 'stock', product, lines, buy: toBuy(lines) };
}
