import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { unitSaid } from '../numbers/unit-said.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtReason, DoubtStatement, Span, Waiting } from '../statement.ts';
import { draftOf, isApproximate } from './draft-of.ts';
import type { Settled } from './settled.ts';
import { type Valued, valueOf } from './value-of.ts';

export function spanOf(frame: Frame, { from, to }: Fact): Span {
  return { from: frame.terms[from]!.from, to: frame.terms[to]!.to };
}

export function draftFrom(
  frame: Frame,
  one: Settled,
  system: System | null,
  value: Valued & { kind: 'value' },
): EntryDraft {
  const approximate = isApproximate(one.fact) || one.mark?.vague === true;
  const draft = draftOf(one.fact, system, value.value, one.atMs, approximate);
  const { amount, quantity } = one.fact;
  const { units } = frame.context.greenhouse;
  const saidIn =
    amount.kind === 'measure' ? unitSaid(quantity, amount.measure, units) : one.fact.saidIn;
  return {
    ...draft,
    ...(value.saidAs ? { saidAs: value.saidAs } : {}),
    ...(saidIn ? { saidIn } : {}),
  };
}

/** The draft for one system if nothing about it is in doubt. */
export function soundDraft(frame: Frame, one: Settled, system: System | null): EntryDraft | null {
  const value = valueOf(one.fact, system, frame.context.greenhouse.units);
  return value.kind === 'value' ? draftFrom(frame, one, system, value) : null;
}

export function doubt(
  frame: Frame,
  one: Settled,
  reason: DoubtReason,
  choices: readonly Choice[],
  waiting: Waiting | null = null,
): DoubtStatement {
  return {
    kind: 'doubt',
    reason,
    choices,
    waiting,
    span: spanOf(frame, one.fact),
    because: [one.fact.because],
  };
}

export function doubtOf(
  frame: Frame,
  one: Settled,
  value: Valued,
  targets: readonly (System | null)[],
): DoubtStatement {
  if (value.kind !== 'asked') throw new Error('a value that is known needs no asking');
  const { fact } = one;
  const drafts = targets.map((system) =>
    draftOf(fact, system, 0, one.atMs, isApproximate(fact) || one.mark?.vague === true),
  );
  const choices = value.options.map(
    (option): Choice => ({
      label: { kind: 'value', quantity: fact.quantity, value: option },
      drafts: drafts.map((draft) => ({ ...draft, value: option })),
    }),
  );
  const wait: Waiting | null = { for: 'value', drafts };
  return doubt(frame, one, value.reason, [...choices, ...withoutFigures(one)], wait);
}

/** Whoever calibrated and kept no figures has still calibrated. */
function withoutFigures({ fact, atMs }: Settled): readonly Choice[] {
  const { quantity, amount, probe } = fact;
  if (quantity !== 'calibration' || amount.kind !== 'missing' || probe === undefined) return [];
  const done: EntryDraft = {
    system: null,
    quantity: 'duty-done',
    value: 1,
    atMs,
    duty: 'calibration',
    probe,
  };
  return [{ label: { kind: 'done-without-figures' }, drafts: [done] }];
}
