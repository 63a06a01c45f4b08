import type { Fact } from '../fact.ts';
import { hasPastDeed, isDeed, isLabel, leansOnPrevious } from '../moods/clause-kinds.ts';
import type { Mood } from '../moods/mood.ts';
import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { isBracket } from '../reading/said-twice.ts';
import { isMark, isUnknown, means, type Term } from '../reading/term.ts';
import type { TimeMark } from './time-mark.ts';

/**
 * The time that holds for a fact: one in its own clause, else one that closes a list it stands in,
 * else one that opened its sentence and has not been ended by `now`.
 */
export function timeOf(
  frame: Frame,
  fact: Fact,
  facts: readonly Fact[],
  marks: readonly TimeMark[],
  moods: readonly (Mood | null)[],
): TimeMark | null {
  const usable = marks.filter(
    (mark) =>
      // `gutters ec 1240, and will change the bench tonight`: what is meant to be done has its own time.
      (moods[mark.from] ?? null) === (moods[fact.at] ?? null) &&
      (fact.quantity === 'outage' || fact.quantity === 'restored' || !mark.since) &&
      mark.until === (fact.ends === true) &&
      !isOfWhatWas(frame, mark, fact),
  );
  const c = frame.clauseOf[fact.at]!;
  const clause = frame.clauses[c]!;
  const inClause = usable.filter((mark) => mark.clause === c);
  // `yesterday: bench ph 6.1 at 19:10`: the day is in the clock time already.
  const closer = inClause.filter(({ heads }) => heads !== true);
  const own = closer.length > 0 ? closer : inClause;
  if (own.length > 0) return leading(own, fact, facts, clause) ?? nearest(own, fact);
  if (clauseHas(frame, clause, 'now') && saysNow(frame, clause)) return null;
  return closing(frame, fact, facts, usable) ?? opening(frame, fact, facts, usable);
}

/** `22 degrees instead of 24 yesterday`: the time is that of what it is no more. */
function isOfWhatWas({ terms, clauseOf }: Frame, { from, clause }: TimeMark, fact: Fact): boolean {
  if (clause !== clauseOf[fact.at]) return false;
  for (let i = fact.at + 1; i < from; i++)
    if (means(terms[i], 'instead-of') && !means(terms[i], 'not', 'link')) return true;
  return false;
}

/** `yesterday ph jars 5.7 today 5.9`: where each time leads values of its own, it holds until the next. */
function leading(
  marks: readonly TimeMark[],
  fact: Fact,
  facts: readonly Fact[],
  { from, to }: Clause,
): TimeMark | null {
  if (marks.length < 2) return null;
  const hasFact = (start: number, end: number): boolean =>
    facts.some(({ at }) => at >= start && at < end);
  const leads = marks.every((mark, n) => hasFact(mark.to + 1, marks[n + 1]?.from ?? to));
  if (!leads || hasFact(from, marks[0]!.from)) return null;
  return marks.findLast((mark) => mark.to < fact.at) ?? null;
}

function nearest(marks: readonly TimeMark[], fact: Fact): TimeMark {
  return marks.reduce((best, mark) =>
    Math.abs(mark.from - fact.at) < Math.abs(best.from - fact.at) ? mark : best,
  );
}

function saysNow(frame: Frame, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++)
    if (means(frame.terms[i], 'now') && !means(frame.terms[i], 'after')) return true;
  return false;
}

/** A time at the end of a list of readings, or alone in the clause that ends the sentence. */
function closing(
  frame: Frame,
  fact: Fact,
  facts: readonly Fact[],
  marks: readonly TimeMark[],
): TimeMark | null {
  const c = frame.clauseOf[fact.at]!;
  const { sentence } = frame.clauses[c]!;
  const mark = marks.find(
    (candidate) => candidate.clause > c && frame.clauses[candidate.clause]!.sentence === sentence,
  );
  if (!mark) return null;
  const clause = frame.clauses[mark.clause]!;
  const factsThere = facts.filter(({ at }) => at >= clause.from && at < clause.to);
  if (factsThere.some(({ at }) => at > mark.from)) return null;
  // `ph 5.8 (6.1 yesterday), ec 1.7`: of what the brackets hold.
  if (factsThere.length > 0 && isInBrackets(frame, clause)) return null;
  // `ec up to 2.6, was 2.3 on sunday`: the time is that of what was.
  const wasThen = clauseHas(frame, clause, 'was') && !clauseHas(frame, frame.clauses[c]!, 'was');
  if (factsThere.length > 0 && wasThen && opensWithWas(frame, clause)) return null;
  if (factsThere.some(({ at }) => means(frame.terms[at - 1], 'from'))) return null;
  if (factsThere.length === 0) return isAlone(frame, clause, mark) ? mark : null;
  // `put 3 cans in the bench and a jug in the jars at 7`: one deed, and the time that ends what it was done to.
  const isOneDeed = hasPastDeed(frame, frame.clauses[c]!.from, frame.clauses[c]!.to);
  for (let d = c; d <= mark.clause; d++) {
    const between = frame.clauses[d]!;
    if (saysNow(frame, between)) return null;
    if (d > c && hasPastDeed(frame, between.from, between.to)) return null;
    if (isOneDeed && d > c && !goesOnWithDeed(frame, between)) return null;
  }
  return mark;
}

/** Amounts, names and small words that the verb of the clause before is of. */
function goesOnWithDeed(frame: Frame, clause: Clause): boolean {
  return clause.opens === 'and' && leansOnPrevious(frame, clause);
}

function opensWithWas(frame: Frame, { from, to }: Clause): boolean {
  const first = frame.terms
    .slice(from, to)
    .find((term) => !means(term, 'filler') || means(term, 'was'));
  return means(first, 'was');
}

function isAlone(frame: Frame, clause: Clause, mark: TimeMark): boolean {
  if (tellsOfComing(frame, clause)) return false;
  for (let i = clause.from; i < clause.to; i++) {
    if (i >= mark.from && i <= mark.to) continue;
    if (mark.heads === true && (isMark(frame.terms[i], ':') || means(frame.terms[i], 'to-say')))
      continue;
    if (
      !means(
        frame.terms[i],
        'filler',
        'all',
        'both',
        'at',
        'place',
        'pronoun',
        'self',
        'did',
        'link',
        'was',
        'meant',
        'that-one',
        'from',
        'in-the-way',
        'about',
        'ish',
      )
    )
      return false;
  }
  return true;
}

/** `bin erst um 9 gekommen`: when somebody came, not when anything was measured. */
function tellsOfComing(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'received') && clauseHas(frame, clause, 'self');
}

function isOfSomethingElse(frame: Frame, clause: Clause, facts: readonly Fact[]): boolean {
  if (facts.some(({ at }) => at >= clause.from && at < clause.to)) return false;
  const terms = frame.terms.slice(clause.from, clause.to);
  return !terms.some(
    (term, n) =>
      term.kind === 'name' ||
      (isDeedWithAmount(term) && !isGivenToStranger(terms, n)) ||
      isLabel(term) ||
      means(term, 'did'),
  );
}

/** `fed the cat`: to nothing that grows here. */
function isGivenToStranger(terms: readonly Term[], n: number): boolean {
  const to = means(terms[n + 1], 'article') ? n + 2 : n + 1;
  return means(terms[n], 'add') && isUnknown(terms[to]);
}

/** Whose amount a later clause may tell; not `left the lid off`. */
function isDeedWithAmount(term: Term | undefined): boolean {
  return isDeed(term) && !means(term, 'broken', 'no-power', 'could-not', 'other-deed');
}

function isInBrackets({ terms }: Frame, { to }: Clause): boolean {
  return isBracket(terms[to], ')');
}

/** A time before the first thing said in its clause goes on holding. */
function opening(
  frame: Frame,
  fact: Fact,
  facts: readonly Fact[],
  marks: readonly TimeMark[],
): TimeMark | null {
  const c = frame.clauseOf[fact.at]!;
  const mark = marks.findLast(
    (candidate) => candidate.clause < c && !isInBrackets(frame, frame.clauses[candidate.clause]!),
  );
  if (!mark) return null;
  const clause = frame.clauses[mark.clause]!;
  const opens = !facts.some(({ at }) => at >= clause.from && at < mark.from);
  const isHeading = isAlone(frame, clause, mark);
  // `bus at 8:45, gutters ph 6.0`: when something else was.
  if (!isHeading && isOfSomethingElse(frame, clause, facts)) return null;
  if (!opens || (!isHeading && clause.sentence !== frame.clauses[c]!.sentence)) return null;
  for (let d = mark.clause + 1; d < c; d++) if (saysNow(frame, frame.clauses[d]!)) return null;
  return mark;
}
