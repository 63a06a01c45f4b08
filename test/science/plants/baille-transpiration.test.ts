import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  canopyLatentHeatWattPerM2,
  transpirationKgPerM2Hour,
  UNCONFIRMED_BAILLE_PRIOR,
} from '../../../src/science/plants/baille-transpiration.ts';
import { kilopascal } from '../../../src/science/units/pressure.ts';
import {
  meanWattPerM2,
  megajoulePerM2Day,
  wattPerM2,
} from '../../../src/science/units/radiation.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const day = {
  leafAreaIndex: 3,
  insideSolarWattPerM2: wattPerM2(300),
  deficitKpa: kilopascal(1.2),
  coefficients: { lightShare: 0.56, deficitWattPerM2Kpa: 20, lightExtinction: 0.64 },
};

describe('transpiration of a greenhouse canopy', () => {
  it('keeps its regression value by day: 215.37 W/m², 0.3165 kg/m²/h', () => {
    const latentHeat = valueOf(canopyLatentHeatWattPerM2(day));
    expect(latentHeat).toBeCloseTo(215.37, 2);
    expect(transpirationKgPerM2Hour(latentHeat)).toBeCloseTo(0.3165, 4);
  });

  it('keeps its regression value by night: 36 W/m², 0.0529 kg/m²/h', () => {
    const night = { ...day, insideSolarWattPerM2: wattPerM2(0), deficitKpa: kilopascal(0.6) };
    const latentHeat = valueOf(canopyLatentHeatWattPerM2(night));
    expect(latentHeat).toBeCloseTo(36, 9);
    expect(transpirationKgPerM2Hour(latentHeat)).toBeCloseTo(0.0529, 4);
  });

  it('at night, with the least coefficients, is near the 120 to 200 g/m² a night of Medrano et al. 2005', () => {
    const night = canopyLatentHeatWattPerM2({
      leafAreaIndex: 2,
      insideSolarWattPerM2: wattPerM2(0),
      deficitKpa: kilopascal(0.4),
      coefficients: UNCONFIRMED_BAILLE_PRIOR.least,
    });
    const gramsPerM2 = transpirationKgPerM2Hour(valueOf(night)) * 10 * 1000;
    expect(gramsPerM2).toBeGreaterThan(100);
    expect(gramsPerM2).toBeLessThan(220);
  });

  it('brackets the daily tomato model of Carmassi et al. 2007 (from memory) between its least and most', () => {
    // 8 MJ/m²/d inside over 24 h, leaf area index 3, a mean deficit of 0.7 kPa.
    const insideMjPerM2Day = megajoulePerM2Day(8);
    const carmassiKgPerM2Day = 0.946 * (1 - Math.exp(-0.69 * 3)) * (8 / 2.45) + 0.188;
    const bailleKgPerM2Day = (which: 'least' | 'most') =>
      24 *
      transpirationKgPerM2Hour(
        valueOf(
          canopyLatentHeatWattPerM2({
            leafAreaIndex: 3,
            insideSolarWattPerM2: meanWattPerM2(insideMjPerM2Day),
            deficitKpa: kilopascal(0.7),
            coefficients: UNCONFIRMED_BAILLE_PRIOR[which],
          }),
        ),
      );
    expect(bailleKgPerM2Day('least')).toBeLessThan(carmassiKgPerM2Day);
    expect(bailleKgPerM2Day('most')).toBeGreaterThan(carmassiKgPerM2Day);
  });

  it('grows with light, with leaves and with the deficit', () => {
    const grow = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(grow, grow, grow, (moreLeaves, moreLight, moreDeficit) => {
        const more = canopyLatentHeatWattPerM2({
          ...day,
          leafAreaIndex: day.leafAreaIndex + moreLeaves,
          insideSolarWattPerM2: wattPerM2(300 + 100 * moreLight),
          deficitKpa: kilopascal(1.2 + moreDeficit),
        });
        expect(valueOf(more)).toBeGreaterThanOrEqual(valueOf(canopyLatentHeatWattPerM2(day)));
      }),
    );
  });

  it('does not compile with a day of energy where power is asked for', () => {
    const perDay = megajoulePerM2Day(8);
    // @ts-expect-error MJ/m²/d is not W/m²
    const outcome = canopyLatentHeatWattPerM2({ ...day, insideSolarWattPerM2: perDay });
    expect(outcome.ok).toBe(true);
  });

  it('is outside under a light brighter than the sun', () => {
    const outcome = canopyLatentHeatWattPerM2({ ...day, insideSolarWattPerM2: wattPerM2(30_000) });
    expect(outsideFrom(outcome).quantity).toBe('solar radiation inside');
  });
});
