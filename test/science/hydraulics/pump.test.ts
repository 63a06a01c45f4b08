import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillTimeMinutes } from '../../../src/science/hydraulics/fill-time.ts';
import { hoseLossM } from '../../../src/science/hydraulics/hose-loss.ts';
import { type PumpRating, pumpFlowLPerH } from '../../../src/science/hydraulics/pump-flow.ts';
import { pumpFlowThroughHoseLPerH } from '../../../src/science/hydraulics/pump-through-hose.ts';
import {
  litre,
  litrePerHour,
  litrePerHourFromLitrePerMinute,
} from '../../../src/science/units/amount.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const small: PumpRating = { ratedLPerH: litrePerHour(2000), maxHeadM: 2 };

describe('the flow of a pump', () => {
  it('of 2000 L/h and 2 m against 0.8 m is 1200 L/h, and fills 60 L in 3 min, regression values', () => {
    const flow = valueOf(pumpFlowLPerH({ pump: small, liftM: 0.8 }));
    expect(flow).toBeCloseTo(1200, 9);
    expect(valueOf(fillTimeMinutes(litre(60), flow))).toBeCloseTo(3, 9);
  });

  it('with a loss of 0.3 m at 1000 L/h besides is 937 L/h, regression value', () => {
    const flow = pumpFlowLPerH({
      pump: small,
      liftM: 0.8,
      loss: { headM: 0.3, atLPerH: litrePerHour(1000) },
    });
    expect(valueOf(flow)).toBeCloseTo(937, 0);
  });

  it('is what is printed on it without lift, and nothing at its greatest head', () => {
    expect(valueOf(pumpFlowLPerH({ pump: small, liftM: 0 }))).toBe(2000);
    expect(valueOf(pumpFlowLPerH({ pump: small, liftM: 2 }))).toBe(0);
  });

  it('uses up its head on lift and loss, whatever they are', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1.99, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (liftM, headM) => {
          const flow = valueOf(
            pumpFlowLPerH({ pump: small, liftM, loss: { headM, atLPerH: litrePerHour(1000) } }),
          );
          const pumped = 2 * (1 - flow / 2000);
          expect(pumped).toBeCloseTo(liftM + headM * (flow / 1000) ** 2, 9);
        },
      ),
    );
  });

  it('is outside when it is asked to lift higher than it can', () => {
    expect(outsideFrom(pumpFlowLPerH({ pump: small, liftM: 2.5 }))).toMatchObject({
      quantity: 'lift',
      found: 2.5,
      to: 2,
    });
  });
});

describe('filling a bench', () => {
  it('of about 24 pots with pumps of 3000 and 7000 L/h took 15 to 20 and about 7 min: one volume, common practice', () => {
    // Rated flow without lift; the spread of the first is the spread of what people remember.
    for (const litres of [750, 1000]) {
      const minutes = valueOf(fillTimeMinutes(litre(litres), litrePerHour(3000)));
      expect(minutes).toBeGreaterThanOrEqual(15);
      expect(minutes).toBeLessThanOrEqual(20);
    }
    const minutes = valueOf(fillTimeMinutes(litre(820), litrePerHour(7000)));
    expect(minutes).toBeCloseTo(7, 1);
    expect(valueOf(fillTimeMinutes(litre(820), litrePerHour(3000)))).toBeGreaterThan(15);
  });

  it('is outside without any flow', () => {
    expect(outsideFrom(fillTimeMinutes(litre(60), litrePerHour(0))).quantity).toBe('flow');
  });

  it('does not compile with litres for the flow', () => {
    const volume = litre(60);
    // @ts-expect-error litres are no litres an hour
    const outcome = fillTimeMinutes(volume, volume);
    expect(outcome.ok).toBe(true);
    expect(litrePerHourFromLitrePerMinute(20)).toBe(1200);
  });
});

describe('a pump that lifts through a hose', () => {
  const setting = {
    pump: { ratedLPerH: litrePerHour(3000), maxHeadM: 3 },
    liftM: 1,
    hose: { lengthM: 4, diameterMm: 19 },
    waterCelsius: celsius(20),
  };

  it('gives about 1460 L/h for 3000 L/h and 3 m, a metre up through four metres of 19 mm hose', () => {
    expect(Math.abs(valueOf(pumpFlowThroughHoseLPerH(setting)) - 1460)).toBeLessThan(30);
  });

  it('uses up its head on the lift and on the loss of the hose', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2.9, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 10, max: 50, noNaN: true }),
        (liftM, lengthM, diameterMm) => {
          const hose = { lengthM, diameterMm };
          const flow = valueOf(pumpFlowThroughHoseLPerH({ ...setting, liftM, hose }));
          const loss = valueOf(hoseLossM(hose, flow, setting.waterCelsius));
          expect(3 * (1 - flow / 3000)).toBeCloseTo(liftM + loss, 6);
        },
      ),
    );
  });

  it('agrees with the quadratic law when that is given the loss at its own flow', () => {
    const flow = valueOf(pumpFlowThroughHoseLPerH(setting));
    const loss = valueOf(hoseLossM(setting.hose, flow, setting.waterCelsius));
    const quadratic = pumpFlowLPerH({ ...setting, loss: { headM: loss, atLPerH: flow } });
    expect(valueOf(quadratic)).toBeCloseTo(flow, 3);
  });

  it('gives less through a longer or a thinner hose', () => {
    const flow = valueOf(pumpFlowThroughHoseLPerH(setting));
    const longer = { ...setting, hose: { lengthM: 8, diameterMm: 19 } };
    const thinner = { ...setting, hose: { lengthM: 4, diameterMm: 13 } };
    expect(valueOf(pumpFlowThroughHoseLPerH(longer))).toBeLessThan(flow);
    expect(valueOf(pumpFlowThroughHoseLPerH(thinner))).toBeLessThan(flow);
  });

  it('is outside for a hose measured in metres across', () => {
    const wrong = { ...setting, hose: { lengthM: 4, diameterMm: 0.019 } };
    expect(outsideFrom(pumpFlowThroughHoseLPerH(wrong)).unit).toBe('mm');
  });
});
