import { type Frame, isMeasure } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { isDeed } from './clause-kinds.ts';

/**
 * `what's wrong with the jars`, `how do I undo`, `will the bench make it to Sunday`: a message that tells no figure and
 * opens as a question, with or without its mark.
 */
export function opensAsAsked(frame: Frame): boolean {
  if (frame.terms.some(isMeasure)) return false;
  const first = frame.terms.findIndex((term) => !means(term, 'filler', 'greeting'));
  const [term, next] = [frame.terms[first], frame.terms[first + 1]];
  if (!term || !next || next.kind === 'stop') return false;
  const { asksOneself, words } = frame.lexicon.own.vocabulary;
  if (means(term, 'how', 'how-much', 'how-long', 'why', 'who')) return true;
  // `nothing used` tells.
  if (means(term, 'anything')) return !means(term, 'not', 'did-not');
  if (means(term, 'what', 'when-past', 'which')) return !means(next, 'self', 'pronoun');
  // `what if I forget the jars` is one phrase.
  if (means(term, 'condition')) return words.what.includes(term.text.split(' ')[0]!);
  // `was the gutters` puts right which system it was.
  if (!means(term, 'is-it') || means(term, 'was')) return false;
  const isOfOneself = [term.text, `${term.text} ${next.text}`].some((text) =>
    asksOneself.includes(text),
  );
  // `muss die Wanne noch nachfüllen`: somebody means to.
  if (!isOfOneself && means(term, 'intention') && frame.terms.some(isDeed)) return false;
  return isOfOneself || next.kind === 'name' || means(next, 'article', 'anything');
}
