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
      return 'Gut, alles bleibt, wie es ist.';
    case 'planted-where':
      return `Wo war das? Sag es im Ganzen, zum Beispiel „12 Salate in ${s.greenhouse.systems.at(-1)?.name ?? ''} gepflanzt“. Bis dahin ist nichts eingetragen.`;
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
      return 'Da gibt es nichts zurückzunehmen.';
    case 'nothing-to-put-right':
      return 'Ich finde nichts von dir, was das richtigstellen würde, und habe nichts geändert. Sag es bitte im Ganzen, mit dem System und was es ist, zum Beispiel „pH 5,8“.';
    case 'nothing-to-put-back':
      return 'Es ist nichts gestrichen, was ich wieder eintragen könnte.';
    case 'nothing-open':
      return 'Das war schon erledigt, es ist nichts offen.';
    case 'too-late':
      return 'Das ist nicht mehr offen, es wurde nichts geändert.';
    case 'left-out':
      return 'Gut, es wurde nichts eingetragen.';
    case 'thanks':
      return 'Gern.';
    case 'greeted':
      return 'Hallo.';
    case 'heard':
      return 'Alles klar.';
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
      return 'An etwas Einmaliges kann ich nicht erinnern. An Wiederkehrendes schon: „erinnere mich alle 14 Tage daran: Filter putzen“. Was nur festgehalten werden soll, schreib als „Notiz: …“.';
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
      return 'Das kann ich noch nicht ausrechnen.';
    case 'nothing-logged':
      return 'Dazu ist noch nichts eingetragen.';
  }
}
