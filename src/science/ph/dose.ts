import { type MilliequivalentPerL, milliequivalentPerL } from '../units/concentration.ts';

/** What to add to a litre of water to move its pH, as charge. */
export interface PhDose {
  readonly add: 'acid' | 'alkali' | 'nothing';
  readonly meqPerL: MilliequivalentPerL;
}

/** Acid takes alkalinity away and alkali adds it, one for one. */
export function doseFor(beforeEqPerL: number, afterEqPerL: number): PhDose {
  const takenMeqPerL = (beforeEqPerL - afterEqPerL) * 1000;
  if (takenMeqPerL === 0) return { add: 'nothing', meqPerL: milliequivalentPerL(0) };
  return {
    add: takenMeqPerL > 0 ? 'acid' : 'alkali',
    meqPerL: milliequivalentPerL(Math.abs(takenMeqPerL)),
  };
}
