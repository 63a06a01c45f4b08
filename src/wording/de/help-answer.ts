import { exampleSystems, exampleTopUpL, middleOf } from '../spoken/examples.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { valueText } from './value-text.ts';

/** What can be typed and asked, in two lines, with the household's own names. */
export function helpAnswer(s: Speaker): string {
  const [first, other] = exampleSystems(s.greenhouse);
  const reading = `${first.name} ${valueText('ph', middleOf(first.ph, 1), s)} ${valueText('ec', middleOf(first.ecMsPerCm, 1), s)}`;
  const topUp = `${other.name} ${s.amount(measureOf('top-up', exampleTopUpL[s.units.volume], s.units))} nachgefüllt`;
  return [
    `Sag mir, was du gemessen oder gemacht hast: „${reading}“, „${topUp}“, „rückgängig“.`,
    `Oder frag: ${questions(s)}.`,
  ].join('\n');
}

/** A newcomer's first question: what I do, and what to say. */
export function introduction(s: Speaker): string {
  const [first, other] = exampleSystems(s.greenhouse);
  const topUp = `${other.name} ${s.amount(measureOf('top-up', exampleTopUpL[s.units.volume], s.units))} nachgefüllt`;
  return [
    `Ich führe das Logbuch von ${s.greenhouse.name}: Ich sage, was zu tun ist, und schreibe auf, was du mir sagst.`,
    `Frag „was ist zu tun“ und sag, was du gemacht hast, etwa „${topUp}“ oder „${first.name} ${valueText('ph', middleOf(first.ph, 1), s)}“; „rückgängig“ nimmt es zurück.`,
  ].join('\n');
}

export function unknownAnswer(s: Speaker): string {
  return ['Das kann ich nicht beantworten.', `Du kannst fragen: ${questions(s)}.`].join('\n');
}

function questions(s: Speaker): string {
  const [first] = exampleSystems(s.greenhouse);
  return s.or(['„was ist zu tun“', `„wie lange reicht ${first.name}“`, '„wie war der letzte pH“']);
}
