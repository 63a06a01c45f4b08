import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Doubt } from '../doubt.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { unitSaid } from '../numbers/unit-said.ts';
import type { Frame } from '../reading/frame.ts';
import { valueOf } from '../refiners/value-of.ts';
import type { AnsweredStatement, Choice, DoubtStatement, Statement } from '../statement.ts';

export type Answered = (drafts: readonly EntryDraft[]) => AnsweredStatement;

export function fillValue(
  frame: Frame,
  doubt: Doubt,
  waiting: readonly EntryDraft[],
  measure: Measure,
  each: boolean,
  answered: Answered,
): Statement {
  const { greenhouse } = frame.context;
  const drafts: EntryDraft[] = [];
  const shared = !each && waiting.length > 1 && cannotBeEverywhere(waiting[0]!.quantity);
  for (const draft of waiting) {
    const system = greenhouse.systems.find(({ id }) => id === draft.system) ?? null;
    const valued = valueOf(asFact(draft, measure), system, greenhouse.units);
    if (valued.kind === 'asked')
      return askAgain(frame, doubt, draft, valued.reason, valued.options);
    const saidIn = unitSaid(draft.quantity, measure, greenhouse.units);
    drafts.push({
      ...draft,
      value: valued.value,
      ...(saidIn ? { saidIn } : {}),
      ...(valued.saidAs ? { saidAs: valued.saidAs } : {}),
      ...(measure.approximate ? { approximate: true } : {}),
    });
  }
  return shared ? askWhetherEach(frame, doubt, drafts, measure.written) : answered(drafts);
}

function cannotBeEverywhere(quantity: Quantity): boolean {
  return (
    quantity === 'top-up' ||
    quantity === 'dose' ||
    quantity === 'reservoir-change' ||
    quantity === 'harvest'
  );
}

/** One amount for several: in each, or in all. */
function askWhetherEach(
  frame: Frame,
  doubt: Doubt,
  drafts: readonly EntryDraft[],
  amount: string,
): DoubtStatement {
  const { quantity } = drafts[0]!;
  const part = drafts.map((draft) => ({ ...draft, value: draft.value / drafts.length }));
  return {
    kind: 'doubt',
    reason: { kind: 'shared-amount', quantity, amount },
    choices: [
      { label: { kind: 'each' }, drafts },
      ...(quantity === 'dose' ? [{ label: { kind: 'in-all' } as const, drafts: part }] : []),
    ],
    waiting: doubt.waiting,
    span: { from: 0, to: frame.folded.text.length },
    because: ['one amount for several'],
  };
}

/** A bare number answers in the unit that the question is about. */
function asFact(draft: EntryDraft, measure: Measure): Fact {
  const { quantity } = draft;
  const unit =
    isBare(measure) && quantity === 'dose'
      ? { id: 'ml' as const, shy: false }
      : isBare(measure) && quantity === 'fill-time'
        ? { id: 'minute' as const, shy: false }
        : isBare(measure) && quantity === 'aeration'
          ? { id: 'minute-an-hour' as const, shy: false }
          : measure.unit;
  const bareVolume =
    isBare(measure) &&
    (quantity === 'top-up' || quantity === 'reservoir-change' || quantity === 'level');
  const asVolume = bareVolume && quantity === 'level' ? { id: 'l' as const, shy: false } : unit;
  return {
    quantity,
    amount: { kind: 'measure', measure: { ...measure, unit: asVolume } },
    at: 0,
    from: 0,
    to: 0,
    ...(bareVolume && quantity !== 'level' ? { bareVolume } : {}),
    because: 'answer',
  };
}

export function askAgain(
  frame: Frame,
  doubt: Doubt,
  draft: EntryDraft,
  reason: DoubtStatement['reason'],
  options: readonly number[],
): DoubtStatement {
  return {
    kind: 'doubt',
    reason,
    choices: options.map(
      (value): Choice => ({
        label: { kind: 'value', quantity: draft.quantity, value },
        drafts: [{ ...draft, value }],
      }),
    ),
    waiting: doubt.waiting,
    span: { from: 0, to: frame.folded.text.length },
    because: ['answer that needs asking about'],
  };
}
