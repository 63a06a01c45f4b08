import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardConductivityUsPerCm } from '../../../src/science/conductivity/conductivity-standards.ts';
import { conductivityAt25MsPerCm } from '../../../src/science/conductivity/linear-compensation.ts';
import {
  naturalWaterConductivityAt25UsPerCm,
  naturalWaterFactorAt25,
} from '../../../src/science/conductivity/natural-water-compensation.ts';
import {
  microsiemensPerCm,
  millisiemensFromMicrosiemens,
  millisiemensPerCm,
} from '../../../src/science/units/conductivity.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { outsideFrom, valueOf } from '../holding.ts';
import { POTASSIUM_CHLORIDE_CRC } from './potassium-chloride-crc.ts';

const linearFactor = (temperature: number, coefficientPerCelsius: number) =>
  valueOf(
    conductivityAt25MsPerCm({
      readingMsPerCm: millisiemensPerCm(1),
      waterCelsius: celsius(temperature),
      coefficientPerCelsius,
    }),
  );
const naturalFactor = (temperature: number) =>
  valueOf(naturalWaterFactorAt25(celsius(temperature)));

describe('linear compensation of conductivity', () => {
  it.each([
    [10, 1.02],
    [15, 1.147],
    [20, 1.278],
    [30, 1.552],
  ])(
    'takes the 1413 µS/cm standard back to 1.413 from %d °C, OIML R 56 table',
    (temperature, reading) => {
      const at25 = conductivityAt25MsPerCm({
        readingMsPerCm: millisiemensPerCm(reading),
        waterCelsius: celsius(temperature),
      });
      // The straight line bends away from the table towards the cold.
      const tolerance = temperature < 15 ? 0.02 : 0.008;
      expect(Math.abs(valueOf(at25) / 1.413 - 1)).toBeLessThan(tolerance);
    },
  );

  it.each([15, 20, 30])(
    'knows α 1.94 %%/K of that standard at %d °C, instrument manual',
    (temperature) => {
      const there = valueOf(standardConductivityUsPerCm('1413', celsius(temperature)));
      const percent = ((there / 1413 - 1) / (temperature - 25)) * 100;
      expect(Math.abs(percent - 1.94)).toBeLessThan(0.06);
    },
  );

  it('knows α of 1.89 to 1.91 %/K of the 12.88 mS/cm standard at 15, 20 and 30 °C, instrument manual', () => {
    for (const temperature of [15, 20, 30]) {
      const there = valueOf(standardConductivityUsPerCm('12880', celsius(temperature)));
      const percent = ((there / 12_880 - 1) / (temperature - 25)) * 100;
      expect(percent).toBeGreaterThan(1.85);
      expect(percent).toBeLessThan(1.95);
    }
  });

  it('at 15 °C divides by 1.250 with 2 %, where nLF says 1.256 and KCl 1.234', () => {
    const chloride = POTASSIUM_CHLORIDE_CRC;
    const thin = (temperature: number) => {
      const row = chloride.find(([at]) => at === temperature);
      if (!row) throw new Error(`no row for ${temperature} °C`);
      return row[1];
    };
    expect(linearFactor(15, 0.02)).toBeCloseTo(1.25, 12);
    expect(naturalFactor(15)).toBeCloseTo(1.256, 3);
    expect(thin(25) / thin(15)).toBeCloseTo(1.234, 3);
    expect(linearFactor(30, 0.02)).toBeCloseTo(0.909, 3);
    expect(naturalFactor(30)).toBeCloseTo(0.903, 3);
    expect(thin(25) / thin(30)).toBeCloseTo(0.9105, 4);
  });

  it('stays within 2 % of the non-linear function of natural water from 15 to 30 °C', () => {
    fc.assert(
      fc.property(fc.double({ min: 15, max: 30, noNaN: true }), (temperature) => {
        const ratio = linearFactor(temperature, 0.02) / naturalFactor(temperature);
        expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
      }),
    );
  });

  it('is outside in ice water and for a coefficient given in percent', () => {
    const reading = { readingMsPerCm: millisiemensPerCm(1), waterCelsius: celsius(2) };
    expect(outsideFrom(conductivityAt25MsPerCm(reading)).quantity).toBe('water temperature');
    const percent = { ...reading, waterCelsius: celsius(20), coefficientPerCelsius: 2 };
    expect(outsideFrom(conductivityAt25MsPerCm(percent)).quantity).toBe('temperature coefficient');
  });

  it('does not compile with microsiemens', () => {
    const micro = microsiemensPerCm(1413);
    // @ts-expect-error µS/cm is not mS/cm
    const outcome = conductivityAt25MsPerCm({ readingMsPerCm: micro, waterCelsius: celsius(25) });
    expect(outcome.ok).toBe(true);
    expect(millisiemensFromMicrosiemens(micro)).toBe(1.413);
  });
});

describe('non-linear compensation of natural water', () => {
  it.each([
    [0, 1.918],
    [5, 1.643],
    [10, 1.428],
    [15, 1.256],
    [20, 1.116],
    [25, 1],
    [30, 0.903],
    [35, 0.822],
  ])('at %d °C multiplies by %d, table of ISO 7888', (temperature, factor) => {
    expect(Math.abs(naturalFactor(temperature) - factor)).toBeLessThan(0.0011);
  });

  it('takes 400 µS/cm at 10 °C to 571', () => {
    const at25 = naturalWaterConductivityAt25UsPerCm({
      readingUsPerCm: microsiemensPerCm(400),
      waterCelsius: celsius(10),
    });
    expect(valueOf(at25)).toBeCloseTo(571, 0);
  });

  it('falls with warmth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 34.9, noNaN: true }), (temperature) => {
        expect(naturalFactor(temperature + 1)).toBeLessThan(naturalFactor(temperature));
      }),
    );
  });

  it('is outside above 35.9 °C and for a nutrient solution', () => {
    expect(outsideFrom(naturalWaterFactorAt25(celsius(36))).to).toBe(35.9);
    const solution = { readingUsPerCm: microsiemensPerCm(2000), waterCelsius: celsius(20) };
    expect(outsideFrom(naturalWaterConductivityAt25UsPerCm(solution)).to).toBe(1000);
  });
});

describe('conductivity standards', () => {
  it('are the entries of the table at its temperatures, and lie between them in between', () => {
    expect(valueOf(standardConductivityUsPerCm('1413', celsius(25)))).toBe(1413);
    expect(valueOf(standardConductivityUsPerCm('12880', celsius(20)))).toBe(11670);
    expect(valueOf(standardConductivityUsPerCm('1413', celsius(22.5)))).toBeCloseTo(1345.5, 6);
  });

  it('by litre are 0.35 % above those by kilogram of the CRC Handbook, at every temperature', () => {
    for (const [temperature, thin] of POTASSIUM_CHLORIDE_CRC) {
      if (![10, 15, 20, 25, 30].includes(temperature)) continue;
      const byLitre = valueOf(standardConductivityUsPerCm('1413', celsius(temperature)));
      expect(Math.abs(byLitre / thin - 1.0035)).toBeLessThan(0.003);
    }
  });

  it('are not told where the table ends: the misprinted 35 °C entry of the thin one is not used', () => {
    expect(outsideFrom(standardConductivityUsPerCm('1413', celsius(35))).to).toBe(30);
    expect(outsideFrom(standardConductivityUsPerCm('12880', celsius(4))).from).toBe(5);
  });
});
