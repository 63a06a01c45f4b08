import type { Fact } from '../fact.ts';
import { leansOnPrevious } from '../moods/clause-kinds.ts';
import type { Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { Mention } from './mention.ts';

/** It ends its clause after values (or stands alone in it after a clause of values), with a preposition or none. */
export function isTrailing(frame: Frame, mention: Mention, facts: readonly Fact[]): boolean {
  const clause = frame.clauses[mention.clause]!;
  const last = frame.clauses[mention.lastClause]!;
  const after = facts.some(({ at }) => at > mention.to && at < last.to);
  const isEnd = endsAfter(frame, mention.to + 1, last.to);
  const factsBefore = facts.some(({ at, to }) => to >= clause.from && at < mention.from);
  if (factsBefore)
    return (
      isEnd ||
      (mention.afterPlace && !after) ||
      (mention.afterPlace && onlyTargetsAfter(facts, mention, last.to))
    );
  const leans = clause.opens === 'and' || clause.opens === 'comma' || clause.opens === 'start';
  return (
    isEnd &&
    leans &&
    !after &&
    !leadsOn(frame, mention, facts) &&
    onlySmallWords(frame, clause.from, mention.from) &&
    facts.some(({ at }) => at < clause.from)
  );
}

/** Alone between commas, with values after it that no other name leads: it is the head of what follows. */
function leadsOn(frame: Frame, mention: Mention, facts: readonly Fact[]): boolean {
  const { segment } = frame.clauses[mention.clause]!;
  const next = facts.find(({ at }) => at > mention.to);
  if (!next || frame.clauses[frame.clauseOf[next.at]!]!.segment !== segment) return false;
  return !frame.terms.slice(mention.to + 1, next.to + 1).some(({ kind }) => kind === 'name');
}

/** What a top-up led to may follow the name: `12 l in the dwc to the brim`. */
function onlyTargetsAfter(facts: readonly Fact[], mention: Mention, to: number): boolean {
  return facts
    .filter(({ at }) => at > mention.to && at < to)
    .every(({ quantity, phase }) => quantity === 'level' && phase === 'after');
}

function endsAfter(frame: Frame, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const term = frame.terms[i]!;
    if (term.kind === 'mark' || frame.taken[i] === true) continue;
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
  for (let i = from; i < to; i++)
    if (!means(frame.terms[i], 'article', 'place', 'filler', 'all', 'both', 'link')) return false;
  return true;
}

/** Whether a trailing name governs this fact before it. */
export function reachesBack(
  frame: Frame,
  mention: Mention,
  fact: Fact,
  facts: readonly Fact[],
  mentions: readonly Mention[],
): boolean {
  if (fact.at > mention.to)
    return (
      onlyTargetsAfter(facts, mention, frame.clauses[mention.lastClause]!.to) &&
      fact.at < frame.clauses[mention.lastClause]!.to
    );
  const previous = mentions.findLast((other) => other.to < mention.from);
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
  mention: Mention,
  facts: readonly Fact[],
  mentions: readonly Mention[],
): boolean {
  const clause = frame.clauses[mention.clause]!;
  const earlier = mentions.findLast(
    (other) => other.to < mention.from && other.lastClause === mention.clause,
  );
  const start = earlier ? earlier.to : clause.from - 1;
  return mention.afterPlace && facts.some(({ at }) => at > start && at < mention.from);
}
