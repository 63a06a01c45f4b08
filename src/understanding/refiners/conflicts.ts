import type { EntryDraft } from '../../greenhouse/entry.ts';
import { isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { Choice, DoubtStatement, EntryStatement, Statement } from '../statement.ts';

/** Readings of one thing at one time that differ, with nothing to say that one came after the other. */
export function withoutConflicts(
  statements: readonly Statement[],
  phaseOf: (draft: EntryDraft) => 'before' | 'after' | undefined,
): Statement[] {
  const groups = new Map<string, EntryStatement[]>();
  for (const statement of statements) {
    if (
      statement.kind !== 'entry' ||
      !isReading(statement.draft.quantity) ||
      phaseOf(statement.draft) !== undefined
    )
      continue;
    const { system, quantity, atMs } = statement.draft;
    const key = `${system ?? ''}|${quantity}|${atMs}`;
    groups.set(key, [...(groups.get(key) ?? []), statement]);
  }
  const dropped = new Set<Statement>();
  const conflicts: DoubtStatement[] = [];
  for (const group of groups.values()) {
    if (group.length < 2) continue;
    const [first] = group;
    const values = differing(
      group.map(({ draft }) => draft.value),
      first!.draft.quantity,
    );
    if (values.length === 1) {
      for (const repeated of group.slice(1)) dropped.add(repeated);
      continue;
    }
    for (const statement of group) dropped.add(statement);
    const { quantity } = first!.draft;
    conflicts.push({
      kind: 'doubt',
      reason: { kind: 'conflict', quantity, values },
      choices: values.map(
        (value): Choice => ({
          label: { kind: 'value', quantity, value },
          drafts: [{ ...first!.draft, value }],
        }),
      ),
      waiting: { for: 'value', drafts: [first!.draft] },
      span: { from: first!.span.from, to: group.at(-1)!.span.to },
      because: ['two values for one thing'],
    });
  }
  return [...statements.filter((statement) => !dropped.has(statement)), ...conflicts].sort(
    (a, b) => a.span.from - b.span.from,
  );
}

/** A level in cm and again in litres may differ by what the rule cannot show: common practice, 2 %. */
const levelTolerance = 0.02;

/** Those of the values that are none of the others over again. */
export function differing(values: readonly number[], quantity: Quantity): number[] {
  const within = quantity === 'level' ? levelTolerance : 0;
  return values.filter(
    (value, n) =>
      !values.slice(0, n).some((other) => Math.abs(value - other) <= within * Math.abs(other)),
  );
}
