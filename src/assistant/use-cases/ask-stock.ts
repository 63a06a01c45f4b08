import type { SetUpChange } from '../../greenhouse/set-up/set-up-change.ts';
import { stockLeftMl } from '../../planning/stock-left.ts';
import type { StockSaid } from '../../understanding/statement.ts';
import { readStockAnswer } from '../../understanding/wishes/read-stock-answer.ts';
import { type AskedQuestion, withoutQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { askBack } from './ask-back.ts';
import { makeChange } from './change-set-up.ts';

/** Asks how much of a product was bought, or is left: bottles come in many sizes. */
export function askStock(handling: Handling, product: string, is: StockSaid): void {
  const { greenhouse, logbook } = handling.standing;
  const item = greenhouse.stock.find((each) => each.product === product);
  const leftMl = item ? stockLeftMl(item, greenhouse, logbook) : null;
  askBack(handling, {
    reason: { kind: 'how-much-stock', product, is, leftMl },
    choices: [],
    waiting: null,
  });
}

/** Takes what a member says for the amount that was asked for; false: it is none. */
export function answersStock(handling: Handling, question: AskedQuestion, text: string): boolean {
  const { reason } = question.doubt;
  if (reason.kind !== 'how-much-stock') return false;
  const { heard, spoken } = handling;
  const said = readStockAnswer(text, spoken, heard.member, heard.writtenAtMs);
  if (said === null) return false;
  handling.conversation = withoutQuestion(handling.conversation, question.questionId);
  const { product, is } = reason;
  if (said === 'no-unit') askStock(handling, product, is);
  else makeChange(handling, changeOf(product, is, said.mL), heard.messageId);
  return true;
}

function changeOf(product: string, is: StockSaid, mL: number): SetUpChange {
  return { kind: is === 'bought' ? 'stock-added' : 'stock-counted', product, mL };
}
