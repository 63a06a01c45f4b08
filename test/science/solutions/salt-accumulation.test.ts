import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  accumulatedMmolPerL,
  type ClosedSystem,
  topUpToLimit,
} from '../../../src/science/solutions/salt-accumulation.ts';
import { SALT_TOLERANCE } from '../../../src/science/solutions/sodium-chloride-limits.ts';
import { litre } from '../../../src/science/units/amount.ts';
import { millimolePerL } from '../../../src/science/units/concentration.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const system = (
  volume: number,
  water: number,
  present: number,
  uptakeShare: number,
): ClosedSystem => ({
  volumeL: litre(volume),
  waterMmolPerL: millimolePerL(water),
  presentMmolPerL: millimolePerL(present),
  uptakeShare,
});

const anySystem = fc
  .tuple(
    fc.double({ min: 10, max: 1000, noNaN: true }),
    fc.double({ min: 0.2, max: 3, noNaN: true }),
    fc.double({ min: 0, max: 4, noNaN: true }),
    fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 0.5, noNaN: true })),
  )
  .map((parts) => system(...parts));

/** Top-up by single litres: what comes in with the water, less what leaves with the plants. */
function byLitres(start: ClosedSystem, topUp: number): number {
  let mmolPerL: number = start.presentMmolPerL;
  const pieces = 20_000;
  for (let piece = 0; piece < pieces; piece += 1) {
    const net = start.waterMmolPerL - start.uptakeShare * mmolPerL;
    mmolPerL += (net * (topUp / pieces)) / start.volumeL;
  }
  return mmolPerL;
}

describe('salt in a closed system', () => {
  // Regression values, mmol/L and litres.
  it.each([
    [100, 1, 1, 0, 2, 100],
    [100, 2, 2, 0.1, 8, 405.5],
    [100, 2, 2, 0.2, 8, 693.1],
    [300, 1.5, 1.5, 0.15, 8, 2893.8],
  ])(
    'of %d L with water of %d from %d at uptake %d reaches %d after %d L',
    (volume, water, present, uptake, limit, litres) => {
      const time = valueOf(
        topUpToLimit(system(volume, water, present, uptake), millimolePerL(limit)),
      );
      if (time.kind !== 'reached') throw new Error('expected the limit to be reached');
      expect(time.topUpL).toBeCloseTo(litres, 1);
    },
  );

  it('never reaches the limit when plants take up as much as the water brings, regression value', () => {
    expect(valueOf(topUpToLimit(system(100, 0.5, 0.5, 0.1), millimolePerL(8)))).toEqual({
      kind: 'never',
    });
  });

  it('doubles when top-ups equal the reservoir and nothing is taken up: the trade’s rule of change', () => {
    const doubled = accumulatedMmolPerL(system(100, 1, 1, 0), litre(100));
    expect(valueOf(doubled)).toBe(2);
  });

  it('agrees with the balance kept litre by litre', () => {
    fc.assert(
      fc.property(anySystem, fc.double({ min: 0, max: 2000, noNaN: true }), (start, topUp) => {
        const ours = valueOf(accumulatedMmolPerL(start, litre(topUp)));
        const stepped = byLitres(start, topUp);
        expect(Math.abs(ours - stepped)).toBeLessThan(0.005 * Math.max(1, stepped));
      }),
      { numRuns: 50 },
    );
  });

  it('stands at the limit after the litres that were told', () => {
    fc.assert(
      fc.property(anySystem, fc.double({ min: 4.5, max: 10, noNaN: true }), (start, limit) => {
        const time = valueOf(topUpToLimit(start, millimolePerL(limit)));
        if (time.kind === 'never') {
          expect(valueOf(accumulatedMmolPerL(start, litre(1e6)))).toBeLessThanOrEqual(limit + 1e-9);
        } else {
          fc.pre(time.topUpL < 1e6);
          expect(valueOf(accumulatedMmolPerL(start, time.topUpL))).toBeCloseTo(limit, 6);
        }
      }),
    );
  });

  it('rises to where it rests from below and falls to it from above', () => {
    const resting = 10;
    const below = valueOf(accumulatedMmolPerL(system(100, 1, 0, 0.1), litre(500)));
    const above = valueOf(accumulatedMmolPerL(system(100, 1, 20, 0.1), litre(500)));
    expect(below).toBeLessThan(resting);
    expect(above).toBeGreaterThan(resting);
    expect(resting - below).toBeCloseTo(above - resting, 9);
  });

  it('is at the limit already when it starts there', () => {
    expect(valueOf(topUpToLimit(system(100, 1, 9, 0), millimolePerL(8)))).toEqual({
      kind: 'reached',
      topUpL: 0,
    });
  });

  it('is outside for an uptake share in percent', () => {
    expect(outsideFrom(topUpToLimit(system(100, 1, 1, 15), millimolePerL(8))).quantity).toBe(
      'uptake share',
    );
  });

  it('is borne by every crop in the table above what it takes up', () => {
    for (const [crop, { uptake, rootZoneMost }] of SALT_TOLERANCE) {
      expect(rootZoneMost.sodium, crop).toBeGreaterThan(uptake.sodium);
      expect(rootZoneMost.chloride, crop).toBeGreaterThan(uptake.chloride);
    }
    // The Dutch table by way of a trade article.
    expect(SALT_TOLERANCE.get('cucumber')).toEqual({
      uptake: { sodium: 1.2, chloride: 2 },
      rootZoneMost: { sodium: 8, chloride: 10 },
    });
  });
});
