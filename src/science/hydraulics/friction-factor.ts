import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';

const reynolds: ValidRange = { quantity: 'Reynolds number', unit: '1', from: 1e-6, to: 1e8 };
const roughness: ValidRange = { quantity: 'relative roughness', unit: '1', from: 0, to: 0.05 };

/** Below, flow is laminar; above the second, turbulent. */
const LAMINAR_END = 2300;
const TURBULENT_START = 4000;
const ROUNDS = 30;

/** Colebrook's law solved by putting its answer back in; it settles within a dozen rounds. */
function colebrook(reynoldsNumber: number, relativeRoughness: number): number {
  let inverseRoot = 7;
  for (let round = 0; round < ROUNDS; round += 1) {
    inverseRoot = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 * inverseRoot) / reynoldsNumber);
  }
  return 1 / inverseRoot ** 2;
}

/**
 * Darcy friction factor of a round pipe.
 *
 *     laminar, Re < 2300     f = 64/Re
 *     turbulent, Re > 4000   1/√f = −2 log₁₀[ (ε/D)/3.7 + 2.51/(Re √f) ]
 *
 * In between, where nothing is certain, a straight line joins the two. Re to 10⁸, ε/D to 0.05.
 *
 * Source: Hagen and Poiseuille; Colebrook 1939, as in Moody's chart.
 * @example darcyFrictionFactor(1e5, 1e-4) // 0.0185, Moody's chart
 */
export function darcyFrictionFactor(
  reynoldsNumber: number,
  relativeRoughness: number,
): Outcome<number> {
  const outside = firstOutside([reynoldsNumber, reynolds], [relativeRoughness, roughness]);
  if (outside) return outside;
  if (reynoldsNumber <= LAMINAR_END) return holds(64 / reynoldsNumber);
  if (reynoldsNumber >= TURBULENT_START) {
    return holds(colebrook(reynoldsNumber, relativeRoughness));
  }
  const laminar = 64 / LAMINAR_END;
  const turbulent = colebrook(TURBULENT_START, relativeRoughness);
  const share = (reynoldsNumber - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
  return holds(laminar + share * (turbulent - laminar));
}
