import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Frame } from '../reading/frame.ts';
import { firstAt } from '../reading/places.ts';
import { means } from '../reading/term.ts';
import type { FactsInOrder } from './facts-in-order.ts';
import { isLeftOut, type Mention } from './mention.ts';
import { strangerBefore } from './stranger.ts';
import {
  backwardsOnly,
  endings,
  isTarget,
  isTrailing,
  leadsToTargets,
  reachesBack,
} from './trailing.ts';

/** Of which system a fact is said. */
export type Scope =
  | { readonly kind: 'named'; readonly mention: Mention }
  /** Two names lay claim to it, or the name fits several. */
  | { readonly kind: 'unsure'; readonly systems: readonly SystemId[]; readonly written: string }
  /** A word stands where a name should, and it is none. */
  | { readonly kind: 'unknown-name'; readonly written: string }
  | { readonly kind: 'unnamed' };

/** The namings of a message among its facts, and which of them trail: found once for all facts. */
interface Named {
  readonly frame: Frame;
  readonly facts: FactsInOrder;
  readonly mentions: readonly Mention[];
  /** First terms of the mentions, rising. */
  readonly starts: readonly number[];
  readonly trails: readonly boolean[];
}

/**
 * Of which system each fact is said. A name governs what follows it until another name comes. A name that
 * ends its clause after values governs the values of that clause instead; if nothing was named before, all
 * of them.
 */
export function scopesAmong(
  frame: Frame,
  facts: FactsInOrder,
  allMentions: readonly Mention[],
): (fact: Fact) => Scope {
  const sources = allMentions.filter(
    (mention) => isSource(frame, mention) && !isPickedFrom(frame, mention, facts),
  );
  const all = named(frame, facts, allMentions);
  const targets =
    sources.length === 0
      ? all
      : named(
          frame,
          facts,
          allMentions.filter((mention) => !sources.includes(mention)),
        );
  const sourceOf = new Map<number, Mention>();
  for (const source of sources)
    if (!sourceOf.has(source.clause)) sourceOf.set(source.clause, source);
  return (fact) => {
    if (!isPutIn(fact)) return scopeAmong(all, fact);
    const scope = scopeAmong(targets, fact);
    const source = sourceOf.get(frame.clauseOf[fact.at]!);
    if (!source || scope.kind === 'named') return scope;
    return { kind: 'unsure', systems: source.systems, written: source.written };
  };
}

function named(frame: Frame, facts: FactsInOrder, mentions: readonly Mention[]): Named {
  const ends = endings(frame, mentions);
  return {
    frame,
    facts,
    mentions,
    starts: mentions.map(({ from }) => from),
    trails: mentions.map((mention, n) => isTrailing(frame, mention, facts, ends[n]!)),
  };
}

function isPutIn({ quantity }: Fact): boolean {
  return quantity === 'top-up' || quantity === 'dose';
}

/** `5 l from the dwc into the bench`: where it came from is not where it went. */
function isSource(frame: Frame, { from }: Mention): boolean {
  let before = from - 1;
  while (
    from - before <= 3 &&
    means(frame.terms[before], 'article') &&
    !means(frame.terms[before], 'from')
  )
    before--;
  return means(frame.terms[before], 'from');
}

/** `from the bench 2 kg, then 30 l topped up`: what was picked there is no water that came from there. */
function isPickedFrom(frame: Frame, { clause }: Mention, facts: FactsInOrder): boolean {
  const { from, to } = frame.clauses[clause]!;
  return (
    facts.hasBetween(from - 1, to) &&
    facts.everyBetween(from - 1, to, ({ quantity }) => quantity === 'harvest')
  );
}

function scopeAmong(named: Named, fact: Fact): Scope {
  const { frame, facts, mentions } = named;
  const clause = frame.clauseOf[fact.at]!;
  const next = firstAt(named.starts, fact.at + 1);
  const last = mentions[next - 1];
  if (last && fact.at <= last.to) return scopeBy(last);
  const before = last;
  const trailing = trailingOver(named, fact, next);
  const inClause =
    before?.lastClause === clause && !backwardsOnly(frame, mentions, next - 1, facts)
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
  const following = mentions[next];
  const isToCome = !inClause && following?.clause === clause && !isLeftOut(frame, following.from);
  const later = isToCome ? following : undefined;
  // `ph 5.8 dwc ec 1.7`: the name stands between values; whose the first is, only what was said before can blur.
  if (later && !before) {
    const other = everydayNameBefore(frame, fact, later);
    if (other === null) return scopeBy(later);
    return { kind: 'unsure', systems: [...other, ...later.systems], written: later.written };
  }
  if (later && before) {
    const systems = [...new Set([...before.systems, ...later.systems])];
    return { kind: 'unsure', systems, written: later.written };
  }
  const stranger = strangerBefore(frame, fact, before);
  if (stranger !== null) return { kind: 'unknown-name', written: stranger };
  if (before) return scopeBy(before);
  const first = mentions[0];
  if (first && named.trails[0] && first.from > fact.at) return scopeBy(first);
  return { kind: 'unnamed' };
}

/**
 * The name that governs what stands before it. What a top-up led to may follow the name (`12 l in the dwc
 * to the brim`); else only the next name can reach back, since one beyond it would reach over it.
 */
function trailingOver(named: Named, fact: Fact, next: number): Mention | undefined {
  const { frame, facts, mentions, trails } = named;
  if (isTarget(fact)) {
    const clause = frame.clauseOf[fact.at]!;
    let n = next;
    while (n > 0 && mentions[n - 1]!.lastClause === clause) n--;
    for (; n < next; n++)
      if (trails[n] && leadsToTargets(frame, mentions[n]!, facts)) return mentions[n];
  }
  return trails[next] && reachesBack(frame, mentions, next, fact) ? mentions[next] : undefined;
}

function scopeBy(mention: Mention): Scope {
  if (mention.unsure) return { kind: 'unsure', systems: mention.systems, written: mention.written };
  return { kind: 'named', mention };
}

/**
 * `gave left a pail right half a pail back wall 4`: where no name can stand, the everyday word of another system may
 * be meant as its name all the same; what stands behind it is then not surely of the name that comes after.
 */
function everydayNameBefore(frame: Frame, fact: Fact, later: Mention): readonly SystemId[] | null {
  const { from } = frame.clauses[frame.clauseOf[fact.at]!]!;
  const said = new Set(frame.terms.slice(from, fact.at).map(({ text }) => text));
  const others = frame.lexicon.names.flatMap(({ system, words }) =>
    words.length === 1 && said.has(words[0]!) && !later.systems.includes(system) ? [system] : [],
  );
  return others.length > 0 ? [...new Set(others)] : null;
}
