import type { DoubtStatement, EntryStatement, Statement } from '../statement.ts';

/** `dwc is low, topped it up 10 l`: where it stood is not asked of what has been filled since. */
export function withoutLowOnceFilled(statements: readonly Statement[]): readonly Statement[] {
  const filled = new Set(
    statements.flatMap((one) => (one.kind === 'entry' && isWater(one) ? [one.draft.system] : [])),
  );
  return statements.filter(
    (one) =>
      !(
        one.kind === 'doubt' &&
        asksForLevel(one) &&
        one.waiting?.drafts.every(({ system }) => filled.has(system))
      ),
  );
}

function asksForLevel({ reason }: DoubtStatement): boolean {
  return reason.kind === 'missing-amount' && reason.quantity === 'level';
}

function isWater({ draft: { quantity } }: EntryStatement): boolean {
  return quantity === 'top-up' || quantity === 'level' || quantity === 'reservoir-change';
}
