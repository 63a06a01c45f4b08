import type { DoubtStatement, EntryStatement, Statement } from '../statement.ts';

/**
 * `dwc is low, topped it up 10 l`: where it stood is not asked of what has been filled since. `nearly empty, gave it
 * 4 cans`: nor is it taken for a level, since it may have been a tenth or a third.
 */
export function withoutLowOnceFilled(statements: readonly Statement[]): readonly Statement[] {
  const filled = new Set(
    statements.flatMap((one) => (one.kind === 'entry' && isWater(one) ? [one.draft.system] : [])),
  );
  const poured = new Set(
    statements.flatMap((one) =>
      one.kind === 'entry' && one.draft.quantity === 'top-up' ? [one.draft.system] : [],
    ),
  );
  return statements.filter((one) => {
    if (one.kind === 'entry') return !(isAlmostEmpty(one) && poured.has(one.draft.system));
    if (one.kind !== 'doubt' || !asksForLevel(one)) return true;
    return !one.waiting?.drafts.every(({ system }) => filled.has(system));
  });
}

function asksForLevel({ reason }: DoubtStatement): boolean {
  return reason.kind === 'missing-amount' && reason.quantity === 'level';
}

function isAlmostEmpty({ draft: { quantity, value, approximate } }: EntryStatement): boolean {
  return quantity === 'level' && value === 0 && approximate === true;
}

function isWater({ draft: { quantity } }: EntryStatement): boolean {
  return quantity === 'top-up' || quantity === 'level' || quantity === 'reservoir-change';
}
