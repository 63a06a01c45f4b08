import { isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { isVolume } from '../numbers/quantity-of-measure.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtReason, DoubtStatement, Waiting } from '../statement.ts';
import { doubt, soundDraft } from './doubt-of.ts';
import { draftOf, isApproximate } from './draft-of.ts';
import { inItOrAdded } from './in-it-or-added.ts';
import type { Settled } from './settled.ts';

/** Doubts that a recogniser had: what a number is of, whether it was there or added. */
export function ownDoubt(frame: Frame, settled: Settled, reason: DoubtReason): DoubtStatement {
  const one = { ...settled, fact: betweenValues(settled.fact) };
  const { fact, systems } = one;
  const [system] = systems ?? [];
  if (reason.kind === 'in-it-or-added' && fact.amount.kind === 'measure') {
    return inItOrAdded(frame, one, fact.amount.measure);
  }
  if (reason.kind === 'which-quantity' && system && fact.amount.kind === 'measure') {
    const guesses = guessesFor(fact);
    const plain = withoutProduct(fact);
    const asReading = guesses.map((quantity) =>
      asChoice(frame, { ...one, fact: { ...plain, quantity } }, system, systems ?? []),
    );
    const asDose = fact.product === undefined ? null : asChoice(frame, inMl(one), system);
    const choices = [...asReading, asDose].filter((choice) => choice !== null);
    return doubt(frame, one, reason, choices, {
      for: 'quantity',
      drafts: choices.flatMap(({ drafts }) => drafts),
    });
  }
  if (reason.kind === 'which-product') return whichProduct(frame, one, reason);
  if (reason.kind === 'trouble' || reason.kind === 'unclear') {
    const note = soundDraft(frame, one, systems?.length === 1 ? system! : null);
    const drafts = note ? [note] : [];
    return doubt(frame, one, reason, [{ label: { kind: 'keep-as-note' }, drafts }]);
  }
  if (reason.kind === 'switched-or-failed') return switchedOrFailed(frame, one, reason);
  if (reason.kind === 'how-long-out') return howLongOut(frame, one, reason);
  return doubt(frame, one, reason, [], reason.kind === 'which-unit' ? amountAwaited(one) : null);
}

/** `10 l in the bench, maybe 12`, where more is in doubt than which of the two: the middle. */
function betweenValues(fact: Fact): Fact {
  const { amount } = fact;
  if (amount.kind !== 'measure' || !amount.measure.disputedBy) return fact;
  const { disputedBy, ...first } = amount.measure;
  const middle = (first.values[0]! + disputedBy.values[0]!) / 2;
  const isOfOneUnit = JSON.stringify(first.unit) === JSON.stringify(disputedBy.unit);
  const measure = isOfOneUnit ? { ...first, values: [middle], approximate: true } : first;
  return { ...fact, amount: { kind: 'measure', measure } };
}

/** A button for each product in stock of which it could be so much; and for water, unless a product it was. */
function whichProduct(frame: Frame, one: Settled, reason: DoubtReason): DoubtStatement {
  const systems = one.systems ?? [];
  // `10 ml in both`: in each or in all, nobody has said.
  const isClear = systems.length === 1 || (systems.length > 1 && one.fact.each === true);
  const dosed = { ...one.fact, quantity: 'dose' } as const;
  const water =
    isClear && one.fact.quantity === 'top-up' ? asChoice(frame, one, systems[0]!, systems) : null;
  const stock = isClear ? frame.context.greenhouse.stock : [];
  const choices = stock.flatMap(({ product }): Choice[] => {
    const drafts = systems.flatMap(
      (system) => soundDraft(frame, { ...one, fact: { ...dosed, product } }, system) ?? [],
    );
    const isSound = drafts.length === systems.length;
    return isSound ? [{ label: { kind: 'product', product }, drafts }] : [];
  });
  const label = { kind: 'quantity', quantity: 'top-up', asWater: true } as const;
  const all = water ? [...choices, { ...water, label }] : choices;
  return doubt(frame, one, reason, all, awaitedDose(frame, one));
}

/** The millilitres of which neither the product nor the system was told. */
function awaitedDose(frame: Frame, one: Settled): Waiting | null {
  if (one.systems?.length !== 0) return null;
  const draft = soundDraft(frame, { ...one, fact: { ...one.fact, quantity: 'dose' } }, null);
  return draft && { for: 'system', drafts: [draft] };
}

/** Out as of now, or a note of how it is set. */
function switchedOrFailed(frame: Frame, one: Settled, reason: DoubtReason): DoubtStatement {
  const [system] = one.systems?.length === 1 ? one.systems : [];
  const now = { ...one, atMs: frame.context.writtenAtMs, mark: null };
  const out = system && soundDraft(frame, { ...now, fact: outageOf(one.fact) }, system);
  const { of: _of, ...setting } = one.fact;
  const note = soundDraft(frame, { ...now, fact: setting }, system ?? null);
  const choices: Choice[] = [
    ...(note ? [{ label: { kind: 'keep-as-note' } as const, drafts: [note] }] : []),
    ...(out ? [{ label: { kind: 'still-out' } as const, drafts: [out] }] : []),
  ];
  return doubt(frame, now, reason, choices);
}

function outageOf(fact: Fact): Fact {
  const { note: _note, ...out } = fact;
  return { ...out, quantity: 'outage' };
}

/** As it stands it would be out until now. */
function howLongOut(frame: Frame, one: Settled, reason: DoubtReason): DoubtStatement {
  const targets = one.systems && one.systems.length > 0 ? one.systems : [null];
  const drafts = targets.flatMap((system) => soundDraft(frame, one, system) ?? []);
  const choices: Choice[] = drafts.length > 0 ? [{ label: { kind: 'still-out' }, drafts }] : [];
  return doubt(frame, one, reason, choices, { for: 'time', drafts });
}

/** `3 buckets into the bench`: the litres that somebody may say. */
function amountAwaited(one: Settled): Waiting | null {
  const { fact, systems, atMs, mark } = one;
  if (!systems || systems.length === 0) return null;
  const isVague = isApproximate(fact) || mark?.vague === true;
  return {
    for: 'value',
    drafts: systems.map((system) => draftOf(fact, system, 0, atMs, isVague)),
  };
}

function guessesFor({ amount, product }: Fact): readonly Quantity[] {
  if (amount.kind === 'measure' && isVolume(amount.measure)) return ['top-up'];
  return product === undefined ? ['ph', 'ec', 'water-temperature'] : ['ph'];
}

/** A bare number beside a product, read as millilitres of it. */
function inMl(one: Settled): Settled {
  const { fact } = one;
  if (fact.amount.kind !== 'measure') return one;
  const measure = { ...fact.amount.measure, unit: { id: 'ml' as const, shy: false } };
  return { ...one, fact: { ...fact, quantity: 'dose', amount: { kind: 'measure', measure } } };
}

/** `all`: a reading is of each of them. */
function asChoice(
  frame: Frame,
  one: Settled,
  system: System,
  all: readonly System[] = [],
): Choice | null {
  const { quantity } = one.fact;
  const systems = isReading(quantity) && all.length > 1 ? all : [system];
  const drafts = systems.flatMap((each) => soundDraft(frame, one, each) ?? []);
  return drafts.length < systems.length ? null : { label: { kind: 'quantity', quantity }, drafts };
}

function withoutProduct(fact: Fact): Fact {
  const plain = { ...fact };
  delete plain.product;
  return plain;
}
