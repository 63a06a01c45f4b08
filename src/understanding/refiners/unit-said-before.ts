import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, unitIs } from '../numbers/quantity-of-measure.ts';

/** From here on a bare EC is no mS/cm. */
const leastOfHundreds = 100;

/** `raft was 1300 ppm, now 1200`: what was told in ppm goes on in ppm. */
export function inUnitSaidBefore(facts: readonly Fact[]): readonly Fact[] {
  let said: Measure['unit'] = null;
  return facts.map((fact) => {
    if (fact.quantity !== 'ec' || fact.amount.kind !== 'measure') return fact;
    const { measure } = fact.amount;
    if (!isBare(measure)) {
      said = unitIs(measure, 'ppm', 'us-cm') ? measure.unit : null;
      return fact;
    }
    if (said === null || measure.values[0]! < leastOfHundreds) return fact;
    return { ...fact, amount: { kind: 'measure', measure: { ...measure, unit: said } } };
  });
}
