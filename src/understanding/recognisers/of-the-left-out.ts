import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  type Frame,
  isMeasure,
  isName,
  isPadding,
  namesIn,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { isLeftOut } from '../systems/mention.ts';
import { repeated } from './later-values.ts';

/**
 * `ph is 5.9 everywhere except the jars, 6.4 there`, `ph überall 5,9, nur Gläser 6,4`: the value of the one system that
 * what was told of all is not told of.
 */
export function readingsOfLeftOut(frame: Frame, clause: Clause, told: readonly Fact[]): Fact[] {
  if (!frame.places.hasAny(['all', 'except'])) return [];
  return namesIn(frame, clause).flatMap((name) => {
    const term = frame.terms[name]!;
    if (term.kind !== 'name' || term.systems.length !== 1 || !isLeftOut(frame, name)) return [];
    const at = valueBehind(frame, name);
    const last = told.findLast((fact) => fact.at < name && fact.amount.kind === 'measure');
    if (at === null || !last || !isOfSolution(last)) return [];
    const fact = repeated(frame, last.quantity, at, 'of the one left out');
    return fact ? [{ ...fact, inTurn: term.systems[0]! }] : [];
  });
}

function isOfSolution({ quantity }: Fact): boolean {
  return quantity === 'ph' || quantity === 'ec' || quantity === 'water-temperature';
}

/** The bare number behind the name, with nothing but a cut, its name again and small words between them, and no unit or label after it. */
function valueBehind({ terms, taken, clauseOf, clauses }: Frame, name: number): number | null {
  const left = terms[name]!;
  let at = name + 1;
  while (at < terms.length && !isMeasure(terms[at])) {
    const term = terms[at]!;
    const isAgain =
      term.kind === 'name' && left.kind === 'name' && term.systems[0] === left.systems[0];
    const isCut = term.kind === 'stop' && term.cut !== 'question' && term.cut !== 'sentence';
    const isSmall =
      isPadding(term) ||
      means(term, 'third-person', 'which', 'who', 'place', 'in-that-one', 'that-is');
    if (!isAgain && !isCut && !isSmall) return null;
    at++;
  }
  // `except the gutters 6.1`: nothing ties it to what was told of the others.
  const lead = means(terms[name - 1], 'article') ? name - 2 : name - 1;
  if (at === name + 1 && means(terms[lead], 'except')) return null;
  const value = terms[at];
  if (!isMeasure(value) || taken[at] || !isBare(value.measure)) return null;
  const rest = terms.slice(at + 1, clauses[clauseOf[at]!]!.to);
  return rest.every((term) => isPadding(term)) ? at : null;
}

/** `everywhere except the jars, ec 1.4 there`: what a clause tells of the one left out right before it; null: it does not. */
export function leftOutThere(frame: Frame, { from, to }: Clause): SystemId | null {
  if (!frame.places.has('in-that-one', from, to)) return null;
  if (frame.places.hasWhere(isName, from, to)) return null;
  const name = frame.places.lastWhere(isName, from);
  const term = frame.terms[name];
  if (term?.kind !== 'name' || term.systems.length !== 1 || !isLeftOut(frame, name)) return null;
  const between = frame.terms.slice(name + 1, from);
  return between.every(({ kind }) => kind === 'stop') ? term.systems[0]! : null;
}
