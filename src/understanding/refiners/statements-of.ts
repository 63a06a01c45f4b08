import type { EntryDraft } from '../../greenhouse/entry.ts';
import { isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { isVolume, litresFactor } from '../numbers/quantity-of-measure.ts';
import type { Frame } from '../reading/frame.ts';
import type {
  Assumption,
  Choice,
  DoubtReason,
  DoubtStatement,
  EntryStatement,
  PassedOverStatement,
  Span,
  Statement,
  Waiting,
} from '../statement.ts';
import { draftOf, isApproximate } from './draft-of.ts';
import type { Settled } from './settled.ts';
import { type Valued, valueOf } from './value-of.ts';

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
      const found = settledStatements(frame, one);
      if (one.fact.phase !== undefined)
        for (const statement of found)
          if (statement.kind === 'entry') phases.set(statement.draft, one.fact.phase);
      statements.push(...found);
    }
  }
  statements.push(...whichSystem(frame, unnamed), ...isItAReading(frame, queried));
  return statements.sort((a, b) => a.span.from - b.span.from);
}

function spanOf(frame: Frame, { from, to }: Fact): Span {
  return { from: frame.terms[from]!.from, to: frame.terms[to]!.to };
}

function passedOver(frame: Frame, { fact, mood }: Settled): PassedOverStatement {
  return {
    kind: 'passed-over',
    why: mood as PassedOverStatement['why'],
    span: spanOf(frame, fact),
  };
}

function settledStatements(frame: Frame, one: Settled): Statement[] {
  const { fact, systems } = one;
  if (fact.doubt) return [ownDoubt(frame, one, fact.doubt)];
  if (systems && systems.length > 1 && isShared(fact)) return [sharedAmount(frame, one, systems)];
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
      : valued(frame, one, system),
  );
}

function valued(frame: Frame, one: Settled, system: System | null): Statement[] {
  const { fact } = one;
  const value = valueOf(fact, system, frame.context.greenhouse.units);
  if (value.kind === 'asked') return [doubtOf(frame, one, value, [system])];
  if (isBound(fact))
    return [isItAReadingOf(frame, [{ ...one, systems: system ? [system] : null }])];
  const entry = entryOf(frame, one, system, value);
  const { mark } = one;
  if (one.atMs < frame.context.existsSinceMs || one.atMs > frame.context.writtenAtMs)
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
  const draft = draftFrom(one, system, value);
  const assumptions: Assumption[] = [
    ...one.assumptions,
    ...value.assumptions,
    ...(fact.shorthand ? [{ kind: 'shorthand' as const }] : []),
  ];
  return { kind: 'entry', draft, span: spanOf(frame, fact), because: [fact.because], assumptions };
}

function draftFrom(
  one: Settled,
  system: System | null,
  value: Valued & { kind: 'value' },
): EntryDraft {
  const approximate = isApproximate(one.fact) || one.mark?.vague === true;
  const draft = draftOf(one.fact, system, value.value, one.atMs, approximate);
  return value.saidAs ? { ...draft, saidAs: value.saidAs } : draft;
}

/** The draft for one system if nothing about it is in doubt. */
function soundDraft(frame: Frame, one: Settled, system: System | null): EntryDraft | null {
  const value = valueOf(one.fact, system, frame.context.greenhouse.units);
  return value.kind === 'value' ? draftFrom(one, system, value) : null;
}

function doubt(
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

function doubtOf(
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
  return doubt(frame, one, value.reason, choices, wait);
}

/** Doubts that a recogniser had: what a number is of, whether it was there or added. */
function ownDoubt(frame: Frame, one: Settled, reason: DoubtReason): DoubtStatement {
  const { fact, systems } = one;
  const [system] = systems ?? [];
  if (reason.kind === 'in-it-or-added' && fact.amount.kind === 'measure') {
    const { measure } = fact.amount;
    const litres = measure.values[0]! * (litresFactor(measure) ?? 1);
    const asLevel = { ...one, fact: { ...fact, quantity: 'level' as const } };
    const choices =
      (systems ?? []).length === 1
        ? [asChoice(frame, asLevel, system!), asChoice(frame, one, system!)].filter(
            (choice) => choice !== null,
          )
        : [];
    const pool = frame.context.greenhouse.systems.flatMap((each) =>
      [asChoice(frame, asLevel, each), asChoice(frame, one, each)].flatMap(
        (choice) => choice?.drafts ?? [],
      ),
    );
    const drafts = choices.length > 0 ? choices.flatMap((choice) => choice.drafts) : pool;
    return doubt(frame, one, { ...reason, litres }, choices, { for: 'quantity', drafts });
  }
  if (reason.kind === 'which-quantity' && system && fact.amount.kind === 'measure') {
    const guesses = guessesFor(fact);
    const plain = withoutProduct(fact);
    const asReading = guesses.map((quantity) =>
      asChoice(frame, { ...one, fact: { ...plain, quantity } }, system),
    );
    const asDose = fact.product === undefined ? null : asChoice(frame, inMl(one), system);
    const choices = [...asReading, asDose].filter((choice) => choice !== null);
    return doubt(frame, one, reason, choices, {
      for: 'quantity',
      drafts: choices.flatMap(({ drafts }) => drafts),
    });
  }
  return doubt(frame, one, reason, []);
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

function asChoice(frame: Frame, one: Settled, system: System): Choice | null {
  const draft = soundDraft(frame, one, system);
  return draft && { label: { kind: 'quantity', quantity: one.fact.quantity }, drafts: [draft] };
}

/** An amount that cannot be everywhere at once. */
function isShared({ quantity, amount, each }: Fact): boolean {
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

function amountText(fact: Fact): string {
  return fact.amount.kind === 'measure' ? fact.amount.measure.written : '';
}

function sharedAmount(frame: Frame, one: Settled, systems: readonly System[]): DoubtStatement {
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

function sharedProducts(frame: Frame, one: Settled): DoubtStatement {
  const [system] = one.systems ?? [];
  const of = one.fact.shared ?? [];
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

function whichTime(frame: Frame, one: Settled, system: System | null): DoubtStatement {
  const draft = soundDraft(frame, one, system);
  const { existsSinceMs, writtenAtMs } = frame.context;
  const options = [...(one.mark?.askFrom ?? []), writtenAtMs].filter(
    (atMs, n, all) => atMs >= existsSinceMs && atMs <= writtenAtMs && all.indexOf(atMs) === n,
  );
  const choices = draft
    ? options.map(
        (atMs): Choice => ({ label: { kind: 'time', atMs }, drafts: [{ ...draft, atMs }] }),
      )
    : [];
  const written = one.mark?.written ?? '';
  return doubt(
    frame,
    one,
    { kind: 'which-time', written },
    choices,
    draft ? { for: 'time', drafts: [draft] } : null,
  );
}

function sinceWhen(frame: Frame, one: Settled, now: EntryDraft): DoubtStatement {
  const { mark } = one;
  const options = (mark?.askFrom ?? []).filter(
    (atMs) => atMs >= frame.context.existsSinceMs && atMs < frame.context.writtenAtMs,
  );
  const choices = options.map(
    (atMs): Choice => ({ label: { kind: 'time', atMs }, drafts: [{ ...now, atMs }] }),
  );
  return doubt(
    frame,
    one,
    { kind: 'since-when', of: now.of ?? 'power', written: mark?.written ?? '' },
    choices,
    { for: 'time', drafts: [now] },
  );
}

/** All that lacks a system, asked about at once: a button for each system that could be meant. */
function whichSystem(frame: Frame, unnamed: readonly Settled[]): DoubtStatement[] {
  const groups = new Map<string, Settled[]>();
  for (const one of unnamed) {
    const key = `${one.askSystem?.written ?? ''}|${one.askSystem?.offer.map(({ id }) => id).join() ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].map((group) => {
    const [first] = group;
    const { offer, written } = first!.askSystem!;
    const offered = offer.length > 0 ? offer : frame.context.greenhouse.systems;
    const inDoubt = group.find(({ fact }) => fact.doubt);
    if (inDoubt && group.length === 1 && inDoubt.fact.doubt)
      return ownDoubt(frame, { ...inDoubt, systems: [] }, inDoubt.fact.doubt);
    const quantities = new Set(group.map(({ fact }) => fact.quantity));
    const quantity = quantities.size === 1 ? first!.fact.quantity : null;
    const choices = offered.flatMap((system): Choice[] => {
      const drafts = group.map((one) => soundDraft(frame, one, system));
      return drafts.every((draft) => draft !== null)
        ? [{ label: { kind: 'system', system: system.id }, drafts }]
        : [];
    });
    const waiting = choices[0]
      ? {
          for: 'system' as const,
          drafts: choices[0].drafts.map((draft) => ({ ...draft, system: null })),
        }
      : null;
    const reason: DoubtReason = {
      kind: 'which-system',
      quantity,
      ...(written === null ? {} : { written }),
    };
    const asked = doubt(frame, first!, reason, choices, waiting);
    if (choices.length > 0 || first!.fact.amount.kind === 'brim') return asked;
    // No system could hold it: the amount itself is the doubt.
    const value = valueOf(first!.fact, offered[0] ?? null, frame.context.greenhouse.units);
    return value.kind === 'asked'
      ? { ...doubtOf(frame, first!, value, [null]), waiting: null, choices: [] }
      : asked;
  });
}

function isItAReading(frame: Frame, queried: readonly Settled[]): DoubtStatement[] {
  return queried.length === 0 ? [] : [isItAReadingOf(frame, queried)];
}

function isItAReadingOf(frame: Frame, queried: readonly Settled[]): DoubtStatement {
  const drafts = queried.flatMap((one): EntryDraft[] => {
    if (one.askSystem || one.fact.doubt || one.fact.shared || one.fact.amount.kind === 'missing')
      return [];
    const targets: (System | null)[] = one.systems === null ? [null] : [...one.systems];
    if (one.systems && one.systems.length > 1 && isShared(one.fact)) return [];
    return targets
      .map((system) => soundDraft(frame, one, system))
      .filter((draft) => draft !== null);
  });
  const choices: Choice[] =
    drafts.length > 0
      ? [
          { label: { kind: 'yes' }, drafts },
          { label: { kind: 'no' }, drafts: [] },
        ]
      : [];
  return doubt(frame, queried[0]!, { kind: 'is-it-a-reading' }, choices);
}

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
    const values = [...new Set(group.map(({ draft }) => draft.value))];
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
  return bySpan.some((statement) => rank(statement) === 0)
    ? bySpan.sort((a, b) => rank(a) - rank(b))
    : bySpan;
}

function withoutProduct(fact: Fact): Fact {
  const plain = { ...fact };
  delete plain.product;
  return plain;
}
