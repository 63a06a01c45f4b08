import type { Statement } from '../statement.ts';

/** The recogniser's word for `the dwc is low`, where nothing says how low. */
export const lowUntold = 'low, but not how low';

/** `dwc is low, topped it up 10 l`: where it stood is not asked of what has been filled since. */
export function withoutLowOnceFilled(statements: readonly Statement[]): readonly Statement[] {
  return statements.filter(
    (statement) =>
      statement.kind !== 'doubt' ||
      !statement.because.includes(lowUntold) ||
      !statement.waiting?.drafts.every(({ system }) =>
        statements.some(
          (other) => other.kind === 'entry' && other.draft.system === system && isWater(other),
        ),
      ),
  );
}

function isWater(statement: Statement & { readonly kind: 'entry' }): boolean {
  const { quantity } = statement.draft;
  return quantity === 'top-up' || quantity === 'level' || quantity === 'reservoir-change';
}
