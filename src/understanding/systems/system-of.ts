import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { leansOnPrevious } from '../moods/clause-kinds.ts';
import { type Frame } from '../reading/frame.ts';
import { isCrop, isUnknown, means, type Term } from '../reading/term.ts';
import type { Mention } from './mention.ts';

/** Of which system a fact is said. */
export type Scope =
  | { readonly kind: 'named'; readonly mention: Mention }
  /** Two names lay claim to it, or the name fits several. */
  | { readonly kind: 'unsure'; readonly systems: readonly SystemId[]; readonly written: string }
  /** A word stands where a name should, and it is none. */
  | { readonly kind: 'unknown-name'; readonly written: string }
  | { readonly kind: 'unnamed' };

/**
 * A name governs what follows it until another name comes. A name that ends its clause after values
 * governs the values of that clause instead; if nothing was named before, all of them.
 */
export function scopeOf(
  frame: Frame,
  fact: Fact,
  facts: readonly Fact[],
  mentions: readonly Mention[],
): Scope {
  const clause = frame.clauseOf[fact.at]!;
  const itself = mentions.find(({ from, to }) => from <= fact.at && fact.at <= to);
  if (itself) return scopeBy(itself);
  const trailing = mentions.find(
    (mention) =>
      isTrailing(frame, mention, facts) && reachesBack(frame, mention, fact, facts, mentions),
  );
  const before = mentions.findLast((mention) => mention.to < fact.at);
  const inClause =
    before?.lastClause === clause && !backwardsOnly(frame, before, facts, mentions)
      ? before
      : undefined;
  if (trailing && inClause && inClause.systems.join() !== trailing.systems.join()) {
    return {
      kind: 'unsure',
      systems: [...new Set([...inClause.systems, ...trailing.systems])],
      written: trailing.written,
    };
  }
  if (trailing) return scopeBy(trailing);
  const later = inClause
    ? undefined
    : mentions.find((mention) => mention.clause === clause && mention.from > fact.at);
  // `ph 5.8 dwc ec 1.7`: the name stands between values; whose the first is, only what was said before can blur.
  if (later && !before) return scopeBy(later);
  if (later && before) {
    const systems = [...new Set([...before.systems, ...later.systems])];
    return { kind: 'unsure', systems, written: later.written };
  }
  const stranger = strangerBefore(frame, fact, before);
  if (stranger !== null) return { kind: 'unknown-name', written: stranger };
  if (before) return scopeBy(before);
  const first = mentions[0];
  if (first && isTrailing(frame, first, facts) && first.from > fact.at) return scopeBy(first);
  return { kind: 'unnamed' };
}

function scopeBy(mention: Mention): Scope {
  if (mention.unsure) return { kind: 'unsure', systems: mention.systems, written: mention.written };
  return { kind: 'named', mention };
}

/** It ends its clause after values (or stands alone in it after a clause of values), with a preposition or none. */
function isTrailing(frame: Frame, mention: Mention, facts: readonly Fact[]): boolean {
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
    onlySmallWords(frame, clause.from, mention.from) &&
    facts.some(({ at }) => at < clause.from)
  );
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
function reachesBack(
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
function backwardsOnly(
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

/** A word at the clause's start, before its values, that is no word of the vocabulary: perhaps a name. */
function strangerBefore(frame: Frame, fact: Fact, before: Mention | undefined): string | null {
  const clause = frame.clauses[frame.clauseOf[fact.at]!]!;
  if (before && before.lastClause === frame.clauseOf[fact.at]) return null;
  for (let i = clause.from; i < fact.at; i++) {
    const term = frame.terms[i]!;
    if (isStranger(frame, term) || isCrop(term)) return term.text;
    if (term.kind === 'measure') break;
  }
  for (let i = fact.to + 1; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if ((isStranger(frame, term) || isCrop(term)) && means(frame.terms[i - 1], 'place', 'article'))
      return term.text;
  }
  return null;
}

/** Neither in the vocabulary nor an ordinary word of the language. */
function isStranger(frame: Frame, term: Term): boolean {
  return isUnknown(term) && !frame.lexicon.own.common.has(term.text);
}
