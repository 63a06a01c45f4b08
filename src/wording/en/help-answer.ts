import { exampleSystems, exampleTopUpL, middleOf } from '../spoken/examples.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { valueText } from './value-text.ts';

/** What can be typed and asked, in two lines, with the household's own names. */
export function helpAnswer(s: Speaker): string {
  const [first, other] = exampleSystems(s.greenhouse);
  const reading = `${first.name} ${valueText('ph', middleOf(first.ph, 1), s)} ${valueText('ec', middleOf(first.ecMsPerCm, 1), s)}`;
  const topUp = `topped up ${other.name} ${s.amount(measureOf('top-up', exampleTopUpL[s.units.volume], s.units))}`;
  return [
    `Tell me what you measured or did: “${reading}”, “${topUp}”, “undo”.`,
    `Or ask: ${questions(s)}.`,
  ].join('\n');
}

/** A newcomer's first question: what I do, and what to say. */
export function introduction(s: Speaker): string {
  const [first, other] = exampleSystems(s.greenhouse);
  const topUp = `topped up ${other.name} ${s.amount(measureOf('top-up', exampleTopUpL[s.units.volume], s.units))}`;
  return [
    `I keep the logbook of ${s.greenhouse.name}: I say what needs doing, and note down what you tell me.`,
    `Ask “what needs doing”, and tell me what you did, like “${topUp}” or “${first.name} ${valueText('ph', middleOf(first.ph, 1), s)}”; “undo” takes it back.`,
  ].join('\n');
}

export function unknownAnswer(s: Speaker): string {
  return ['I cannot answer that.', `You can ask ${questions(s)}.`].join('\n');
}

function questions(s: Speaker): string {
  const [first] = exampleSystems(s.greenhouse);
  return s.or([
    '“what needs doing”',
    `“how long will ${first.name} last”`,
    '“what was the last pH”',
  ]);
}
