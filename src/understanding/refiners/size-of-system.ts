import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { cmFactor, litresFactor } from '../numbers/quantity-of-measure.ts';
import { clauseHas, type Frame, namesIn } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** `the barrels are 80 cm deep`, `the bench is 600 l`: just its size; whether it is full to the brim is asked. */
export function withSizesAsked(frame: Frame, facts: readonly Fact[]): readonly Fact[] {
  return facts.map((fact) => {
    if (fact.quantity !== 'level' || fact.amount.kind !== 'measure' || fact.doubt) return fact;
    const { measure } = fact.amount;
    const isNow = clauseHas(frame, frame.clauses[frame.clauseOf[fact.at]!]!, 'now');
    const isIt = isNow ? mayBeSize : isSize;
    if (!tellsSize(frame, fact) || !systemsOf(frame, fact).some((one) => isIt(measure, one)))
      return fact;
    return { ...fact, amount: { kind: 'measure', measure: { ...measure, bound: true } } };
  });
}

/** `the left tub is 70 l now`, and its brim was 80: another tub, or what is in it. */
function mayBeSize(measure: Measure, { brimL }: System): boolean {
  const litres = litresFactor(measure);
  return litres !== null && measure.values[0]! * litres >= leastOfBrim * brimL;
}

/** Less than so much of the brim is what is in it. */
const leastOfBrim = 0.75;

/** Said of the system itself, and not of the water. */
function tellsSize(frame: Frame, { at }: Fact): boolean {
  const clause = frame.clauses[frame.clauseOf[at]!]!;
  const isSaid = means(frame.terms[at - 1], 'link') && frame.terms[at - 2]?.kind === 'name';
  return isSaid && !clauseHas(frame, clause, 'was', 'water', 'solution', 'full', 'level', 'today');
}

function systemsOf(frame: Frame, { at }: Fact): readonly System[] {
  const clause = frame.clauses[frame.clauseOf[at]!]!;
  const ids = namesIn(frame, clause).flatMap((i) => {
    const term = frame.terms[i];
    return term?.kind === 'name' ? term.systems : [];
  });
  return frame.context.greenhouse.systems.filter(({ id }) => ids.includes(id));
}

function isSize(measure: Measure, { brimL, depthCm }: System): boolean {
  const value = measure.values[0]!;
  const [cm, litres] = [cmFactor(measure), litresFactor(measure)];
  if (cm !== null) return isAbout(value * cm, depthCm);
  return litres !== null && isAbout(value * litres, brimL);
}

function isAbout(value: number, size: number): boolean {
  return Math.abs(value - size) < roundingShare * size;
}

/** A size in gallons or inches is told in round numbers. */
const roundingShare = 0.01;
