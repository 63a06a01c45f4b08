import type { Fact } from '../fact.ts';
import { leansOnPrevious } from '../moods/clause-kinds.ts';
import { type Frame, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { FactsInOrder } from './facts-in-order.ts';
import { isLeftOut, type Mention } from './mention.ts';

/** `isEnd`: nothing of weight follows it in its clause. It ends its clause after values (or stands alone in it after a clause of values), with a preposition or none. */
export function isTrailing(
  frame: Frame,
  mention: Mention,
  facts: FactsInOrder,
  isEnd: boolean,
): boolean {
  // `everywhere 20 degrees except in the jars`: whatever was told, it is not of them.
  if (
    mention.from === mention.to &&
    isName(frame.terms[mention.from]) &&
    isLeftOut(frame, mention.from)
  )
    return false;
  const clause = frame.clauses[mention.clause]!;
  const last = frame.clauses[mention.lastClause]!;
  const after = facts.hasBetween(mention.to, last.to);
  const factsBefore = facts.reaches(clause.from, mention.from);
  if (factsBefore)
    return (
      (isEnd && !after) ||
      (mention.afterPlace && !after) ||
      (mention.afterPlace && leadsToTargets(frame, mention, facts))
    );
  const leans = clause.opens === 'and' || clause.opens === 'comma' || clause.opens === 'start';
  return (
    isEnd &&
    leans &&
    !after &&
    !leadsOn(frame, mention, facts) &&
    onlySmallWords(frame, clause.from, mention.from) &&
    facts.hasBetween(-1, clause.from)
  );
}

/** Alone between commas, with values after it that no other name leads: it is the head of what follows. */
function leadsOn(frame: Frame, mention: Mention, facts: FactsInOrder): boolean {
  const { segment } = frame.clauses[mention.clause]!;
  const next = facts.after(mention.to);
  if (!next || frame.clauses[frame.clauseOf[next.at]!]!.segment !== segment) return false;
  return !frame.places.hasWhere(isName, mention.to + 1, next.to + 1);
}

/** What a top-up led to may follow the name: `12 l in the dwc to the brim`. */
export function leadsToTargets(frame: Frame, mention: Mention, facts: FactsInOrder): boolean {
  return facts.everyBetween(mention.to, frame.clauses[mention.lastClause]!.to, isTarget);
}

export function isTarget({ quantity, phase }: Fact): boolean {
  return quantity === 'level' && phase === 'after';
}

/** Of each mention, whether nothing but small words follows it in its clause. */
export function endings(frame: Frame, mentions: readonly Mention[]): readonly boolean[] {
  const ends: boolean[] = [];
  for (let n = mentions.length - 1; n >= 0; n--) {
    const { to, lastClause } = mentions[n]!;
    const next = mentions[n + 1];
    const goesOn = next?.clause === lastClause && next.lastClause === lastClause;
    ends[n] = goesOn
      ? ends[n + 1]! && endsAfter(frame, to + 1, next.to + 1)
      : endsAfter(frame, to + 1, frame.clauses[lastClause]!.to);
  }
  return ends;
}

function endsAfter(frame: Frame, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const term = frame.terms[i]!;
    if (term.kind === 'mark' || frame.taken[i] === true) continue;
    // `nft 6/1.2/20 jars ok`: something is told of it after all.
    if (means(term, 'judged') && frame.terms[i - 1]?.kind === 'name') return false;
    if (
      !means(
        term,
        'filler',
        'each',
        'top-up',
        'add',
        'fill',
        'done',
        'today',
        'now',
        'pronoun',
        'in-all',
        'reservoir',
        'this',
        'morning',
        'thanks',
        'yesterday',
        'at-hour',
        'last',
        'night',
      )
    )
      return false;
  }
  return true;
}

function onlySmallWords(frame: Frame, from: number, to: number): boolean {
  return !frame.places.hasWhere(isNoSmallWord, from, to);
}

function isNoSmallWord(term: Term): boolean {
  return !means(term, 'article', 'place', 'filler', 'all', 'both', 'link');
}

/** Whether the trailing name `n` governs this fact, which stands before it. */
export function reachesBack(
  frame: Frame,
  mentions: readonly Mention[],
  n: number,
  fact: Fact,
): boolean {
  const mention = mentions[n]!;
  const previous = mentions[n - 1];
  const clause = frame.clauses[mention.clause]!;
  if (fact.to >= clause.from)
    return !previous || previous.to < fact.at || previous.to < clause.from || fact.at > previous.to;
  if (!previous) return true;
  if (previous.to > fact.at) return false;
  const { segment } = clause;
  const isOfSegment = frame.clauses[frame.clauseOf[fact.at]!]!.segment === segment;
  if (isOfSegment && frame.clauses[previous.lastClause]!.segment < segment) return true;
  // `dwc ph 5.8, added 20 ml A and 20 ml B to the bench`: one deed, one name.
  return sharesDeed(frame, fact, mention, previous);
}

function sharesDeed(frame: Frame, fact: Fact, mention: Mention, previous: Mention): boolean {
  const from = frame.clauseOf[fact.at]!;
  if (previous.lastClause >= from) return false;
  for (let c = from + 1; c <= mention.clause; c++) {
    const clause = frame.clauses[c]!;
    const joined = clause.opens === 'and' || (clause.opens === 'comma' && fact.quantity === 'dose');
    if (!joined || !leansOnPrevious(frame, clause)) return false;
  }
  return fact.quantity === 'dose' || isReadingPair(frame, from, mention.clause);
}

/** Never more than one deed's worth: volumes stay with the name before them. */
function isReadingPair(_frame: Frame, from: number, to: number): boolean {
  return from === to;
}

/** A trailing name that governed what stood before it does not claim what follows in its clause as strongly. */
export function backwardsOnly(
  frame: Frame,
  mentions: readonly Mention[],
  n: number,
  facts: FactsInOrder,
): boolean {
  const mention = mentions[n]!;
  const clause = frame.clauses[mention.clause]!;
  const previous = mentions[n - 1];
  const start = previous?.lastClause === mention.clause ? previous.to : clause.from - 1;
  return mention.afterPlace && facts.hasBetween(start, mention.from);
}
