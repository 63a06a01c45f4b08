import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { isVolume } from '../numbers/quantity-of-measure.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtStatement } from '../statement.ts';
import { doubt, soundDraft } from './doubt-of.ts';
import type { Settled } from './settled.ts';

/** An amount that cannot be everywhere at once. */
export function isShared({ quantity, amount, each }: Fact): boolean {
  if (each) return false;
  if (
    quantity === 'top-up' ||
    quantity === 'dose' ||
    quantity === 'harvest' ||
    quantity === 'reservoir-change'
  )
    return amount.kind === 'measure';
  return quantity === 'level' && amount.kind === 'measure' && isVolume(amount.measure);
}

/** `2 l each` of one system: its parts are meant, and how many they are nobody said. */
export function isOfParts({ quantity, amount, each, eachOf }: Fact): boolean {
  if (!each || eachOf || amount.kind !== 'measure') return false;
  return quantity === 'top-up' || quantity === 'harvest' || quantity === 'dose';
}

/** `topped up the buckets with 2 l each`: all of it is asked for; what was said may be that. */
export function amountOfParts(frame: Frame, one: Settled, system: System): DoubtStatement {
  const draft = soundDraft(frame, one, system);
  const inAll: Choice[] = draft ? [{ label: { kind: 'in-all' }, drafts: [draft] }] : [];
  return doubt(
    frame,
    one,
    { kind: 'shared-amount', quantity: one.fact.quantity, amount: amountText(one.fact) },
    inAll,
    draft ? { for: 'value', drafts: [draft] } : null,
  );
}

function amountText(fact: Fact): string {
  return fact.amount.kind === 'measure' ? fact.amount.measure.written : '';
}

export function sharedAmount(
  frame: Frame,
  one: Settled,
  systems: readonly System[],
): DoubtStatement {
  const drafts = systems
    .map((system) => soundDraft(frame, one, system))
    .filter((draft) => draft !== null);
  const each: Choice[] =
    drafts.length === systems.length ? [{ label: { kind: 'each' }, drafts }] : [];
  const single = drafts.map(
    (draft): Choice => ({ label: { kind: 'system', system: draft.system! }, drafts: [draft] }),
  );
  return doubt(
    frame,
    one,
    { kind: 'shared-amount', quantity: one.fact.quantity, amount: amountText(one.fact) },
    [...each, ...single],
  );
}

export function sharedProducts(frame: Frame, one: Settled): DoubtStatement {
  const [system] = one.systems ?? [];
  const of = system ? (one.fact.shared ?? []) : [];
  const drafts = of
    .map((product) => soundDraft(frame, { ...one, fact: { ...one.fact, product } }, system ?? null))
    .filter((draft) => draft !== null);
  const whole = drafts.length === of.length && drafts.length > 0;
  const half = drafts.map((draft) => ({ ...draft, value: draft.value / of.length }));
  const choices: Choice[] = whole
    ? [
        { label: { kind: 'each' }, drafts },
        { label: { kind: 'in-all' }, drafts: half },
      ]
    : [];
  return doubt(
    frame,
    one,
    { kind: 'shared-amount', quantity: 'dose', amount: amountText(one.fact) },
    choices,
  );
}
