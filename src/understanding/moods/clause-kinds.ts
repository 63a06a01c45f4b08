import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/** A word that says what was done. */
export function isDeed(term: Term | undefined): boolean {
  return means(
    term,
    'top-up',
    'add',
    'fill',
    'change',
    'changed-solution',
    'calibrate',
    'pick',
    'empty-out',
    'refill',
    'broken',
    'no-power',
    'add-plainly',
    'other-deed',
    'done',
    'could-not',
    'plain-deed',
    'take-away',
  );
}

export function isPlainDeed(term: Term | undefined): boolean {
  return means(term, 'plain-deed');
}

/** A word that says which quantity a number is of. */
export function isLabel(term: Term | undefined): boolean {
  return means(
    term,
    'ph',
    'ec',
    'ppm-word',
    'cf-word',
    'temperature',
    'air',
    'air-thermometer',
    'humidity',
    'oxygen',
    'level',
  );
}

/** A clause that says nothing of its own: only amounts, names, products, and small words. */
export function leansOnPrevious(frame: Frame, clause: Clause): boolean {
  return !frame.places.hasWhere(isNews, clause.from, clause.to);
}

function isNews(term: Term): boolean {
  return isLabel(term) || (isPastDeed(term) && !means(term, 'full', 'took'));
}

/** `down` is more often a product than something that broke. */
function isPastDeed(term: Term): boolean {
  const isShyProduct = term.kind === 'word' && term.word.shyProduct !== null;
  return isDeed(term) && !isPlainDeed(term) && !isShyProduct;
}

/**
 * Whether a clause that would lean on another tells of something else after all: a value that the other cannot
 * have spoken of (`didn't top up the jars and bench 21C`), or a name that leads an amount where it had none.
 */
export function tellsOfItsOwn(frame: Frame, clause: Clause, other: Clause): boolean {
  const measures = measuresSaid(frame, clause);
  const others = measuresSaid(frame, other);
  const kinds = new Set(others.map(kindOf));
  if (measures.length > 1 && measures.every((measure) => isBare(measure))) return others.length < 2;
  if (measures.some((measure) => isReadingUnit(measure) && !kinds.has(kindOf(measure))))
    return true;
  if (measures.length === 0 && isSaidFull(frame, clause)) return true;
  if (measures.length === 0 || others.length > 0) return false;
  // `didn't need any water in the gutters, still 110 l`: what is in it.
  const isStillThere = clauseHas(frame, clause, 'still-there', 'left-over');
  return isStillThere || opensWithName(frame, clause);
}

/** `jars need nothing, they are still full`, `need to fill the bench and the jars are full`: nothing but that. */
function isSaidFull({ terms }: Frame, { from, to }: Clause): boolean {
  if (!means(terms[to - 1], 'full')) return false;
  const said = terms.slice(from, to - 1);
  return (
    said.some((term) => means(term, 'still-there', 'there-is') || isPlainLink(term)) &&
    said.every(
      (term) =>
        term.kind === 'name' ||
        means(term, 'pronoun', 'link', 'still-there', 'filler', 'article', 'there-is'),
    )
  );
}

function isPlainLink(term: Term): boolean {
  return means(term, 'link') && !means(term, 'filler', 'place');
}

/** `jars 6.0`, `and the bench is at 400 l`: a system, and then what is told of it. */
export function opensWithName(frame: Frame, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (term.kind === 'name') return true;
    if (!means(term, 'article', 'filler', 'now') || means(term, 'place')) return false;
  }
  return false;
}

function measuresSaid(frame: Frame, clause: Clause): Measure[] {
  return frame.terms
    .slice(clause.from, clause.to)
    .flatMap((term, n) =>
      term.kind === 'measure' && !frame.timed[clause.from + n] ? [term.measure] : [],
    );
}

function kindOf(measure: Measure): string {
  if (isVolume(measure)) return 'volume';
  return measure.unit === null ? 'bare' : 'id' in measure.unit ? measure.unit.id : 'volume';
}

function isReadingUnit(measure: Measure): boolean {
  return unitIs(
    measure,
    'celsius',
    'fahrenheit',
    'degree',
    'ms-cm',
    'us-cm',
    'cf',
    'ppm',
    'mg-l',
    'minute',
    'percent',
  );
}

export function hasPastDeed(frame: Frame, from: number, to: number): boolean {
  return frame.places.hasWhere(isPastDeed, from, to);
}

/**
 * Where the clause says that something could not be done: in one phrase, or in two words that the verb
 * of the deed follows (`konnte die Gläser nicht machen`). A clause with an amount tells of that instead.
 */
export function couldNotAt(frame: Frame, clause: Clause): number | null {
  let could: number | null = null;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (term?.kind === 'measure') return null;
    if (means(term, 'could-not')) return i;
    if (means(term, 'could')) could ??= i;
    else if (could !== null && means(term, 'not')) {
      const last = frame.terms[clause.to - 1];
      const after = frame.terms[i + 1];
      const isDoing = (term: Term | undefined): boolean =>
        means(term, 'do', 'clean') || isDeed(term);
      return i + 1 < clause.to && (isDoing(after) || isDoing(last)) ? could : null;
    }
  }
  return null;
}
