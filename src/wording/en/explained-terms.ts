import type { ExplainedTerm } from '../../understanding/wishes/wish.ts';

/** Words of the trade for somebody who has never grown anything, in two lines each. */
const explained: Readonly<Record<ExplainedTerm, readonly [string, string]>> = {
  ec: [
    'EC says how much plant food is dissolved in the water: the higher, the stronger.',
    'It is read with an EC meter. Too low: the plants go hungry; too high: their roots suffer.',
  ],
  ph: [
    'pH says how acid the water is: 7 is neutral, lower is acid, higher is alkaline.',
    'It is read with a pH meter. Outside the wanted range the plants cannot take up their food.',
  ],
  reservoir: [
    'The reservoir is the tank or tub that holds the water with the plant food.',
    'The roots drink from it, so it must never run dry.',
  ],
  'top-up': [
    'A top-up is water added to what is still in the reservoir, nothing poured away.',
    'Tell me how much went in, and I know how fast the plants drink.',
  ],
  kratky: [
    'Kratky is growing over still water, without a pump or air: the roots reach down as the water sinks.',
    'The air gap above the water lets them breathe, so a Kratky jar is never filled back to the brim.',
  ],
  brim: [
    'The brim is the fullest that a reservoir is meant to be, not its very edge.',
    'Levels are counted from it: 50% is half of what it holds at the brim.',
  ],
  'low-mark': [
    'The low mark is the level that a reservoir should not sink below.',
    'I ask for a top-up before it is reached.',
  ],
  calibration: [
    'Calibrating is holding a meter into a solution of a known value and seeing what it shows.',
    'Meters drift: after a calibration I know by how much, and can trust what is read.',
  ],
  'reservoir-change': [
    'A reservoir change is the old solution poured away and new mixed in its place, up to the brim.',
    'I say when it is due. “how do I change …” with the name of a system tells the steps.',
  ],
  round: [
    'The round is the list of what is due, which I send every morning.',
    'Answer it with what was read and done; “what is due” shows it again.',
  ],
  'ph-down': [
    'pH down is an acid that makes the pH of the water lower, a few mL at a time.',
    'Ask “how much pH down” before any is added. Wear goggles and gloves.',
  ],
  'ph-up': [
    'pH up is an alkali that makes the pH of the water higher, a few mL at a time.',
    'Ask “how much pH up” before any is added. Wear goggles and gloves.',
  ],
};

export function explainedText(term: ExplainedTerm): string {
  return explained[term].join('\n');
}
