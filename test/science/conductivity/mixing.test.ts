import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mixedConductivityMsPerCm,
  waterToDiluteL,
} from '../../../src/science/conductivity/mixing.ts';
import { recipeConductivityMsPerCm } from '../../../src/science/conductivity/recipe-conductivity.ts';
import { litre } from '../../../src/science/units/amount.ts';
import { millimolePerL } from '../../../src/science/units/concentration.ts';
import { millisiemensPerCm } from '../../../src/science/units/conductivity.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const water = (volume: number, conductivity: number) => ({
  volumeL: litre(volume),
  conductivityMsPerCm: millisiemensPerCm(conductivity),
});
const strong = {
  ...water(100, 2.4),
  targetMsPerCm: millisiemensPerCm(1.8),
  waterMsPerCm: millisiemensPerCm(0.3),
};

describe('mixing of waters', () => {
  it('lies between its parts and keeps the salts', () => {
    const part = fc.tuple(
      fc.double({ min: 0.1, max: 1000, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const mixed = valueOf(mixedConductivityMsPerCm(parts.map(([v, ec]) => water(v, ec))));
        const all = parts.map(([, ec]) => ec);
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
        expect(mixed).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
        const volume = parts.reduce((sum, [v]) => sum + v, 0);
        expect(mixed * volume).toBeCloseTo(
          parts.reduce((sum, [v, ec]) => sum + v * ec, 0),
          6,
        );
      }),
    );
  });

  it('agrees within 4 % with the ion model for a potassium nitrate solution in half as much water', () => {
    const of = (mmol: number) =>
      recipeConductivityMsPerCm({ K: millimolePerL(mmol), NO3: millimolePerL(mmol) }, celsius(25));
    const byMixing = valueOf(
      mixedConductivityMsPerCm([
        { volumeL: litre(100), conductivityMsPerCm: valueOf(of(20)) },
        { volumeL: litre(50), conductivityMsPerCm: millisiemensPerCm(0) },
      ]),
    );
    expect(Math.abs(byMixing / valueOf(of((20 * 100) / 150)) - 1)).toBeLessThan(0.04);
  });

  it('is outside for stock concentrates and for nothing at all', () => {
    expect(outsideFrom(mixedConductivityMsPerCm([water(1, 120)])).to).toBe(5);
    expect(outsideFrom(mixedConductivityMsPerCm([])).quantity).toBe('volume');
  });
});

describe('dilution', () => {
  it('of 100 L from 2.4 to 1.8 with water of 0.3 takes 40.0 L, regression value', () => {
    expect(valueOf(waterToDiluteL(strong))).toBeCloseTo(40, 9);
  });

  it('mixed as told lands on what was wanted', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 0.8, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.double({ min: 2, max: 5, noNaN: true }),
        (volume, plain, target, now) => {
          const added = valueOf(
            waterToDiluteL({
              ...water(volume, now),
              targetMsPerCm: millisiemensPerCm(target),
              waterMsPerCm: millisiemensPerCm(plain),
            }),
          );
          const mixed = mixedConductivityMsPerCm([water(volume, now), water(added, plain)]);
          expect(valueOf(mixed)).toBeCloseTo(target, 9);
        },
      ),
    );
  });

  it('is outside when the water is as strong as what is wanted, or the solution weaker', () => {
    const hard = { ...strong, waterMsPerCm: millisiemensPerCm(1.8) };
    expect(outsideFrom(waterToDiluteL(hard)).quantity).toBe('wanted conductivity');
    const weak = { ...strong, conductivityMsPerCm: millisiemensPerCm(1.2) };
    expect(outsideFrom(waterToDiluteL(weak)).to).toBe(1.2);
  });
});
