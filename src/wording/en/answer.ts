import type { Answer } from '../../assistant/replies/answer.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { adviceAnswer } from './advice/advice-answer.ts';
import { cautionText } from './advice/caution-text.ts';
import { dueAnswer, whenNextAnswer, whyAnswer } from './due-answer.ts';
import { explainedText } from './explained-terms.ts';
import { familyAnswer } from './family/family-answer.ts';
import { helpAnswer, introduction, unknownAnswer } from './help-answer.ts';
import { householdText } from './household-news.ts';
import { howFullAnswer } from './how-full.ts';
import { changedText } from './keeping/change-text.ts';
import { choresText } from './keeping/chores-text.ts';
import { notesText } from './keeping/notes-text.ts';
import { seasonText } from './keeping/season-text.ts';
import { openedAnswer, rainAnswer, stockAnswer } from './keeping/stock-text.ts';
import { isItRightAnswer, lastReadingAnswer, whoAnswer } from './log-answer.ts';
import { pictureText } from './picture-words.ts';
import { plainText } from './plain-answer.ts';
import { supplyAnswer, whereAnswer } from './supply-answer.ts';
import { howLongAnswer, showAnswer, useAnswer } from './water-answer.ts';
import { whatIfText } from './what-if.ts';

/** The answer to a member's question. */
export function answerText(answer: Answer, s: Speaker): string {
  switch (answer.kind) {
    case 'how-much':
    case 'mix':
    case 'converted':
    case 'fill-with-pump':
    case 'without-supply':
      return adviceAnswer(answer, s);
    case 'set-up':
      return changedText(answer.change, answer.state, s);
    case 'set-up-left':
      return 'All right, everything stays as it is.';
    case 'planted-where':
      return `Where was that? Say it whole, for example “planted 12 lettuces in ${s.greenhouse.systems.at(-1)?.name ?? ''}”. Until then nothing is kept.`;
    case 'stock':
      return stockAnswer(answer, s);
    case 'stock-opened':
      return openedAnswer(answer, s);
    case 'season':
      return seasonText(answer, s);
    case 'chores':
      return choresText(answer.chores, s);
    case 'rain':
      return rainAnswer(answer, s);
    case 'notes':
      return notesText(answer, s);
    case 'settled':
    case 'after-all':
    case 'unsettled':
    case 'away-plan':
    case 'home-coming':
    case 'roster':
    case 'my-turns':
    case 'how-to':
    case 'photo':
    case 'no-such-duty':
    case 'nobody-away':
    case 'back-when':
    case 'who-is-away':
    case 'one-chore':
    case 'danger':
      return familyAnswer(answer, s);
    case 'due':
      return dueAnswer(answer, s);
    case 'why':
      return whyAnswer(answer, s);
    case 'what-if':
      return whatIfText(answer.told, s);
    case 'when-next':
      return whenNextAnswer(answer, s);
    case 'how-full':
      return howFullAnswer(answer, s);
    case 'how-long':
      return howLongAnswer(answer, s);
    case 'last-reading':
      return lastReadingAnswer(answer, s);
    case 'use':
      return useAnswer(answer, s);
    case 'is-it-right':
      return isItRightAnswer(answer, s);
    case 'supply':
      return supplyAnswer(answer, s);
    case 'where':
      return whereAnswer(answer, s);
    case 'who':
      return whoAnswer(answer, s);
    case 'show':
      return showAnswer(answer, s);
    case 'picture':
      return pictureText(answer.picture, s);
    case 'nothing-to-take-back':
      return 'There is nothing to take back.';
    case 'nothing-to-put-right':
      return 'I find nothing of yours that this would put right, so nothing was changed. Please say it in full, with the system and what it is, for example “pH 5.8”.';
    case 'nothing-to-put-back':
      return 'Nothing is struck out that I could put back.';
    case 'nothing-open':
      return 'That was done already. Nothing is open.';
    case 'too-late':
      return 'That is no longer open, so nothing was changed.';
    case 'left-out':
      return 'All right, nothing was logged.';
    case 'thanks':
      return "You're welcome.";
    case 'greeted':
      return 'Hello.';
    case 'heard':
      return 'All right.';
    case 'cannot-tell':
      return cannotTell(answer.because);
    case 'household':
      return householdText(answer.news, s);
    case 'safety':
      return cautionText(answer.cautions);
    case 'help':
      return helpAnswer(s);
    case 'introduction':
      return introduction(s);
    case 'no-single-reminder':
      return 'I cannot remind of something once. What comes back I can: “remind me to clean the filter every 14 days”. What is only to be kept, write as “note: …”.';
    case 'explained':
      return explainedText(answer.term);
    case 'containers':
    case 'grown':
    case 'water-source':
    case 'urgent':
    case 'out-of-range':
    case 'why-reading':
    case 'room':
    case 'first':
    case 'fullest':
    case 'why-use':
    case 'days-told':
    case 'compared':
    case 'which-value':
      return plainText(answer, s);
    case 'unknown':
      return unknownAnswer(s);
  }
}

function cannotTell(because: Extract<Answer, { kind: 'cannot-tell' }>['because']): string {
  switch (because) {
    case 'not-built':
      return 'I cannot work that out yet.';
    case 'nothing-logged':
      return 'Nothing has been logged for that yet.';
  }
}
