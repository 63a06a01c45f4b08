import { holds, type Outcome } from '../science/outcome.ts';
import {
  alkalinityOfCarbonEqPerL,
  alkalinityUnderAirEqPerL,
  carbonOfAlkalinityMolPerL,
} from '../science/ph/carbonate-alkalinity.ts';
import { type CarbonateConstants, carbonateConstants } from '../science/ph/carbonate-constants.ts';
import { phosphateAlkaliMeqPerL } from '../science/ph/proton-yield.ts';
import { millimolePerL } from '../science/units/concentration.ts';
import { celsius } from '../science/units/temperature.ts';

/** What holds the pH of a solution where it is: its carbonate and its phosphate. */
export interface PhBuffer {
  readonly carbonMolPerL: number;
  readonly phosphateMmolPerL: number;
  readonly constants: CarbonateConstants;
}

/** The buffer's formulas hold between these. */
const LOWEST_PH = 3.5;
const HIGHEST_PH = 9.9;
const HALVINGS = 40;

/** ppm of carbon dioxide in the air of a greenhouse. */
const AIR_CARBON_DIOXIDE_PPM = 420;
/** Common recipes hold 1 mmol/L at about 2.2 mS/cm (Hoagland and Arnon 1938); roots take it first, so about half is reckoned with. */
const PHOSPHATE_MMOL_PER_L_PER_MS = 0.25;
/** Above this the alkalinity of the water is mostly still there; below, acid has taken it. */
const STILL_ALKALINE_PH = 6.3;
/** Carbonate that is left, as a share of the water's alkalinity, once acid has taken that: an estimate. */
const LEFT_AFTER_ACID_SHARE = 0.3;
/** Roots breathe carbon dioxide into their water: this much at least is there, an estimate. */
const LEAST_CARBON_MOL_PER_L = 5e-5;

/**
 * The buffer of a solution from the alkalinity of the water that it is made with. What is left of
 * that alkalinity nobody has measured: the guess is set right by what doses do (`dose-response.ts`).
 */
export function presumedBuffer(solution: {
  readonly presentPh: number;
  readonly waterAlkalinityMeqPerL: number;
  readonly ecMsPerCm: number;
  readonly waterC: number;
}): Outcome<PhBuffer> {
  const constants = carbonateConstants(celsius(solution.waterC));
  if (!constants.ok) return constants;
  return holds({
    carbonMolPerL: presumedCarbon(solution, constants.value),
    phosphateMmolPerL: PHOSPHATE_MMOL_PER_L_PER_MS * solution.ecMsPerCm,
    constants: constants.value,
  });
}

function presumedCarbon(
  solution: { readonly presentPh: number; readonly waterAlkalinityMeqPerL: number },
  constants: CarbonateConstants,
): number {
  const ofWater = solution.waterAlkalinityMeqPerL / 1000;
  if (solution.presentPh < STILL_ALKALINE_PH) {
    return Math.max(LEAST_CARBON_MOL_PER_L, LEFT_AFTER_ACID_SHARE * ofWater);
  }
  const underAir = alkalinityUnderAirEqPerL(
    AIR_CARBON_DIOXIDE_PPM / 1e6,
    solution.presentPh,
    constants,
  );
  const alkalinity = Math.max(ofWater, underAir);
  return Math.max(
    LEAST_CARBON_MOL_PER_L,
    carbonOfAlkalinityMolPerL(alkalinity, solution.presentPh, constants),
  );
}

/** Alkali that moves the pH from one value to another, meq/L; acid is negative. pH 3.5 to 9.9. */
export function alkaliBetweenMeqPerL(buffer: PhBuffer, fromPh: number, toPh: number): number {
  const [from, to] = [inside(fromPh), inside(toPh)];
  const phosphate = phosphateAlkaliMeqPerL({
    phosphateMmolPerL: millimolePerL(buffer.phosphateMmolPerL),
    presentPh: from,
    targetPh: to,
  });
  const carbonate =
    alkalinityOfCarbonEqPerL(buffer.carbonMolPerL, to, buffer.constants) -
    alkalinityOfCarbonEqPerL(buffer.carbonMolPerL, from, buffer.constants);
  return 1000 * carbonate + (phosphate.ok ? phosphate.value : 0);
}

/** pH after so much alkali (acid: negative), meq/L; held between 3.5 and 9.9. */
export function phAfterAlkali(buffer: PhBuffer, fromPh: number, alkaliMeqPerL: number): number {
  let [low, high] = [LOWEST_PH, HIGHEST_PH];
  // More alkali is always a higher pH, so halving the span cannot miss.
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (alkaliBetweenMeqPerL(buffer, fromPh, middle) < alkaliMeqPerL) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function inside(ph: number): number {
  return Math.min(HIGHEST_PH, Math.max(LOWEST_PH, ph));
}
