import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';
import type { Caution, Cautions } from './caution.ts';

/** For whoever handles strong acid and alkali. */
export const STRONG_REAGENTS: readonly Caution[] = [
  'label-and-data-sheet',
  'goggles-and-gloves',
  'acid-into-water',
  'acid-and-alkali-apart',
  'never-with-bleach',
  'rinse-skin-and-eyes',
  'out-of-reach',
];
const CONCENTRATES: readonly Caution[] = ['concentrates-apart', 'label-and-data-sheet'];
const NEW_SOLUTION: readonly Caution[] = [
  'unplug-before-hands-in',
  'concentrates-apart',
  'label-and-data-sheet',
  'local-rules',
];
const HANDS_IN_WATER: readonly Caution[] = [
  'unplug-before-hands-in',
  'residual-current-device',
  'never-with-bleach',
  'no-disinfectant-by-guess',
];
const MAINS: readonly Caution[] = [
  'unplug-before-hands-in',
  'residual-current-device',
  'licensed-electrician',
];

/** Whatever is done in a greenhouse: for who asks whether something is safe. */
export function allCautions(): Cautions {
  const about = [...STRONG_REAGENTS, ...CONCENTRATES, ...HANDS_IN_WATER, ...MAINS];
  return { about: [...new Set(about)], inFull: true };
}

/** Strong acid or alkali: in full until a dose of this product has been logged. */
export function reagentCautions(
  logbook: Logbook,
  systems: readonly SystemId[],
  product: string,
): Cautions {
  return { about: STRONG_REAGENTS, inFull: !wasGiven(logbook, systems, product) };
}

export function concentrateCautions(
  logbook: Logbook,
  systems: readonly SystemId[],
  product: string,
): Cautions {
  return { about: CONCENTRATES, inFull: !wasGiven(logbook, systems, product) };
}

/** For who asks whether two products may be mixed; `isReagent`: one of them is acid or alkali. */
export function mixingCautions(isReagent: boolean): Cautions {
  return {
    about: isReagent ? [...CONCENTRATES, ...STRONG_REAGENTS.slice(1)] : CONCENTRATES,
    inFull: true,
  };
}

export function changeCautions(logbook: Logbook, systems: readonly SystemId[]): Cautions {
  const inFull = !systems.some((id) => liveEntries(logbook, id, 'reservoir-change').length > 0);
  return { about: NEW_SOLUTION, inFull };
}

export function cleaningCautions(logbook: Logbook, systems: readonly SystemId[]): Cautions {
  const inFull = !systems.some((id) =>
    liveEntries(logbook, id, 'duty-done').some(({ duty }) => duty === 'clean'),
  );
  return { about: HANDS_IN_WATER, inFull };
}

/** Somebody is about to look at plugs and pumps: in full at the first outage, briefly afterwards. */
export function mainsCautions(logbook: Logbook, systems: readonly (SystemId | null)[]): Cautions {
  const outages = systems.flatMap((id) => liveEntries(logbook, id, 'outage'));
  return { about: MAINS, inFull: outages.length <= 1 };
}

function wasGiven(logbook: Logbook, systems: readonly SystemId[], product: string): boolean {
  return systems.some((id) =>
    liveEntries(logbook, id, 'dose').some((entry) => entry.product === product),
  );
}
