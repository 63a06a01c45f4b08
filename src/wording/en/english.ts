import type { Reply } from '../../assistant/replies/reply.ts';
import type { Speaker } from '../spoken/speaker.ts';
import type { Wording } from '../wording.ts';
import { alertText } from './alert.ts';
import { answerText } from './answer.ts';
import { buttonText } from './button.ts';
import { dutyText } from './duty-text.ts';
import { pictureWords } from './picture-words.ts';
import { questionText } from './question.ts';
import { correctionText, receiptText } from './receipt.ts';
import { refusalText } from './refusal.ts';
import { roundText } from './round.ts';
import { speaking } from './speaking.ts';
import { whyText } from './why.ts';

/** English: British dates and clock, American where the greenhouse counts in US gallons. */
export const english: Wording = {
  reply: (reply, reader) => replyText(reply, speaking(reader)),
  button: (label, reader) => buttonText(label, speaking(reader)),
  duty: (line, reader) => dutyText([line], speaking(reader)),
  picture: (picture, reader) => pictureWords(picture, speaking(reader)),
  why: (line, reader) => whyText(line, speaking(reader)),
};

function replyText(reply: Reply, s: Speaker): string {
  switch (reply.kind) {
    case 'receipt':
      return receiptText(reply, s);
    case 'question':
      return questionText(reply.doubt, s);
    case 'answer':
      return answerText(reply.answer, s);
    case 'round':
      return roundText(reply, s);
    case 'alert':
      return alertText(reply.alert, s);
    case 'refusal':
      return refusalText(reply.because, s);
    case 'correction':
      return correctionText(reply, s);
  }
}
