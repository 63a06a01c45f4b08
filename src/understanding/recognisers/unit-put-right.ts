import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Measure } from '../numbers/measure.ts';
import { convert, litresFactor, litresPerUsGallon, round } from '../numbers/quantity-of-measure.ts';
import { readablesOf } from '../numbers/readables-of.ts';
import type { Frame } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import { unitAt } from '../reading/units-put-right.ts';
import type { Unit } from '../reading/word-list.ts';
import type { TakingBack } from '../statement.ts';
import { besideCorrection, isMeasureOrName } from './beside-correction.ts';

/**
 * `ml, not l`, `I meant gallons`: nothing but another unit, right after what was logged. The one number of it that can
 * be of that unit is put right; null: none can, or more than one.
 */
export function unitPutRight(frame: Frame): TakingBack | null {
  const { justLogged, greenhouse } = frame.context;
  if (!justLogged || frame.places.hasWhere(isMeasureOrName, 0, frame.terms.length)) return null;
  const said = unitsSaid(frame);
  if (!said) return null;
  const { meant, givenUp } = said;
  const { units } = greenhouse;
  const fitting = justLogged.flatMap((entry) => {
    const number = numberSaid(entry, units.volume === 'L', givenUp);
    if (number === null) return [];
    const inUnit = (unit: Unit): Measure => ({ values: [number], unit, ...plain });
    const [reading] = readablesOf(inUnit(meant), units, entry.quantity);
    if (!reading || isSame(reading.value, entry.value)) return [];
    // `ml, not l` is of nothing that was said in cans.
    const wasSo = givenUp === null || isSame(valueIn(inUnit(givenUp), entry, units), entry.value);
    return wasSo ? [{ entry, number, reading }] : [];
  });
  const [one, ...others] = fitting;
  if (!one || others.length > 0) return null;
  const { quantity, value, system, product } = one.entry;
  return {
    kind: 'correct',
    said: one.number,
    to: [one.reading],
    from: [{ quantity, value }],
    system,
    ...(product === undefined ? {} : { product }),
  };
}

const plain = {
  approximate: false,
  bound: false,
  share: false,
  written: '',
  whole: false,
  decimals: 0,
} as const;

/** The unit meant and the one given up; null: something else is said as well, or nothing of correcting. */
function unitsSaid(frame: Frame): { readonly meant: Unit; readonly givenUp: Unit | null } | null {
  const { terms } = frame;
  const meant: Unit[] = [];
  const givenUp: Unit[] = [];
  let isCorrecting = false;
  let isNext = false;
  for (let i = 0; i < terms.length; ) {
    const unit = unitAt(terms, i, frame.lexicon);
    if (unit) {
      (isNext ? givenUp : meant).push(unit.value);
      isNext = false;
      i += unit.length;
      continue;
    }
    const term = terms[i]!;
    if (!mayStandBeside(term)) return null;
    if (means(term, 'not', 'instead-of', 'did-not')) isNext = true;
    isCorrecting ||= isNext || means(term, 'sorry', 'meant', 'no-wait', 'rather', 'said-no');
    i += 1;
  }
  if (!isCorrecting || meant.length !== 1 || givenUp.length > 1) return null;
  return { meant: meant[0]!, givenUp: givenUp[0] ?? null };
}

function mayStandBeside(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question';
  if (term.kind === 'mark') return isMark(term, '*', '-', '.', '"', "'");
  return means(term, ...besideCorrection, 'was');
}

/** The number of what was logged, as it was said; null: nobody can tell. */
function numberSaid(
  { value, quantity, saidIn, saidAs }: EntryDraft,
  isInLitres: boolean,
  givenUp: Unit | null,
): number | null {
  if (saidAs) return null;
  if (saidIn) return round(value / saidIn.perUnit + saidIn.zeroAt);
  const isVolume = quantity === 'level' || quantity === 'top-up' || quantity === 'reservoir-change';
  if (!isVolume || isInLitres) return value;
  // Litres that were said, or gallons that went without saying.
  if (givenUp === null) return null;
  return litresFactor({ values: [value], unit: givenUp, ...plain }) === 1
    ? value
    : round(value / litresPerUsGallon);
}

function valueIn(
  measure: Measure,
  { quantity }: EntryDraft,
  units: Parameters<typeof convert>[2],
): number | null {
  return (
    readablesOf(measure, units, quantity)[0]?.value ??
    convert(quantity, measure, units)?.values[0] ??
    null
  );
}

function isSame(one: number | null, other: number): boolean {
  return one !== null && Math.abs(one - other) <= 0.005 * Math.abs(other);
}
