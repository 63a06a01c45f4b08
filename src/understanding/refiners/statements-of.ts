import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import type { Frame } from '../reading/frame.ts';
import type {
  Assumption,
  Choice,
  DoubtStatement,
  EntryStatement,
  PassedOverStatement,
  Statement,
} from '../statement.ts';
import { isBackBeforeOut } from '../times/back-before.ts';
import { doubt, doubtOf, draftFrom, soundDraft, spanOf } from './doubt-of.ts';
import { isItAReading, isItAReadingOf } from './is-it-a-reading.ts';
import { ownDoubt } from './own-doubt.ts';
import type { Settled } from './settled.ts';
import {
  amountOfParts,
  isOfParts,
  isShared,
  sharedAmount,
  sharedProducts,
} from './shared-amount.ts';
import { type Valued, valueOf } from './value-of.ts';
import { whichSystem } from './which-system.ts';
import { sinceWhen, whichTime } from './which-time.ts';

/** What each settled fact comes to: an entry, a doubt, or nothing. In the order in which they were said. */
export function statementsOf(
  frame: Frame,
  settled: readonly Settled[],
  phases: Map<EntryDraft, Fact['phase']>,
): Statement[] {
  const statements: Statement[] = [];
  const unnamed: Settled[] = [];
  const queried: Settled[] = [];
  for (const one of settled) {
    if (one.mood === 'queried' || one.mood === 'others') queried.push(one);
    else if (one.mood === 'question') continue;
    else if (one.mood !== null) statements.push(passedOver(frame, one));
    else if (one.askSystem) unnamed.push(one);
    else {
      const found = settledStatements(frame, one, tellsOutage(settled, one));
      if (one.fact.phase !== undefined)
        for (const statement of found)
          if (statement.kind === 'entry') phases.set(statement.draft, one.fact.phase);
      statements.push(...found);
    }
  }
  statements.push(...whichSystem(frame, unnamed), ...isItAReading(frame, queried));
  return statements.sort((a, b) => a.span.from - b.span.from);
}

/** The message tells when what came back had failed. */
function tellsOutage(settled: readonly Settled[], { fact }: Settled): boolean {
  return (
    fact.quantity === 'restored' &&
    settled.some((other) => other.fact.quantity === 'outage' && other.fact.of === fact.of)
  );
}

function passedOver(frame: Frame, { fact, mood }: Settled): PassedOverStatement {
  return {
    kind: 'passed-over',
    why: mood as PassedOverStatement['why'],
    span: spanOf(frame, fact),
  };
}

function settledStatements(frame: Frame, one: Settled, endsOutageTold: boolean): Statement[] {
  const { fact, systems } = one;
  if (fact.doubt) return [ownDoubt(frame, one, fact.doubt)];
  if (systems && systems.length > 1 && isShared(fact)) return [sharedAmount(frame, one, systems)];
  if (systems?.length === 1 && isOfParts(fact)) return [amountOfParts(frame, one, systems[0]!)];
  if (fact.shared) return [sharedProducts(frame, one)];
  const targets: (System | null)[] = systems === null ? [null] : [...systems];
  if (fact.amount.kind === 'missing')
    return [
      doubtOf(
        frame,
        one,
        valueOf(fact, targets[0] ?? null, frame.context.greenhouse.units),
        targets,
      ),
    ];
  return targets.flatMap((system) =>
    one.mark?.askFrom && fact.quantity !== 'outage'
      ? [whichTime(frame, one, system)]
      : valued(frame, one, system, endsOutageTold),
  );
}

function valued(
  frame: Frame,
  one: Settled,
  system: System | null,
  /** Both ends of it are told at once: of another outage than the one that goes on. */
  endsOutageTold: boolean,
): Statement[] {
  const { fact } = one;
  const value = valueOf(fact, system, frame.context.greenhouse.units);
  if (value.kind === 'asked') return [doubtOf(frame, one, value, [system])];
  if (fact.amount.kind === 'measure' && fact.amount.measure.disputedBy)
    return [disputed(frame, one, system, fact.amount.measure)];
  if (isBound(fact))
    return [isItAReadingOf(frame, [{ ...one, systems: system ? [system] : null }])];
  const entry = entryOf(frame, one, system, value);
  const { mark } = one;
  if (one.atMs < frame.context.existsSinceMs || one.atMs > frame.context.writtenAtMs)
    return [whichTime(frame, one, system)];
  if (!endsOutageTold && isBackBeforeOut(frame.context, entry.draft))
    return [whichTime(frame, one, system)];
  if (mark?.askFrom && fact.quantity === 'outage') {
    const now = { ...entry, draft: { ...entry.draft, atMs: frame.context.writtenAtMs } };
    return [now, sinceWhen(frame, one, now.draft)];
  }
  return fact.toMark && system ? [entry, litresToBrim(frame, one, system)] : [entry];
}

/** Filled up to a mark, and nobody said with how much. */
function litresToBrim(frame: Frame, one: Settled, system: System): DoubtStatement {
  const draft: EntryDraft = { system: system.id, quantity: 'top-up', value: 0, atMs: one.atMs };
  return doubt(frame, one, { kind: 'litres-to-brim' }, [], { for: 'value', drafts: [draft] });
}

/** `2 cans (25 l)`: which of the two it was. */
function disputed(
  frame: Frame,
  one: Settled,
  system: System | null,
  measure: Measure,
): DoubtStatement {
  const { quantity } = one.fact;
  const said = [{ ...measure, disputedBy: undefined }, measure.disputedBy!];
  const drafts = said.flatMap((each) => {
    const fact: Fact = { ...one.fact, amount: { kind: 'measure', measure: each } };
    return soundDraft(frame, { ...one, fact }, system) ?? [];
  });
  const choices = drafts.map((draft): Choice => {
    return { label: { kind: 'value', quantity, value: draft.value }, drafts: [draft] };
  });
  const values = drafts.map(({ value }) => value);
  const waiting = drafts[0] ? { for: 'value' as const, drafts: [drafts[0]] } : null;
  return doubt(frame, one, { kind: 'conflict', quantity, values }, choices, waiting);
}

function isBound({ amount }: Fact): boolean {
  return amount.kind === 'measure' && amount.measure.bound;
}

function entryOf(
  frame: Frame,
  one: Settled,
  system: System | null,
  value: Valued & { kind: 'value' },
): EntryStatement {
  const { fact } = one;
  const draft = draftFrom(frame, one, system, value);
  const assumptions: Assumption[] = [
    ...one.assumptions,
    ...value.assumptions,
    ...(fact.shorthand ? [{ kind: 'shorthand' as const }] : []),
  ];
  return { kind: 'entry', draft, span: spanOf(frame, fact), because: [fact.because], assumptions };
}
