import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  conductivityFactor,
  conductivityFactorFromMillisiemens,
  millisiemensFromConductivityFactor,
  millisiemensFromPpm,
  PPM_FACTORS,
  ppmFromMillisiemens,
} from '../../../src/science/conductivity/scales.ts';
import {
  microsiemensFromMillisiemens,
  millisiemensFromMicrosiemens,
  millisiemensPerCm,
} from '../../../src/science/units/conductivity.ts';

describe('scales of conductivity', () => {
  it('show 1.8 mS/cm as 900, 1152 or 1260 ppm, CF 18 and 1800 µS/cm, common practice', () => {
    const reading = millisiemensPerCm(1.8);
    expect(PPM_FACTORS.map((factor) => ppmFromMillisiemens(reading, factor).ppm)).toEqual([
      900, 1152, 1260,
    ]);
    expect(conductivityFactorFromMillisiemens(reading)).toBe(18);
    expect(microsiemensFromMillisiemens(reading)).toBe(1800);
  });

  it('read 900 ppm back as 1.8 mS/cm on the 500 scale and 1.29 on the 700 scale', () => {
    expect(millisiemensFromPpm({ ppm: 900, factor: 500 })).toBe(1.8);
    expect(millisiemensFromPpm({ ppm: 900, factor: 700 })).toBeCloseTo(1.286, 3);
    expect(millisiemensFromConductivityFactor(conductivityFactor(18))).toBe(1.8);
  });

  it('come back from every scale to where they started', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.constantFrom(...PPM_FACTORS),
        (value, factor) => {
          const reading = millisiemensPerCm(value);
          expect(millisiemensFromPpm(ppmFromMillisiemens(reading, factor))).toBeCloseTo(value, 12);
          expect(
            millisiemensFromConductivityFactor(conductivityFactorFromMillisiemens(reading)),
          ).toBeCloseTo(value, 12);
          expect(millisiemensFromMicrosiemens(microsiemensFromMillisiemens(reading))).toBeCloseTo(
            value,
            12,
          );
        },
      ),
    );
  });
});
