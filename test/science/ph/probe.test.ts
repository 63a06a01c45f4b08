import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bufferPh } from '../../../src/science/ph/buffer-ph.ts';
import type { Buffer } from '../../../src/science/ph/buffer-tables.ts';
import { nernstSlopeMvPerPh } from '../../../src/science/ph/nernst-slope.ts';
import {
  probeFromMillivolts,
  probeFromShownPh,
} from '../../../src/science/ph/probe-calibration.ts';
import { celsius, kelvinFromCelsius } from '../../../src/science/units/temperature.ts';
import { outsideFrom, valueOf } from '../holding.ts';

describe('the slope of a perfect pH electrode', () => {
  it.each([
    [0, 54.2],
    [10, 56.18],
    [20, 58.17],
    [25, 59.16],
    [30, 60.15],
    [37, 61.54],
  ])('at %d °C is %d mV/pH, Nernst (tables of every pH textbook)', (temperature, slope) => {
    expect(valueOf(nernstSlopeMvPerPh(celsius(temperature)))).toBeCloseTo(slope, 2);
  });

  it('grows by 0.1984 mV/pH a kelvin, the rule of thumb', () => {
    const at = (temperature: number) => valueOf(nernstSlopeMvPerPh(celsius(temperature)));
    expect((at(80) - at(10)) / 70).toBeCloseTo(0.1984, 4);
  });

  it('is outside for boiled-off water', () => {
    expect(outsideFrom(nernstSlopeMvPerPh(celsius(150))).unit).toBe('°C');
  });
});

describe('buffers by temperature', () => {
  // JIS Z 8802 / NIST: phthalate, phosphate, borax, carbonate.
  it.each([
    [0, 4.01, 6.98, 9.46, 10.32],
    [5, 4.01, 6.95, 9.39, 10.25],
    [10, 4.0, 6.92, 9.33, 10.18],
    [15, 4.0, 6.9, 9.27, 10.12],
    [20, 4.0, 6.88, 9.22, 10.07],
    [25, 4.01, 6.86, 9.18, 10.02],
    [30, 4.01, 6.85, 9.14, 9.97],
    [35, 4.02, 6.84, 9.1, 9.93],
  ])(
    'at %d °C are those of JIS Z 8802 and NIST',
    (temperature, phthalate, phosphate, borax, carbonate) => {
      const at = (buffer: Buffer) => valueOf(bufferPh(buffer, celsius(temperature)));
      expect([at('phthalate'), at('phosphate'), at('borax'), at('carbonate')]).toEqual([
        phthalate,
        phosphate,
        borax,
        carbonate,
      ]);
    },
  );

  it('at 25 °C round the three decimals 4.005, 6.865 and 9.180 (from memory)', () => {
    const at25 = (buffer: Buffer) => valueOf(bufferPh(buffer, celsius(25)));
    expect(Math.abs(at25('phthalate') - 4.005)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(at25('phosphate') - 6.865)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(at25('borax') - 9.18)).toBeLessThanOrEqual(0.0051);
  });

  it('of phthalate follow both formulas of Hamer, Pinching and Acree 1946 within 0.015', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 35, noNaN: true }), (temperature) => {
        const ours = valueOf(bufferPh('phthalate', celsius(temperature)));
        const square = 4 + 4.79e-5 * (temperature - 15) ** 2;
        const kelvin = kelvinFromCelsius(celsius(temperature));
        const law = 1336.08 / kelvin - 5.2678 + 0.016069 * kelvin;
        expect(Math.abs(ours - square)).toBeLessThan(0.015);
        expect(Math.abs(ours - law)).toBeLessThan(0.015);
      }),
    );
  });

  it('sold as 4.00, 7.00 and 10.01 read so at 25 °C, and 7.06 at 10 °C on the label', () => {
    expect(valueOf(bufferPh('technical 4.00', celsius(25)))).toBe(4);
    expect(valueOf(bufferPh('technical 7.00', celsius(25)))).toBe(7);
    expect(valueOf(bufferPh('technical 10.01', celsius(25)))).toBe(10.01);
    expect(valueOf(bufferPh('technical 7.00', celsius(10)))).toBe(7.06);
    expect(valueOf(bufferPh('technical 4.00', celsius(40)))).toBe(4.03);
  });

  it('are outside where the table ends', () => {
    expect(outsideFrom(bufferPh('carbonate', celsius(40))).to).toBe(35);
  });
});

describe('the state of a pH probe', () => {
  const bufferCelsius = celsius(25);
  const sevenAndFour = (atSeven: number, atFour: number) =>
    valueOf(
      probeFromMillivolts({
        first: { bufferPh: 7.01, millivolts: atSeven },
        second: { bufferPh: 4.01, millivolts: atFour },
        bufferCelsius,
      }),
    );

  it('with −15 mV at 7.01 and +160 mV at 4.01 is good at 98.6 %, worked example of an instrument manual', () => {
    const probe = sevenAndFour(-15, 160);
    expect(probe.slopeShare).toBeCloseTo(0.986, 3);
    expect(probe.verdict).toBe('good');
  });

  it('with +15 mV at 7.01 and +160 mV at 4.01 is rejected, the same manual', () => {
    expect(sevenAndFour(15, 160).verdict).toBe('unfit');
  });

  it('is worn at 90 %, unfit at 80 %, unfit with a zero point 40 mV off', () => {
    const span = 3 * 59.16;
    expect(sevenAndFour(0, 0.9 * span).verdict).toBe('worn');
    expect(sevenAndFour(0, 0.8 * span).verdict).toBe('unfit');
    expect(sevenAndFour(40, 40 + span).verdict).toBe('unfit');
    expect(sevenAndFour(0, 1.1 * span).verdict).toBe('unfit');
  });

  it('is found again from voltages made by a probe of known slope and zero point', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.7, max: 1.1, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (slopeShare, offsetMv, temperature) => {
          const nernst = valueOf(nernstSlopeMvPerPh(celsius(temperature)));
          const voltage = (ph: number) => offsetMv - nernst * slopeShare * (ph - 7);
          const probe = valueOf(
            probeFromMillivolts({
              first: { bufferPh: 6.86, millivolts: voltage(6.86) },
              second: { bufferPh: 9.18, millivolts: voltage(9.18) },
              bufferCelsius: celsius(temperature),
            }),
          );
          expect(probe.slopeShare).toBeCloseTo(slopeShare, 9);
          expect(probe.offsetMv).toBeCloseTo(offsetMv, 6);
        },
      ),
    );
  });

  it('is the same whichever buffer comes first', () => {
    const turned = probeFromMillivolts({
      first: { bufferPh: 4.01, millivolts: 160 },
      second: { bufferPh: 7.01, millivolts: -15 },
      bufferCelsius,
    });
    expect(valueOf(turned).slopeShare).toBeCloseTo(sevenAndFour(-15, 160).slopeShare, 12);
    expect(valueOf(turned).offsetMv).toBeCloseTo(sevenAndFour(-15, 160).offsetMv, 9);
  });

  it('is read from what the meter shows: 7.2 in 7.00 and 4.3 in 4.00 is 96.7 % and −11.8 mV', () => {
    const probe = valueOf(
      probeFromShownPh({
        first: { bufferPh: 7, shownPh: 7.2 },
        second: { bufferPh: 4, shownPh: 4.3 },
        bufferCelsius,
      }),
    );
    expect(probe.slopeShare).toBeCloseTo(2.9 / 3, 9);
    expect(probe.offsetMv).toBeCloseTo(-11.8, 1);
    expect(probe.verdict).toBe('good');
  });

  it('is unfit when the meter shows the same in both buffers, a cracked bulb', () => {
    const stuck = probeFromShownPh({
      first: { bufferPh: 7, shownPh: 6.9 },
      second: { bufferPh: 4, shownPh: 6.9 },
      bufferCelsius,
    });
    expect(valueOf(stuck).verdict).toBe('unfit');
  });

  it('is outside with two buffers too close together', () => {
    const close = probeFromMillivolts({
      first: { bufferPh: 7, millivolts: 0 },
      second: { bufferPh: 6.86, millivolts: 8 },
      bufferCelsius,
    });
    expect(outsideFrom(close).quantity).toBe('distance of the buffers');
  });
});
