import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { Mention } from './mention.ts';
import { strangerBefore } from './stranger.ts';
import { backwardsOnly, isTrailing, reachesBack } from './trailing.ts';

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
  allMentions: readonly Mention[],
): Scope {
  const mentions = isPutIn(fact)
    ? allMentions.filter((mention) => !isSource(frame, mention))
    : allMentions;
  const source = allMentions.find(
    (mention) => !mentions.includes(mention) && mention.clause === frame.clauseOf[fact.at],
  );
  const scope = scopeAmong(frame, fact, facts, mentions);
  if (!source || scope.kind === 'named') return scope;
  return { kind: 'unsure', systems: source.systems, written: source.written };
}

function isPutIn({ quantity }: Fact): boolean {
  return quantity === 'top-up' || quantity === 'dose';
}

/** `5 l from the dwc into the bench`: where it came from is not where it went. */
function isSource(frame: Frame, { from }: Mention): boolean {
  let before = from - 1;
  while (means(frame.terms[before], 'article') && !means(frame.terms[before], 'from')) before--;
  return means(frame.terms[before], 'from');
}

function scopeAmong(
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
