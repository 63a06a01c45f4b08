import type { ConductivityUnit, SpokenUnits } from '../../greenhouse/greenhouse.ts';
import {
  conductivityFactor,
  millisiemensFromConductivityFactor,
  PPM_FACTORS,
} from '../../science/conductivity/scales.ts';
import type { Ask } from '../../understanding/statement.ts';
import type { AdviceAnswer } from '../replies/advice.ts';

/** A conductivity on every scale that meters show. */
export function converted(
  { tdsFactor }: SpokenUnits,
  { value, unit }: Extract<Ask, { kind: 'convert' }>,
): AdviceAnswer {
  const ecMsPerCm = millisiemensOf(value, unit, tdsFactor);
  return {
    kind: 'converted',
    said: { value, unit },
    ecMsPerCm,
    tdsFactor,
    others: PPM_FACTORS.filter((factor) => factor !== tdsFactor).map((factor) => ({
      factor,
      ecMsPerCm: unit === 'ppm' ? value / factor : ecMsPerCm,
      ppm: ecMsPerCm * factor,
    })),
  };
}

function millisiemensOf(value: number, unit: ConductivityUnit, tdsFactor: number): number {
  switch (unit) {
    case 'mS/cm':
      return value;
    case 'uS/cm':
      return value / 1000;
    case 'CF':
      return millisiemensFromConductivityFactor(conductivityFactor(value));
    case 'ppm':
      return value / tdsFactor;
  }
}
