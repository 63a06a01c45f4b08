import type { Supply } from '../../greenhouse/entry.ts';
import type { ConductivityUnit } from '../../greenhouse/greenhouse.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Measure } from '../numbers/measure.ts';
import {
  convert,
  isBare,
  litresFactor,
  round,
  unitIs,
  valuesOf,
} from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { productAt } from '../recognisers/products.ts';
import type { Ask } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';

/**
 * Questions for a sum: a mix for so many litres, a conductivity on another scale, a fill with another
 * pump, how long it goes without power or air. null: it asks something else.
 */
export function adviceAsk(
  frame: Frame,
  from: number,
  to: number,
  system: SystemId | null,
): Ask | null {
  const terms = frame.terms.slice(from, to);
  const has = (...concepts: readonly Concept[]) => terms.some((term) => means(term, ...concepts));
  return (
    fillWithPump(terms, system, has) ??
    withoutSupply(terms, system, has) ??
    mix(frame, from, to, system, has) ??
    conversion(terms, has)
  );
}

type Has = (...concepts: readonly Concept[]) => boolean;

function textOf(terms: readonly Term[]): string {
  return terms.map(({ text }) => text).join(' ');
}

/** A pump is named by its litres an hour: `a 3000 pump`, `eine 3000er Pumpe`, `3000 l/h`. */
function fillWithPump(terms: readonly Term[], system: SystemId | null, has: Has): Ask | null {
  const isAsked = has('how-long', 'when', 'how') && has('pump') && !has('air-pump');
  const isFill = has('fill', 'flood', 'took', 'need', 'use', 'last-out', 'top-up');
  const rating = /(?<!\d)(\d{3,5})(?!\d)/.exec(textOf(terms));
  if (!isAsked || !isFill || !rating) return null;
  return { kind: 'fill-with-pump', system, ratedLPerH: Number(rating[1]) };
}

function withoutSupply(terms: readonly Term[], system: SystemId | null, has: Has): Ask | null {
  // `how long can they go without power`, `what happens if the pump dies`.
  const isSupposed = has('what') && has('condition');
  if (!(has('how-long') || isSupposed) || has('was')) return null;
  const of = supplyOf(terms, has);
  return of && { kind: 'without-supply', system, of };
}

/** The power, a pump, or the air that a question is about; null: none. */
export function supplyOf(terms: readonly Term[], has: Has): Supply | null {
  if (has('power', 'no-power')) return 'power';
  if (has('air-pump', 'no-bubbles', 'air-stones')) return 'air-pump';
  if (has('pump', 'no-flow')) return 'pump';
  return /\b(?:without|ohne|no) (?:air|luft)\b/.test(textOf(terms)) ? 'air-pump' : null;
}

/** `how much A and B for 120 litres at 1.6`: products or a strength, and litres to mix. */
function mix(
  frame: Frame,
  from: number,
  to: number,
  system: SystemId | null,
  has: Has,
): Ask | null {
  if (!has('how-much', 'need', 'what')) return null;
  const { units } = frame.context.greenhouse;
  const terms = frame.terms.slice(from, to);
  const measures = terms.flatMap((term) => (isMeasure(term) ? [term.measure] : []));
  const litres = measures.flatMap((measure) => litresOf(measure) ?? []);
  const strength = measures
    .filter((measure) => litresFactor(measure) === null)
    .map((measure) => convert('ec', measure, units))
    .find((found) => found !== null && !found.unitOpen);
  const speaksOfNutrients = terms.some(
    (term, n) =>
      (term.kind === 'word' && (term.word.anyProduct || term.word.shyProduct !== null)) ||
      isNutrient(productAt(frame, from + n)),
  );
  if (litres.length !== 1 || (!speaksOfNutrients && !strength)) return null;
  return {
    kind: 'mix',
    system,
    litres: litres[0]!,
    ecMsPerCm: strength?.values[0] ?? null,
  };
}

function isNutrient(product: string | null): boolean {
  return product !== null && !/ph/i.test(product);
}

const LEAST_MIX_L = 0.5;

function litresOf(measure: Measure): number | null {
  const factor = litresFactor(measure);
  if (factor === null) return null;
  const litres = round(valuesOf(measure)[0]! * factor);
  return litres >= LEAST_MIX_L ? litres : null;
}

/** `what is 900 ppm in EC`, `how many ppm is 1.8`: one value, and another scale to tell it on. */
function conversion(terms: readonly Term[], has: Has): Ask | null {
  const isNamed = terms.some((term) => term.kind === 'name');
  const measures = terms.flatMap((term) => (isMeasure(term) ? [term.measure] : []));
  const [measure, second] = measures;
  if (!measure || second || isNamed || has('judged')) return null;
  const unit = unitOf(measure);
  const value = valuesOf(measure)[0]!;
  const speaksOfScale =
    has('ec', 'ppm-word', 'cf-word') || /\b(?:ppm|ms|µs|us|cf)\b/i.test(rest(terms));
  if (unit && speaksOfScale && has('what', 'how-much', 'how', 'is-it')) {
    return { kind: 'convert', value, unit };
  }
  const asksForScale = has('ppm-word', 'cf-word') && has('how-much', 'what');
  return isBare(measure) && asksForScale && value <= MOST_BARE_MS_PER_CM
    ? { kind: 'convert', value, unit: 'mS/cm' }
    : null;
}

const MOST_BARE_MS_PER_CM = 10;

function rest(terms: readonly Term[]): string {
  return textOf(terms.filter((term) => !isMeasure(term)));
}

function unitOf(measure: Measure): ConductivityUnit | null {
  if (unitIs(measure, 'ms-cm')) return 'mS/cm';
  if (unitIs(measure, 'us-cm')) return 'uS/cm';
  if (unitIs(measure, 'ppm')) return 'ppm';
  return unitIs(measure, 'cf') ? 'CF' : null;
}
