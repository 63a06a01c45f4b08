import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mixedConductivityMsPerCm } from '../../../src/science/conductivity/mixing.ts';
import {
  concentratesForConductivity,
  riseOfConductivity,
} from '../../../src/science/solutions/concentrate-dose.ts';
import { litre, millilitre } from '../../../src/science/units/amount.ts';
import { millisiemensPerCm } from '../../../src/science/units/conductivity.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const mix = {
  volumeL: litre(120),
  presentMsPerCm: millisiemensPerCm(0.2),
  targetMsPerCm: millisiemensPerCm(1.6),
  riseMsPerCmByMlPerL: 0.35,
};

describe('concentrates A and B', () => {
  it('for 120 L at 1.6 in water of 0.2 are 480 mL of each, where 5 mL/L make 1.75', () => {
    const rise = riseOfConductivity({
      volumeL: litre(1),
      eachMl: millilitre(5),
      beforeMsPerCm: millisiemensPerCm(0),
      afterMsPerCm: millisiemensPerCm(1.75),
    });
    expect(valueOf(rise)).toBeCloseTo(0.35, 12);
    expect(valueOf(concentratesForConductivity(mix)).partAMl).toBeCloseTo(480, 9);
    expect(valueOf(concentratesForConductivity(mix)).partBMl).toBeCloseTo(480, 9);
  });

  it('are fewer the more the water holds itself', () => {
    const hard = { ...mix, presentMsPerCm: millisiemensPerCm(0.8) };
    expect(valueOf(concentratesForConductivity(hard)).partAMl).toBeLessThan(
      valueOf(concentratesForConductivity(mix)).partAMl,
    );
  });

  it('are none when the water is already as strong', () => {
    const there = { ...mix, targetMsPerCm: millisiemensPerCm(0.2) };
    expect(valueOf(concentratesForConductivity(there)).partAMl).toBe(0);
  });

  it('given and measured teach the same rise that they were reckoned with', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1.1, max: 3, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (volume, before, after, riseMsPerCmByMlPerL) => {
          const dose = valueOf(
            concentratesForConductivity({
              volumeL: litre(volume),
              presentMsPerCm: millisiemensPerCm(before),
              targetMsPerCm: millisiemensPerCm(after),
              riseMsPerCmByMlPerL,
            }),
          );
          const learned = riseOfConductivity({
            volumeL: litre(volume),
            eachMl: dose.partAMl,
            beforeMsPerCm: millisiemensPerCm(before),
            afterMsPerCm: millisiemensPerCm(after),
          });
          expect(valueOf(learned)).toBeCloseTo(riseMsPerCmByMlPerL, 9);
        },
      ),
    );
  });

  it('for half strength agree with a mix of full strength and plain water', () => {
    const full = 2;
    const plain = 0.2;
    const half = valueOf(
      mixedConductivityMsPerCm([
        { volumeL: litre(60), conductivityMsPerCm: millisiemensPerCm(full) },
        { volumeL: litre(60), conductivityMsPerCm: millisiemensPerCm(plain) },
      ]),
    );
    const forHalf = concentratesForConductivity({ ...mix, targetMsPerCm: half });
    const forFull = concentratesForConductivity({
      ...mix,
      volumeL: litre(60),
      targetMsPerCm: millisiemensPerCm(full),
    });
    expect(valueOf(forHalf).partAMl).toBeCloseTo(valueOf(forFull).partAMl, 9);
  });

  it('are outside when the water is stronger than what is wanted, or the rise makes no sense', () => {
    const strong = { ...mix, presentMsPerCm: millisiemensPerCm(2) };
    expect(outsideFrom(concentratesForConductivity(strong))).toMatchObject({
      quantity: 'wanted conductivity',
      found: 1.6,
      from: 2,
    });
    const fell = riseOfConductivity({
      volumeL: litre(100),
      eachMl: millilitre(100),
      beforeMsPerCm: millisiemensPerCm(1.5),
      afterMsPerCm: millisiemensPerCm(1.4),
    });
    expect(outsideFrom(fell).quantity).toContain('rise');
  });
});
