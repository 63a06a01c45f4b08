import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { darcyFrictionFactor } from '../../../src/science/hydraulics/friction-factor.ts';
import { hazenWilliamsLossM } from '../../../src/science/hydraulics/hazen-williams.ts';
import { hoseLossM } from '../../../src/science/hydraulics/hose-loss.ts';
import { orificeDrainSeconds } from '../../../src/science/hydraulics/orifice-drain.ts';
import { waterViscosityM2PerS } from '../../../src/science/hydraulics/water-viscosity.ts';
import { litreFromUsGallon, litrePerHour } from '../../../src/science/units/amount.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const factor = (reynolds: number, roughness: number) =>
  valueOf(darcyFrictionFactor(reynolds, roughness));

describe('the Darcy friction factor', () => {
  it('at Re 10⁵ is 0.0185 for a roughness of 10⁻⁴ and 0.0180 for a smooth pipe, Moody’s chart (from memory)', () => {
    expect(factor(1e5, 1e-4)).toBeCloseTo(0.0185, 4);
    expect(factor(1e5, 0)).toBeCloseTo(0.018, 4);
  });

  it('is 64/Re in laminar flow', () => {
    expect(factor(1000, 0)).toBe(0.064);
  });

  it('agrees with Swamee and Jain 1976 within 3.5 % and with Blasius 1913 for smooth pipes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5000, max: 1e8, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e-2, noNaN: true }),
        (reynolds, roughness) => {
          const swameeJain = 0.25 / Math.log10(roughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
          expect(Math.abs(factor(reynolds, roughness) / swameeJain - 1)).toBeLessThan(0.035);
        },
      ),
    );
    for (const reynolds of [5000, 1e4, 5e4, 1e5]) {
      expect(Math.abs(factor(reynolds, 0) / (0.3164 / reynolds ** 0.25) - 1)).toBeLessThan(0.03);
    }
  });

  it('solves Colebrook’s law', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4001, max: 1e8, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (reynolds, roughness) => {
          const root = Math.sqrt(factor(reynolds, roughness));
          const right = -2 * Math.log10(roughness / 3.7 + 2.51 / (reynolds * root));
          expect(1 / root).toBeCloseTo(right, 8);
        },
      ),
    );
  });

  it('has no jump between laminar and turbulent flow', () => {
    expect(factor(2300.001, 0)).toBeCloseTo(factor(2300, 0), 5);
    expect(factor(3999.999, 0)).toBeCloseTo(factor(4000, 0), 5);
  });
});

describe('the viscosity of water', () => {
  it.each([
    [0, 1.787e-6],
    [10, 1.307e-6],
    [20, 1.004e-6],
    [30, 0.801e-6],
    [40, 0.658e-6],
  ])(
    'at %d °C is %d m²/s within 2.5 %%, tables of engineering (from memory)',
    (temperature, viscosity) => {
      const ours = valueOf(waterViscosityM2PerS(celsius(temperature)));
      expect(Math.abs(ours / viscosity - 1)).toBeLessThan(0.025);
    },
  );
});

describe('head lost in pipes and hoses', () => {
  const lengthM = 100 * 0.3048;
  const flow = litrePerHour(litreFromUsGallon(10) * 60);
  const psi = (headM: number) => (headM * 998.2 * 9.80665) / 6894.757;

  it('by Hazen and Williams in 1 inch schedule 40 at 10 gpm is 2.38 psi on 100 ft, SI and US form agree', () => {
    const ours = hazenWilliamsLossM({ flowLPerH: flow, lengthM, diameterMm: 26.64 });
    const usFormPsi = (4.52 * 10 ** 1.85) / (150 ** 1.85 * (26.64 / 25.4) ** 4.87);
    expect(Math.abs(psi(valueOf(ours)) - 2.382)).toBeLessThan(0.01);
    expect(usFormPsi * 100).toBeCloseTo(2.389, 2);
    expect(Math.abs(psi(valueOf(ours)) / (usFormPsi * 100) - 1)).toBeLessThan(0.01);
  });

  it('by Darcy in the same pipe is within 10 % of Hazen and Williams', () => {
    const darcy = hoseLossM({ lengthM, diameterMm: 26.64 }, flow, celsius(15));
    const hazen = hazenWilliamsLossM({ flowLPerH: flow, lengthM, diameterMm: 26.64 });
    expect(Math.abs(valueOf(darcy) / valueOf(hazen) - 1)).toBeLessThan(0.1);
  });

  it('in 3 m of 16 mm hose at 20 L/min is 0.64 m by Darcy, regression value, where Hazen and Williams would say 0.61', () => {
    const darcy = hoseLossM({ lengthM: 3, diameterMm: 16 }, litrePerHour(1200), celsius(20));
    expect(Math.abs(valueOf(darcy) - 0.642)).toBeLessThan(0.01);
    const flowM3PerS = 1200 / 3.6e6;
    const hazen = (10.67 * 3 * (flowM3PerS / 150) ** 1.852) / 0.016 ** 4.8704;
    expect(hazen).toBeCloseTo(0.606, 2);
  });

  it('grows with the flow and the length, falls with the width, and is nothing in still water', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0.5, max: 100, noNaN: true }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        (flowLPerH, hoseM, diameterMm) => {
          const loss = (q: number, l: number, d: number) =>
            valueOf(hoseLossM({ lengthM: l, diameterMm: d }, litrePerHour(q), celsius(20)));
          const here = loss(flowLPerH, hoseM, diameterMm);
          expect(loss(flowLPerH * 1.1, hoseM, diameterMm)).toBeGreaterThan(here);
          expect(loss(flowLPerH, hoseM * 1.1, diameterMm)).toBeGreaterThan(here);
          expect(loss(flowLPerH, hoseM, diameterMm * 1.1)).toBeLessThan(here);
          expect(loss(0, hoseM, diameterMm)).toBe(0);
        },
      ),
    );
  });

  it('adds the fittings at the head of the velocity', () => {
    const plain = { lengthM: 3, diameterMm: 16 };
    const bent = { ...plain, fittingsLoss: 4 };
    const at = (hose: typeof plain) => valueOf(hoseLossM(hose, litrePerHour(1200), celsius(20)));
    const velocity = 1200 / 3.6e6 / ((Math.PI / 4) * 0.016 ** 2);
    expect(at(bent) - at(plain)).toBeCloseTo((4 * velocity ** 2) / (2 * 9.80665), 9);
  });

  it('is outside of Hazen and Williams for the hoses of a greenhouse', () => {
    const thin = { flowLPerH: litrePerHour(600), lengthM: 3, diameterMm: 13 };
    expect(outsideFrom(hazenWilliamsLossM(thin)).quantity).toBe('inner diameter of the pipe');
  });
});

describe('draining through a hole', () => {
  // Regression values of Torricelli's law.
  it.each([
    [0.5, 0.12, 0, 257.0],
    [0.5, 0.1, 0.01, 160.4],
  ])(
    'of %d m² from %d to %d m through 25 mm takes %d s',
    (bedAreaM2, fromHeightM, toHeightM, seconds) => {
      const time = orificeDrainSeconds({ bedAreaM2, drainDiameterMm: 25, fromHeightM, toHeightM });
      expect(valueOf(time)).toBeCloseTo(seconds, 0);
    },
  );

  it('of a square metre from 1 m through 0.01 m² takes 72.84 s, regression value', () => {
    const time = orificeDrainSeconds({
      bedAreaM2: 1,
      drainDiameterMm: 1000 * Math.sqrt((4 * 0.01) / Math.PI),
      fromHeightM: 1,
      toHeightM: 0,
    });
    expect(valueOf(time)).toBeCloseTo(72.84, 1);
  });

  it('takes twice the time that the first rush would need for all of it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (bedAreaM2, fromHeightM) => {
          const bed = { bedAreaM2, drainDiameterMm: 25, fromHeightM, toHeightM: 0 };
          const rushM3PerS =
            0.62 * (Math.PI / 4) * 0.025 ** 2 * Math.sqrt(2 * 9.80665 * fromHeightM);
          const once = (bedAreaM2 * fromHeightM) / rushM3PerS;
          expect(valueOf(orificeDrainSeconds(bed)) / once).toBeCloseTo(2, 9);
        },
      ),
    );
  });

  it('is the sum of its parts', () => {
    const bed = { bedAreaM2: 0.5, drainDiameterMm: 25 };
    const part = (fromHeightM: number, toHeightM: number) =>
      valueOf(orificeDrainSeconds({ ...bed, fromHeightM, toHeightM }));
    expect(part(0.12, 0.05) + part(0.05, 0)).toBeCloseTo(part(0.12, 0), 9);
  });

  it('is outside upwards', () => {
    const up = { bedAreaM2: 1, drainDiameterMm: 25, fromHeightM: 0.1, toHeightM: 0.2 };
    expect(outsideFrom(orificeDrainSeconds(up)).to).toBe(0.1);
  });
});
