import type { DoubtStatement, Statement } from '../statement.ts';

/** `added A and B`: one question for both amounts, not one each. */
export function withoutRepeatedQuestions(statements: readonly Statement[]): Statement[] {
  const kept: Statement[] = [];
  for (const statement of statements) {
    const last = kept.at(-1);
    if (last?.kind === 'doubt' && statement.kind === 'doubt' && asksTheSame(last, statement)) {
      kept[kept.length - 1] = joined(last, statement);
    } else kept.push(statement);
  }
  return kept;
}

function asksTheSame(a: DoubtStatement, b: DoubtStatement): boolean {
  // `bucket 1 5.8, bucket 2 5.9`: which is which is asked once.
  if (a.reason.kind === 'shorthand-does-not-fit') return b.reason.kind === a.reason.kind;
  if (a.reason.kind === 'which-unit') return isSameNumberOfDoses(a, b);
  return (
    a.reason.kind === 'missing-amount' &&
    b.reason.kind === 'missing-amount' &&
    a.reason.quantity === b.reason.quantity &&
    a.waiting !== null &&
    b.waiting !== null
  );
}

/** `A 20 B 20`: two products of as much, whose unit nobody told. */
function isSameNumberOfDoses(a: DoubtStatement, b: DoubtStatement): boolean {
  return (
    a.reason.kind === 'which-unit' &&
    b.reason.kind === 'which-unit' &&
    a.reason.quantity === 'dose' &&
    a.reason.quantity === b.reason.quantity &&
    a.reason.value === b.reason.value &&
    a.choices.length === b.choices.length
  );
}

function joined(a: DoubtStatement, b: DoubtStatement): DoubtStatement {
  const drafts = [...(a.waiting?.drafts ?? []), ...(b.waiting?.drafts ?? [])];
  if (a.reason.kind === 'which-unit') {
    const choices = a.choices.map(({ label, drafts: own }, n) => ({
      label,
      drafts: [...own, ...(b.choices[n]?.drafts ?? [])],
    }));
    const waiting = a.waiting && { ...a.waiting, drafts };
    return { ...a, choices, waiting, span: { from: a.span.from, to: b.span.to } };
  }
  if (a.reason.kind !== 'missing-amount')
    return { ...a, span: { from: a.span.from, to: b.span.to } };
  return {
    ...a,
    reason: { kind: 'missing-amount', quantity: a.reason.quantity },
    waiting: { for: 'value', drafts },
    span: { from: a.span.from, to: b.span.to },
  };
}
