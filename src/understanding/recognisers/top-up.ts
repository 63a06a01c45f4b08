import type { Amount, Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import {
  cmFactor,
  isBare,
  isVolume,
  litresFactor,
  unitIs,
} from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  measureAtTerm,
  measureOf,
  measuresIn,
  namesIn,
  take,
} from '../reading/frame.ts';
import { isMark, isUnknown, means, type Term } from '../reading/term.ts';

const afterTopUp = 'level after a top-up';

/** `topped up 12 l`, `5 l, then another 4`, `topped up to the brim`: water put in, and the level that is said to follow. */
export function recogniseTopUps(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  // The verb goes on governing while clauses hold nothing but amounts and names.
  let verb: number | null = null;
  let waiting: Fact | null = null;
  // A verb that has governed the clause before its own.
  let governed: number | null = null;
  const settle = () => {
    if (waiting) facts.push(waiting);
    waiting = null;
  };
  for (const [c, clause] of frame.clauses.entries()) {
    const own = verbOf(frame, clause);
    const ahead = own === null ? verbAhead(frame, c) : null;
    if (ahead !== null) {
      settle();
      facts.push(...inOneClause(frame, clause, ahead, false));
      verb = ahead;
      governed = ahead;
      continue;
    }
    if (own !== null && own === governed) continue;
    const leaning =
      own === null &&
      verb !== null &&
      isMoreOfTheSame(frame, clause, facts.at(-1)?.bareVolume === true);
    if (own === null && !leaning) {
      if (clause.from < clause.to) {
        settle();
        verb = null;
      }
      continue;
    }
    if (own !== null) {
      settle();
      verb = own;
    }
    const found = inOneClause(frame, clause, verb!, own !== null);
    if (found.length > 0) {
      if (leaning) endAtMark(facts, found);
      if (leaning || found.some(({ amount }) => amount.kind !== 'missing')) waiting = null;
      const missing = found.filter(({ amount }) => amount.kind === 'missing');
      facts.push(...found.filter(({ amount }) => amount.kind !== 'missing'));
      if (missing.length > 0) waiting = missing[0]!;
    }
  }
  settle();
  return facts;
}

/** `topped up to the brim, 12 l`: the litres that the mark left open. */
function endAtMark(facts: Fact[], found: readonly Fact[]): void {
  const mark = facts.at(-1);
  const litres = found.find(({ quantity }) => quantity === 'top-up');
  if (!mark?.toMark || !litres || litres.amount.kind === 'missing') return;
  facts[facts.length - 1] = { ...mark, toMark: false, phase: 'after', because: afterTopUp };
}

/** `5 l in Wanne und Rinnen nachgefüllt`: a verb that ends the next clause, of which there is nothing else but a name. */
function verbAhead(frame: Frame, c: number): number | null {
  const clause = frame.clauses[c];
  const next = frame.clauses[c + 1];
  if (
    !clause ||
    next?.opens !== 'and' ||
    !isMoreOfTheSame(frame, clause, false) ||
    verbOf(frame, clause) !== null
  )
    return null;
  const verb = verbOf(frame, next);
  if (
    verb !== next.to - 1 ||
    namesIn(frame, clause).length === 0 ||
    namesIn(frame, next).length === 0
  )
    return null;
  for (let i = next.from; i < verb; i++) {
    const term = frame.terms[i]!;
    if (term.kind !== 'name' && !means(term, 'article', 'place', 'both', 'filler')) return null;
  }
  return verb;
}

/** The verb of adding in a clause, if it has water as its object or none. */
function verbOf(frame: Frame, clause: Clause): number | null {
  if (
    clauseHas(frame, clause, 'changed-solution', 'calibrate', 'pick') ||
    isFillTime(frame, clause)
  )
    return null;
  const verbs = inClause(
    frame,
    clause,
    (term, i) =>
      means(term, 'top-up', 'add', 'fill', 'refill', 'add-plainly') &&
      !frame.taken[i] &&
      !isLevelWord(frame, clause, i),
  );
  const strong = verbs.find((i) => means(frame.terms[i], 'top-up', 'fill', 'refill'));
  return strong ?? verbs[0] ?? null;
}

/** `bench fill took 9 min`: how long, not how much. */
function isFillTime(frame: Frame, clause: Clause): boolean {
  return (
    measuresIn(frame, clause).some((i) => unitIs(measureOf(frame, i), 'minute', 'second')) &&
    clauseHas(frame, clause, 'flood')
  );
}

/** `put` in `put the lid on` or `got` as a link are verbs only with an amount; that is looked after below. */
function isLevelWord(frame: Frame, clause: Clause, i: number): boolean {
  return means(frame.terms[i], 'link') && previousIsLabel(frame, clause, i);
}

function previousIsLabel(frame: Frame, clause: Clause, i: number): boolean {
  for (let j = i - 1; j >= clause.from; j--) if (isLabel(frame.terms[j])) return true;
  return false;
}

/** Only amounts, names, `another`, `more`, and where to. */
function isMoreOfTheSame(frame: Frame, clause: Clause, bareBefore: boolean): boolean {
  if (clause.from === clause.to) return false;
  let amounts = 0;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term)) {
      if (
        frame.taken[i] ||
        !(
          isVolume(term.measure) ||
          (isBare(term.measure) &&
            (hasAnother(frame, clause) || isOneForOne(frame, clause, bareBefore)))
        )
      )
        return false;
      amounts++;
    } else if (
      term.kind !== 'name' &&
      !isMark(term, ':', '-') &&
      !means(
        term,
        'another',
        'place',
        'article',
        'filler',
        'each',
        'about',
        'ish',
        'self',
        'solution',
        'of',
        'after',
        'both',
        'in-all',
      )
    ) {
      return false;
    } else if (means(term, 'left-over', 'below')) return false;
  }
  return amounts > 0;
}

/** `topped up the bench 40, jars 2`: a name and a number, as before. */
function isOneForOne(frame: Frame, clause: Clause, bareBefore: boolean): boolean {
  return (
    bareBefore && namesIn(frame, clause).length === 1 && measuresIn(frame, clause).length === 1
  );
}

function hasAnother(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'another');
}

function inOneClause(frame: Frame, clause: Clause, verb: number, own: boolean): Fact[] {
  const each = clauseHas(frame, clause, 'each') ? { each: true } : {};
  const target = own ? brimOrMark(frame, clause, verb) : null;
  const volumes = measuresIn(frame, clause).filter(
    (i) => isVolume(measureOf(frame, i)) && !isWhatIsLeft(frame, clause, i),
  );
  const facts: Fact[] = [];
  for (const i of volumes) {
    if (i === target?.at) continue;
    take(frame, i);
    const stuff = unknownStuff(frame, clause, i) || isDoseSized(measureOf(frame, i));
    const doubt = stuff
      ? { doubt: { kind: 'which-quantity' as const, value: frame.terms[i]!.text } }
      : {};
    facts.push({
      ...shape(frame, i, verb),
      amount: { kind: 'measure', measure: measureOf(frame, i) },
      ...each,
      ...doubt,
    });
  }
  if (facts.length === 0) facts.push(...bareAmounts(frame, clause, verb, each, target?.at ?? null));
  if (target) {
    take(frame, target.at);
    const after = facts.length > 0 ? { phase: 'after' as const } : { toMark: true };
    facts.push({
      quantity: 'level',
      amount: target.amount,
      at: target.at,
      from: verb,
      to: target.at,
      ...after,
      because: facts.length > 0 ? afterTopUp : 'topped up to a mark',
    });
    return facts;
  }
  const odd = measuresIn(frame, clause).find((i) => unitIs(measureOf(frame, i), 'unknown'));
  if (facts.length === 0 && odd !== undefined) {
    take(frame, odd);
    const value = measureOf(frame, odd).written;
    return [
      {
        ...shape(frame, odd, verb),
        amount: { kind: 'missing' },
        doubt: { kind: 'which-unit', quantity: 'top-up', value },
      },
    ];
  }
  if (facts.length === 0 && own && asksForAmount(frame, clause, verb)) {
    facts.push({ ...shape(frame, verb, verb), amount: { kind: 'missing' } });
  }
  return facts;
}

function shape(frame: Frame, i: number, verb: number): Omit<Fact, 'amount'> {
  return {
    quantity: 'top-up',
    at: i,
    from: Math.min(i, verb),
    to: Math.max(i, verb),
    because: means(frame.terms[verb], 'add') ? 'verb of adding' : 'topped up',
  };
}

/** `3 l left` is a level. */
function isWhatIsLeft(frame: Frame, clause: Clause, i: number): boolean {
  const after = frame.terms[i + 1];
  return (
    i + 1 < clause.to &&
    means(after, 'left-over', 'below', 'down') &&
    !means(after, 'place', 'filler')
  );
}

/** Nobody tops up with so little: a product whose name is missing, likely. */
const leastTopUpL = 0.1;

function isDoseSized(measure: Measure): boolean {
  return (
    unitIs(measure, 'ml', 'cl') &&
    (litresFactor(measure) ?? 1) * measure.values.at(-1)! < leastTopUpL
  );
}

/** `2 l of vinegar`: not water, and no product known. */
function unknownStuff(frame: Frame, clause: Clause, i: number): boolean {
  let j = i + 1;
  while (j < clause.to && means(frame.terms[j], 'of', 'article')) j++;
  const after = j < clause.to ? frame.terms[j] : undefined;
  return (
    isUnknown(after) ||
    (j > i + 1 &&
      after?.kind === 'word' &&
      (after.word.crop !== null || (after.word.anyProduct && !means(after, 'solution')))) ||
    (after?.kind === 'word' && after.word.anyProduct && unitIs(measureOf(frame, i), 'ml', 'cl'))
  );
}

/** After a verb of adding a bare number is in the greenhouse's unit of volume. */
function bareAmounts(
  frame: Frame,
  clause: Clause,
  verb: number,
  each: { readonly each?: boolean },
  except: number | null,
): Fact[] {
  const bare = measuresIn(frame, clause).filter(
    (i) => i !== except && isBare(measureOf(frame, i)) && !ownedByLabel(frame, clause, i),
  );
  if (bare.length !== 1 || hasProductsOrUnknown(frame, clause, bare[0]!)) return [];
  const i = bare[0]!;
  take(frame, i);
  return [
    {
      ...shape(frame, i, verb),
      amount: { kind: 'measure', measure: measureOf(frame, i) },
      bareVolume: true,
      ...each,
    },
  ];
}

function ownedByLabel(frame: Frame, clause: Clause, i: number): boolean {
  return inClause(frame, clause, isLabel).some((label) => Math.abs(label - i) < 4);
}

function hasProductsOrUnknown(frame: Frame, clause: Clause, i: number): boolean {
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  if (isUnknown(after)) return true;
  return (
    inClause(
      frame,
      clause,
      (term, j) =>
        term.kind === 'word' &&
        !frame.taken[j] &&
        (term.word.product !== null || term.word.anyProduct) &&
        !means(term, 'solution'),
    ).length > 0
  );
}

interface Target {
  readonly at: number;
  readonly amount: Amount;
}

/** `to the brim`, `to full`, `to 60 cm`, `up to 95 l`: where the level stood afterwards. */
function brimOrMark(frame: Frame, clause: Clause, verb: number): Target | null {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (means(term, 'full') && i > verb && !means(frame.terms[i + 1], 'of'))
      return { at: i, amount: { kind: 'brim' } };
    if (!means(term, 'to')) continue;
    let j = i + 1;
    while (
      j < clause.to &&
      means(frame.terms[j], 'article', 'about', 'link') &&
      !means(frame.terms[j], 'brim')
    )
      j++;
    const goal: Term | undefined = j < clause.to ? frame.terms[j] : undefined;
    if (means(goal, 'brim', 'full')) return { at: j, amount: { kind: 'brim' } };
    const measure = measureAtTerm(frame, j);
    if (!measure) continue;
    const isMark =
      cmFactor(measure) !== null ||
      unitIs(measure, 'percent') ||
      measure.share ||
      isVolume(measure);
    if (isMark) {
      const from = frame.terms[j + 1];
      const below = (cmFactor(measure) !== null || isVolume(measure)) && means(from, 'below');
      return { at: j, amount: { kind: below ? 'below-brim' : 'measure', measure } };
    }
  }
  return null;
}

/** A verb that speaks of topping up, or of water, needs its amount; `put the lid on` does not. */
function asksForAmount(frame: Frame, clause: Clause, verb: number): boolean {
  const verbs = inClause(frame, clause, (term) =>
    means(term, 'top-up', 'fill', 'refill', 'add', 'add-plainly'),
  );
  const strong = verbs.some((i) => means(frame.terms[i], 'top-up', 'fill', 'refill'));
  const products = inClause(
    frame,
    clause,
    (term) =>
      term.kind === 'word' &&
      (term.word.product !== null || (term.word.shyProduct !== null && means(term, 'brim'))),
  );
  if (products.length > 0) return false;
  if (strong) return namesIn(frame, clause).length > 0 || !hasOtherObject(frame, clause, verb);
  return clauseHas(frame, clause, 'solution') && !means(frame.terms[verb], 'link');
}

function hasOtherObject(frame: Frame, clause: Clause, verb: number): boolean {
  return inClause(frame, clause, (term, i) => i > verb && isUnknown(term)).length > 0;
}
