import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Celsius } from '../units/temperature.ts';
import { nernstSlopeMvPerPh } from './nernst-slope.ts';

/**
 * Acceptance limits of instrument makers: slope 95 to 105 % of Nernst's is good, down to 85 % is
 * still accepted; the zero point may be 30 mV off.
 */
export const PROBE_LIMITS = {
  goodSlopeShare: { from: 0.95, to: 1.05 },
  leastSlopeShare: 0.85,
  offsetMv: 30,
} as const;

/** good: use it. worn: use it, clean it, think of a new one. unfit: its readings mean nothing. */
export type ProbeVerdict = 'good' | 'worn' | 'unfit';

export interface ProbeState {
  /** Slope as a share of Nernst's at this temperature; 1 is perfect. */
  readonly slopeShare: number;
  /** Voltage at pH 7, mV; 0 is perfect. */
  readonly offsetMv: number;
  readonly verdict: ProbeVerdict;
}

const ph: ValidRange = { quantity: 'pH of a buffer', unit: 'pH', from: 1, to: 13 };
const millivolts: ValidRange = { quantity: 'voltage', unit: 'mV', from: -600, to: 600 };
const shown: ValidRange = { quantity: 'reading in a buffer', unit: 'pH', from: 0, to: 14 };
/** Two buffers close together magnify every error of reading. */
const apart: ValidRange = { quantity: 'distance of the buffers', unit: 'pH', from: 1.5, to: 10 };

function verdictOn(slopeShare: number, offsetMv: number): ProbeVerdict {
  const { goodSlopeShare, leastSlopeShare, offsetMv: mostOffsetMv } = PROBE_LIMITS;
  const offsetHolds = Math.abs(offsetMv) <= mostOffsetMv;
  if (!offsetHolds || slopeShare < leastSlopeShare || slopeShare > goodSlopeShare.to) {
    return 'unfit';
  }
  return slopeShare >= goodSlopeShare.from ? 'good' : 'worn';
}

/**
 * Slope, zero point and verdict of a pH probe from its voltages in two buffers.
 *
 *     E = E₀ − S k (pH − 7)   so   k = (E₁ − E₂) / (S (pH₂ − pH₁)),   E₀ = E₁ + S k (pH₁ − 7)
 *
 * Buffers at least 1.5 pH apart, both of the temperature given, with their pH at that temperature.
 *
 * Source: Nernst equation; limits as instrument makers give them.
 * @example probeFromMillivolts({ first: { bufferPh: 7.01, millivolts: -15 },
 *   second: { bufferPh: 4.01, millivolts: 160 }, bufferCelsius: celsius(25) })
 *   // slope 98.6 %, a manual's worked example: accepted
 */
export function probeFromMillivolts(calibration: {
  readonly first: { readonly bufferPh: number; readonly millivolts: number };
  readonly second: { readonly bufferPh: number; readonly millivolts: number };
  readonly bufferCelsius: Celsius;
}): Outcome<ProbeState> {
  const { first, second } = calibration;
  const outside = firstOutside(
    [first.bufferPh, ph],
    [second.bufferPh, ph],
    [first.millivolts, millivolts],
    [second.millivolts, millivolts],
    [Math.abs(first.bufferPh - second.bufferPh), apart],
  );
  if (outside) return outside;
  const nernst = nernstSlopeMvPerPh(calibration.bufferCelsius);
  if (!nernst.ok) return nernst;
  const slopeMvPerPh = (first.millivolts - second.millivolts) / (second.bufferPh - first.bufferPh);
  const slopeShare = slopeMvPerPh / nernst.value;
  const offsetMv = first.millivolts + slopeMvPerPh * (first.bufferPh - 7);
  return holds({ slopeShare, offsetMv, verdict: verdictOn(slopeShare, offsetMv) });
}

/**
 * The same from what a meter shows in two buffers before it is set anew. The state is that of probe
 * and meter together, against the meter's last setting.
 *
 *     E = −S (pH shown − 7)
 *
 * @example probeFromShownPh({ first: { bufferPh: 7, shownPh: 7.2 },
 *   second: { bufferPh: 4, shownPh: 4.3 }, bufferCelsius: celsius(25) })
 *   // slope 96.7 %, offset −11.8 mV, good
 */
export function probeFromShownPh(calibration: {
  readonly first: { readonly bufferPh: number; readonly shownPh: number };
  readonly second: { readonly bufferPh: number; readonly shownPh: number };
  readonly bufferCelsius: Celsius;
}): Outcome<ProbeState> {
  const { first, second, bufferCelsius } = calibration;
  const outside = firstOutside([first.shownPh, shown], [second.shownPh, shown]);
  if (outside) return outside;
  const nernst = nernstSlopeMvPerPh(bufferCelsius);
  if (!nernst.ok) return nernst;
  const voltage = (shownPh: number) => -nernst.value * (shownPh - 7);
  return probeFromMillivolts({
    first: { bufferPh: first.bufferPh, millivolts: voltage(first.shownPh) },
    second: { bufferPh: second.bufferPh, millivolts: voltage(second.shownPh) },
    bufferCelsius,
  });
}
