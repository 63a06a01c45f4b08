import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import { latestEntry } from '../../logbook/logbook.ts';
import type { EntryStatement } from '../../understanding/statement.ts';
import type { Handling } from '../handling.ts';
import { draftOf } from './put-back.ts';
import { replaceEntries } from './replace-entries.ts';
import { workSpokenOf } from './work-spoken-of.ts';

/** So long after a change what went in may be told. */
const toldWithinMs = 30 * 60_000;
/** A reservoir that was just filled takes no such share of its volume once more. */
const shareOfChange = 0.5;

/**
 * `changed the jars`, and then `only 20 l went in`: those are the litres of the change, which are put right; the
 * others are given back.
 */
export function withoutLitresOfChange(
  handling: Handling,
  drafts: readonly EntryDraft[],
): readonly EntryDraft[] {
  const told = drafts.flatMap((draft) => {
    const change = changeOf(handling, draft);
    return change ? [{ draft, change }] : [];
  });
  for (const { draft, change } of told) {
    const { saidAs: _as, approximate: _about, ...known } = draftOf(change);
    replaceEntries(handling, [change], [{ ...known, ...amountOf(draft) }]);
  }
  return drafts.filter((draft) => !told.some((each) => each.draft === draft));
}

/** `took 90 l` after `how do I change the gutters`: the solution was changed, and not topped up. */
export function asChangeSpokenOf(
  handling: Handling,
  { draft, because }: EntryStatement,
): EntryDraft {
  const work = workSpokenOf(handling);
  const isOfIt =
    work?.duty === 'reservoir-change' &&
    draft.system !== null &&
    work.systems?.includes(draft.system) === true;
  const isTopUp = draft.quantity === 'top-up' && !because.includes('topped up');
  return isOfIt && isTopUp ? { ...draft, quantity: 'reservoir-change' } : draft;
}

function changeOf({ standing, heard, nowMs }: Handling, draft: EntryDraft): Entry | null {
  const { quantity, system: id, value, atMs } = draft;
  const system = standing.greenhouse.systems.find((each) => each.id === id);
  if (quantity !== 'top-up' || !system || value < shareOfChange * system.brimL) return null;
  const change = latestEntry(standing.logbook, system.id, 'reservoir-change');
  if (change?.source.kind !== 'member' || change.source.handle !== heard.member.handle) return null;
  const isJustTold = nowMs - change.recordedAtMs <= toldWithinMs && atMs >= change.atMs;
  const isTooMuch = change.value + value > system.brimL;
  return isJustTold && isTooMuch ? change : null;
}

function amountOf({ value, approximate, saidIn }: EntryDraft): Partial<EntryDraft> & {
  readonly value: number;
} {
  return { value, ...(approximate ? { approximate } : {}), ...(saidIn ? { saidIn } : {}) };
}
