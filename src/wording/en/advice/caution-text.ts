import type { Caution, Cautions } from '../../../planning/caution.ts';

const IN_FULL: Readonly<Record<Caution, string>> = {
  'label-and-data-sheet':
    'The label and the safety data sheet of the product stand above my figure.',
  'goggles-and-gloves': 'Wear goggles and gloves, and air the place.',
  'acid-into-water': 'Acid or alkali into water, never water into acid or alkali.',
  'never-with-bleach':
    'Never let acid meet bleach, which sets free chlorine, nor bleach meet ammonia.',
  'acid-and-alkali-apart': 'Never mix the acid and the alkali, and keep their bottles apart.',
  'concentrates-apart':
    'Never mix concentrates undiluted: one into the full tank, stir, then the other.',
  'rinse-skin-and-eyes':
    'On skin or in eyes: rinse with water for 15 to 20 minutes and call the poison or emergency number.',
  'out-of-reach':
    'Keep it in its own labelled bottle, never in a food bottle, out of reach of children and pets.',
  'unplug-before-hands-in': 'Unplug mains devices before your hands go into the water.',
  'residual-current-device':
    'Mains near water wants a residual-current device of 30 mA or less, sockets above the water and drip loops.',
  'licensed-electrician': 'Leave fixed wiring to a licensed electrician.',
  'local-rules': 'Old solution: as your local rules say; never into a stream or pond.',
  'no-disinfectant-by-guess':
    'Disinfectants only as their label says, never by a figure of mine; rinse well afterwards.',
};

/** Once they have been read in full. */
const BRIEFLY: Readonly<Record<Caution, string>> = {
  'label-and-data-sheet': 'label first',
  'goggles-and-gloves': 'goggles and gloves',
  'acid-into-water': 'into water, not the other way',
  'never-with-bleach': 'never with bleach',
  'acid-and-alkali-apart': 'acid and alkali apart',
  'concentrates-apart': 'A and B never together undiluted',
  'rinse-skin-and-eyes': 'splashes: rinse 15 minutes',
  'out-of-reach': 'out of reach of children',
  'unplug-before-hands-in': 'unplug before hands go in',
  'residual-current-device': 'residual-current protection',
  'licensed-electrician': 'fixed wiring: electrician',
  'local-rules': 'old solution by local rules',
  'no-disinfectant-by-guess': 'disinfectants by their label only',
};

/** `Careful: …`, whole sentences the first time, a few words afterwards. */
export function cautionText({ about, inFull }: Cautions): string {
  if (inFull) return `Careful: ${about.map((caution) => IN_FULL[caution]).join(' ')}`;
  return `Careful: ${about.map((caution) => BRIEFLY[caution]).join('; ')}.`;
}
