import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import { isBelievable } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, inClause, namesIn, takeRange } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { sameAsLogged } from './of-just-logged.ts';

/**
 * `gutters too`, `same for the gutters`: a clause of names alone, of which all holds that was told of the
 * system before. What was only meant, asked or denied of that one is not told of this one either.
 */
export function recogniseSameAsBefore(
  frame: Frame,
  moods: readonly (Mood | null)[],
  told: readonly Fact[],
): Fact[] {
  const byClause = new Map<number, Fact[]>();
  for (const fact of told) {
    const clause = frame.clauseOf[fact.at]!;
    byClause.set(clause, [...(byClause.get(clause) ?? []), fact]);
  }
  return frame.clauses.flatMap((clause, c): Fact[] => {
    const names = namesIn(frame, clause);
    if (names.length === 0 || !saysOnlySame(frame, clause) || isJoined(frame, c)) return [];
    const logged = told.length === 0 ? sameAsLogged(frame, clause, names.at(-1)!) : [];
    if (logged.length > 0) {
      takeRange(frame, clause.from, clause.to);
      return logged;
    }
    const facts = toldBefore(frame, byClause, c);
    if (facts.length === 0 || !facts.every((fact) => moods[fact.at] === null && isCopied(fact)))
      return [];
    takeRange(frame, clause.from, clause.to);
    const at = names.at(-1)!;
    const other = toldOtherwise(frame, told, c);
    return facts
      .filter((fact) => !other(fact))
      .map((fact) => ({
        ...fact,
        at,
        from: at,
        to: at,
        each: true,
        eachOf: 'systems',
        because: 'same as the system before',
      }));
  });
}

/** `15 ml A in the bench and in the gutters too`: of both, in one breath; what was said of them holds for each. */
export function withEachOfJoined(frame: Frame, facts: readonly Fact[]): Fact[] {
  return facts.map((fact) => {
    const c = frame.clauseOf[fact.at]! + 1;
    const next = frame.clauses[c];
    const isOfBoth = next !== undefined && isJoined(frame, c) && saysOnlySame(frame, next);
    return isOfBoth && isCopied(fact) ? { ...fact, each: true, eachOf: 'systems' } : fact;
  });
}

/** The name goes on from the one that ends the clause before. */
function isJoined(frame: Frame, c: number): boolean {
  const [before, clause] = [frame.clauses[c - 1], frame.clauses[c]!];
  return (
    clause.opens === 'and' &&
    before !== undefined &&
    before.to > before.from &&
    frame.terms[before.to - 1]!.kind === 'name' &&
    !opensWithSame(frame, clause) &&
    !isOnlyNames(frame, c - 1)
  );
}

/** `5 l in the jars and the same in the gutters`: said of the next by itself. */
function opensWithSame(frame: Frame, clause: Clause): boolean {
  const first = inClause(frame, clause, (term) => !means(term, 'article', 'filler'))[0];
  return first !== undefined && means(frame.terms[first], 'same');
}

/** `right the same but ec 2.1`: what is told next is not as before; a bare number may be of any that it would do for. */
function toldOtherwise(frame: Frame, told: readonly Fact[], c: number): (fact: Fact) => boolean {
  const next = frame.clauses[c + 1];
  if (next?.opens !== 'but' || namesIn(frame, next).length > 0) return () => false;
  const others = told.filter(({ at }) => frame.clauseOf[at] === c + 1);
  return ({ quantity }) =>
    others.some(({ amount, doubt, quantity: other }) =>
      doubt?.kind === 'which-quantity' && amount.kind === 'measure'
        ? isBelievable(quantity, amount.measure.values[0]!, null)
        : quantity === other,
    );
}

function saysOnlySame(frame: Frame, clause: Clause): boolean {
  const same = inClause(frame, clause, (term) => means(term, 'same', 'alike'));
  const rest = inClause(
    frame,
    clause,
    (term, i) =>
      term.kind !== 'name' &&
      !means(term, 'same', 'alike', 'article', 'place', 'with') &&
      // `20 l in den Tisch und dasselbe in die Wanne gekippt`: the verb of both.
      !(i === clause.to - 1 && means(term, 'top-up', 'add', 'fill')),
  );
  return same.length > 0 && rest.length === 0;
}

/** What the clauses before tell, back to the one that names a system. */
function toldBefore(frame: Frame, byClause: ReadonlyMap<number, Fact[]>, c: number): Fact[] {
  const facts: Fact[] = [];
  let last = c - 1;
  // `…, bench and gutters too`: the names of one list.
  while (last >= 0 && frame.clauses[last + 1]!.opens === 'and' && isOnlyNames(frame, last)) last--;
  for (let before = last; before >= 0; before--) {
    const here = byClause.get(before) ?? [];
    if (here.length === 0) return [];
    facts.unshift(...here);
    if (namesIn(frame, frame.clauses[before]!).length > 0) return facts;
  }
  return [];
}

function isOnlyNames(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c]!;
  const others = inClause(frame, clause, (term) => term.kind !== 'name' && !means(term, 'article'));
  return others.length === 0 && namesIn(frame, clause).length > 0;
}

const copied = ['ph', 'ec', 'water-temperature', 'dissolved-oxygen', 'level', 'top-up', 'dose'];

function isCopied({ quantity, amount, byDevice }: Fact): boolean {
  return copied.includes(quantity) && amount.kind !== 'missing' && byDevice === undefined;
}
