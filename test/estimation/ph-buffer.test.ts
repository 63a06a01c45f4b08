import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  alkaliBetweenMeqPerL,
  type PhBuffer,
  phAfterAlkali,
  presumedBuffer,
} from '../../src/estimation/ph-buffer.ts';
import { closedDose } from '../../src/science/ph/closed-dose.ts';
import { milliequivalentPerL } from '../../src/science/units/concentration.ts';
import { celsius } from '../../src/science/units/temperature.ts';

function bufferOf(presentPh: number, waterAlkalinityMeqPerL: number, ecMsPerCm = 0): PhBuffer {
  const buffer = presumedBuffer({ presentPh, waterAlkalinityMeqPerL, ecMsPerCm, waterC: 25 });
  if (!buffer.ok) throw new Error('no buffer');
  return buffer.value;
}

describe('the buffer of a solution', () => {
  test('without phosphate takes what the closed carbonate system takes', () => {
    // Stumm and Morgan, closed system, 25 °C: 3 meq/L from pH 7.6 to 5.8 take 2.308 meq/L of acid.
    const dose = closedDose({
      alkalinityMeqPerL: milliequivalentPerL(3),
      presentPh: 7.6,
      targetPh: 5.8,
      waterCelsius: celsius(25),
    });
    const taken = -alkaliBetweenMeqPerL(bufferOf(7.6, 3), 7.6, 5.8);
    expect(taken).toBeCloseTo(2.308, 3);
    expect(dose.ok && dose.value.meqPerL).toBeCloseTo(taken, 6);
  });

  test('leads back to the pH that the alkali was reckoned for', () => {
    const ph = fc.double({ min: 4, max: 9.5, noNaN: true });
    fc.assert(
      fc.property(ph, ph, fc.double({ min: 0, max: 8, noNaN: true }), (from, to, alkalinity) => {
        const buffer = bufferOf(from, alkalinity, 1.5);
        const alkali = alkaliBetweenMeqPerL(buffer, from, to);
        expect(phAfterAlkali(buffer, from, alkali)).toBeCloseTo(to, 4);
      }),
    );
  });

  test('moves up with alkali and down with acid, the less the more it holds', () => {
    const thin = bufferOf(7.4, 0.1);
    const thick = bufferOf(7.4, 4);
    expect(phAfterAlkali(thin, 7.4, -0.05)).toBeLessThan(phAfterAlkali(thick, 7.4, -0.05));
    expect(phAfterAlkali(thick, 7.4, -0.05)).toBeLessThan(7.4);
    expect(phAfterAlkali(thick, 7.4, 0.05)).toBeGreaterThan(7.4);
  });

  test('is not reckoned for water that is too hot for the formulas', () => {
    const hot = { presentPh: 6, waterAlkalinityMeqPerL: 1, ecMsPerCm: 1, waterC: 70 };
    expect(presumedBuffer(hot).ok).toBe(false);
  });
});
