import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Statement } from '../statement.ts';

/** What was before stands before what was done, and what is after it last. */
export function inPhaseOrder(
  statements: readonly Statement[],
  phaseOf: (draft: EntryDraft) => 'before' | 'after' | undefined,
): Statement[] {
  const rank = (statement: Statement) => {
    const phase = statement.kind === 'entry' ? phaseOf(statement.draft) : undefined;
    return phase === 'before' ? 0 : phase === 'after' ? 2 : 1;
  };
  const bySpan = [...statements].sort((a, b) => a.span.from - b.span.from);
  // `topped up to 60 cm with 10 cans`: the mark is said first, and was reached last.
  const isMarkFirst = bySpan.some(
    (statement, n) =>
      isEntryOf(statement, 'level') &&
      rank(statement) === 2 &&
      bySpan.slice(n + 1).some((later) => isEntryOf(later, 'top-up')),
  );
  return isMarkFirst || bySpan.some((statement) => rank(statement) === 0)
    ? bySpan.sort((a, b) => rank(a) - rank(b))
    : bySpan;
}

function isEntryOf(statement: Statement, quantity: Quantity): boolean {
  return statement.kind === 'entry' && statement.draft.quantity === quantity;
}
