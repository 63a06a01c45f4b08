import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  type Frame,
  inClause,
  isPadding,
  measureOf,
  measuresIn,
  namesIn,
  takeRange,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { Unit } from '../reading/word-list.ts';

/**
 * `and the gutters 8` in a message of its own, where `bench 12 l` was told or asked about just before: so much in the
 * unit of that amount, which may be in it now or may have been added.
 */
export function recogniseAndOfAnother(frame: Frame): Fact[] {
  const before = amountBefore(frame);
  const clause = before && onlyClause(frame);
  if (!clause) return [];
  const [at, ...others] = measuresIn(frame, clause);
  const [name, ...names] = namesIn(frame, clause);
  if (at === undefined || name === undefined || others.length > 0 || names.length > 0) return [];
  const measure = measureOf(frame, at);
  const isMore = isBare(measure) && measure.whole && !isOf(frame, name, before.system);
  if (!isMore || !saysNothingElse(frame, clause)) return [];
  takeRange(frame, clause.from, clause.to);
  const perUnit = before.saidIn?.perUnit ?? 1;
  const litres = measure.values.map((value) => value * perUnit);
  return [
    {
      quantity: 'top-up',
      amount: { kind: 'measure', measure: { ...measure, values: litres, unit: litre } },
      at,
      from: at,
      to: at,
      doubt: { kind: 'in-it-or-added', litres: litres[0]! },
      because: 'as much of another system as was told of the one before',
    },
  ];
}

const litre: Unit = { id: 'l', shy: false };

/** The one amount of water that was told just before, or that the bot has just asked about. */
function amountBefore({ context }: Frame): EntryDraft | null {
  const [asked] = context.openQuestions;
  if (asked) {
    const { reason, choices } = asked.doubt;
    const [draft] = choices.flatMap(({ drafts }) => drafts);
    return reason.kind === 'in-it-or-added' ? (draft ?? null) : null;
  }
  const [last, ...others] = context.justLogged ?? [];
  const isWater = last?.quantity === 'top-up' || last?.quantity === 'level';
  return last && isWater && others.length === 0 && last.saidAs === undefined ? last : null;
}

/** The one clause, which an `and` or a comma opens. */
function onlyClause({ clauses }: Frame): Clause | null {
  const [clause, ...others] = clauses.filter(({ from, to }) => from < to);
  const isJoined = clause?.opens === 'and' || clause?.opens === 'comma';
  return clause && isJoined && others.length === 0 && clause.closes !== 'question' ? clause : null;
}

function isOf({ terms }: Frame, name: number, system: SystemId | null): boolean {
  const term = terms[name];
  return term?.kind === 'name' && system !== null && term.systems.includes(system);
}

function saysNothingElse(frame: Frame, clause: Clause): boolean {
  const others = inClause(
    frame,
    clause,
    (term) =>
      term.kind !== 'name' &&
      term.kind !== 'measure' &&
      !isPadding(term) &&
      !means(term, 'alike', 'place', 'then', 'another'),
  );
  return others.length === 0;
}
