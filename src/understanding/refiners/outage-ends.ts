import { localDateOf } from '../../greenhouse/local-time.ts';
import type { Fact } from '../fact.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  measureOf,
  measuresIn,
  namesIn,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { spanMs } from '../times/ago.ts';
import { type Stretch, stretchOf } from '../times/stretch.ts';
import { type TimeMark, unsaidTime } from '../times/time-mark.ts';

/** `power was out from 2 to 4`, `power was out for 2 hours last night` tell the end of the outage as well. */
export function withEnds(
  frame: Frame,
  told: readonly Fact[],
  marks: readonly TimeMark[],
): readonly Fact[] {
  if (!told.some(isOfSupply)) return told;
  const facts = ofOnePower(frame, told, marks);
  const ended = new Set<Fact['of']>();
  const ending = facts.flatMap((fact) => {
    if (fact.quantity !== 'outage') return [fact];
    const clause = frame.clauseOf[fact.at];
    const inClause = marks.filter((mark) => mark.clause === clause);
    const end = inClause.find(({ until }) => until);
    const begun = inClause.find(({ until }) => !until);
    const stretch = end && begun && stretchOf(frame, begun, end);
    // `from 9 to 11`, written at 10: no end that could have come yet.
    if (stretch && !isPast(frame, stretch)) return [howLong(fact, [stretch.begun])];
    const over = stretch
      ? [
          { ...fact, time: { ...stretch.begun, since: false } },
          { ...fact, quantity: 'restored' as const, ends: true, time: stretch.end },
        ]
      : isEndTimed(frame, facts, fact, marks)
        ? null
        : lasted(frame, fact, inClause);
    if (over) {
      ended.add(fact.of);
      return over;
    }
    const back = begun ? null : endTimedBefore(frame, facts, fact, marks);
    if (back) return [{ ...fact, time: { ...back, vague: true } }];
    if (inClause.length === 0 && lastedThroughout(frame, fact)) {
      ended.add(fact.of);
      return [howLong(fact, [])];
    }
    const later = restoredLater(frame, facts, fact, marks);
    if (later && begun) {
      // `Sicherung letzte Nacht rausgeflogen, läuft wieder`: since when, nobody has said.
      ended.add(fact.of);
      if (!isOfToday(frame, begun)) return [howLong(fact, [begun])];
      const now = { ...begun, atMs: frame.context.writtenAtMs, since: false, vague: false };
      return [fact, { ...later, time: now }];
    }
    const isOpen = !facts.some((other) => other.quantity === 'restored' && other.of === fact.of);
    return [isOpen && wasOut(frame, fact, inClause) ? howLong(fact, inClause) : fact];
  });
  // `out from 3 to 5, all running again`: the end is known, and not now.
  const kept = ending.filter((fact) => !(ended.has(fact.of) && isToldAgain(facts, fact)));
  return kept.flatMap((fact) => withBeginning(frame, kept, fact, marks));
}

function isPast({ context }: Frame, { begun, end }: Stretch): boolean {
  return begun.atMs < end.atMs && end.atMs <= context.writtenAtMs;
}

function isOfSupply({ quantity }: Fact): boolean {
  return quantity === 'outage' || quantity === 'restored';
}

/** `power just came back, was off about an hour`: where nobody told that it was out, it went out so long before. */
function withBeginning(
  frame: Frame,
  facts: readonly Fact[],
  fact: Fact,
  marks: readonly TimeMark[],
): readonly Fact[] {
  const isOpen = (other: Fact): boolean => other.quantity === 'outage' && other.of === fact.of;
  if (fact.quantity !== 'restored' || frame.context.outage || facts.some(isOpen)) return [fact];
  const c = frame.clauseOf[fact.at]!;
  const { writtenAtMs, existsSinceMs } = frame.context;
  const own = marks.find((mark) => mark.clause === c && !mark.since && !mark.until);
  const overAtMs = own?.atMs ?? writtenAtMs;
  // `power back, bench pump was off for an hour` tells of two things.
  const isOwn = (each: number): boolean =>
    facts.every((other) => other === fact || frame.clauseOf[other.at] !== each);
  const begunAtMs = [c, c + 1]
    .filter(isOwn)
    .map((each) => begunAt(frame, each, overAtMs, marks))
    .find((atMs) => atMs !== null);
  if (begunAtMs == null || begunAtMs < existsSinceMs || begunAtMs >= overAtMs) return [fact];
  const base = own ?? { from: fact.at, to: fact.at, clause: c, ...unsaidTime };
  return [
    { ...fact, quantity: 'outage', time: { ...base, atMs: begunAtMs, vague: true } },
    { ...fact, time: { ...base, atMs: overAtMs } },
  ];
}

/** `was off about an hour`, `it was off since 5`: when what is over had begun; null: the clause does not say. */
function begunAt(
  frame: Frame,
  c: number,
  overAtMs: number,
  marks: readonly TimeMark[],
): number | null {
  const clause = frame.clauses[c];
  if (!clause || !clauseHas(frame, clause, 'was', 'after')) return null;
  const since = marks.find((mark) => mark.clause === c && mark.since);
  if (since && !isLength(frame, since)) return since.atMs;
  const length = since ? frame.context.writtenAtMs - since.atMs : lengthSaid(frame, clause);
  return length === null ? null : overAtMs - length;
}

function isLength(frame: Frame, { from }: TimeMark): boolean {
  return means(frame.terms[from], 'for-so-long');
}

/** `war seit 6 aus, läuft wieder seit 7`: the clause that tells its end tells when. */
function isEndTimed(
  frame: Frame,
  facts: readonly Fact[],
  outage: Fact,
  marks: readonly TimeMark[],
): boolean {
  return endsAfter(frame, facts, outage).some(({ at }) =>
    marks.some((mark) => mark.clause === frame.clauseOf[at]),
  );
}

/** What tells in a clause after the outage's own that it is over. */
function endsAfter(frame: Frame, facts: readonly Fact[], outage: Fact): readonly Fact[] {
  const clause = frame.clauseOf[outage.at]!;
  return facts.filter(
    ({ quantity, of, at }) =>
      quantity === 'restored' && of === outage.of && frame.clauseOf[at]! > clause,
  );
}

/** `pump was off, back on at 7`: where the end alone has a time, it had gone out by then; how long before is not known. */
function endTimedBefore(
  frame: Frame,
  facts: readonly Fact[],
  outage: Fact,
  marks: readonly TimeMark[],
): TimeMark | null {
  const [end] = endsAfter(frame, facts, outage);
  const mark = end && marks.find((each) => each.clause === frame.clauseOf[end.at]! && !each.since);
  return mark?.askFrom === null && mark.atMs < frame.context.writtenAtMs ? mark : null;
}

/** That it runs again, told in a clause after the outage's own, with no time and no `now`. */
function restoredLater(
  frame: Frame,
  facts: readonly Fact[],
  outage: Fact,
  marks: readonly TimeMark[],
): Fact | null {
  const [later] = endsAfter(frame, facts, outage);
  if (!later) return null;
  const c = frame.clauseOf[later.at]!;
  const isTimed =
    marks.some((mark) => mark.clause >= c) || clauseHas(frame, frame.clauses[c]!, 'now');
  return isTimed ? null : later;
}

function isOfToday({ context }: Frame, { atMs }: TimeMark): boolean {
  const { timeZone } = context.greenhouse;
  return localDateOf(atMs, timeZone) === localDateOf(context.writtenAtMs, timeZone);
}

/** As it stands in the message, beside an end that was worked out. */
function isToldAgain(facts: readonly Fact[], fact: Fact): boolean {
  return fact.quantity === 'restored' && facts.includes(fact);
}

/**
 * `the breaker tripped, pumps were off for an hour, back now`: without mains every pump stands, so that all
 * of it is one outage, told by the clause that says how long.
 */
function ofOnePower(
  frame: Frame,
  facts: readonly Fact[],
  marks: readonly TimeMark[],
): readonly Fact[] {
  if (!facts.some(({ quantity, of }) => quantity === 'outage' && of === 'power')) return facts;
  const mains = facts.map((fact) =>
    isOfAnyPump(frame, fact) ? { ...fact, of: 'power' as const } : fact,
  );
  const isTimed = (fact: Fact): boolean => {
    const clause = frame.clauseOf[fact.at]!;
    return (
      marks.some((mark) => mark.clause === clause) ||
      lengthSaid(frame, frame.clauses[clause]!) !== null
    );
  };
  const outages = mains.filter(({ quantity, of }) => quantity === 'outage' && of === 'power');
  const kept = outages.find(isTimed) ?? outages[0];
  return mains.filter((fact) => fact === kept || !outages.includes(fact));
}

function isOfAnyPump(frame: Frame, { quantity, of, at, byDevice }: Fact): boolean {
  const isPump = of === 'pump' && byDevice === undefined;
  const isOutage = quantity === 'outage' || quantity === 'restored';
  return isPump && isOutage && namesIn(frame, frame.clauses[frame.clauseOf[at]!]!).length === 0;
}

/**
 * `power was out`, `power was out yesterday`: it was so, at a time that has passed where one is told, and is not
 * said to go on.
 */
function wasOut(frame: Frame, fact: Fact, marks: readonly TimeMark[]): boolean {
  const clause = frame.clauses[frame.clauseOf[fact.at]!]!;
  const { writtenAtMs, greenhouse } = frame.context;
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  return (
    // `went off 3 times last night`: and came back as often.
    (clauseHas(frame, clause, 'was') || saysHowOften(frame, clause)) &&
    (marks.length === 0 ||
      marks.some(({ since, until, atMs, askFrom, vague }) => {
        if (since || until || askFrom !== null || atMs >= writtenAtMs) return false;
        // `at 3 the power was out`: found so today, it may be out still.
        return vague || localDateOf(atMs, greenhouse.timeZone) < today;
      }))
  );
}

function howLong(fact: Fact, marks: readonly TimeMark[]): Fact {
  const undated = marks.length === 0 ? { isUndated: true as const } : {};
  return {
    ...fact,
    ...(marks.length === 0 ? { approximate: true } : {}),
    doubt: { kind: 'how-long-out', of: fact.of ?? 'power', ...undated },
  };
}

/**
 * How long it lasted, and that it is over: since it `was`, or since it began at another time than so long
 * ago. Null: it goes on, or its times do not go together.
 */
function lasted(frame: Frame, fact: Fact, marks: readonly TimeMark[]): Fact[] | null {
  const { writtenAtMs } = frame.context;
  const clause = frame.clauses[frame.clauseOf[fact.at]!]!;
  const span = marks.find((mark) => mark.since && means(frame.terms[mark.from], 'for-so-long'));
  const lastedMs = span ? writtenAtMs - span.atMs : lengthSaid(frame, clause);
  const begun = marks.find((mark) => mark !== span && !mark.since && !mark.until);
  const isPast = begun !== undefined || clauseHas(frame, clause, 'was');
  const mark = begun ?? span;
  if (lastedMs === null || !mark || !isPast) return null;
  const fromMs = mark.atMs;
  if (fromMs + lastedMs > writtenAtMs) return null;
  const at = (atMs: number): TimeMark => ({ ...mark, atMs, since: false, vague: true });
  return [
    { ...fact, time: at(fromMs) },
    { ...fact, quantity: 'restored', time: at(fromMs + lastedMs) },
  ];
}

/** `out 2 hours last night`: a length of time in the clause, told without `for`. */
function lengthSaid(frame: Frame, clause: Clause): number | null {
  for (const i of measuresIn(frame, clause)) {
    const ms = frame.timed[i] ? null : spanMs(measureOf(frame, i));
    if (ms !== null) return ms;
  }
  return null;
}

/** `power off all night`: from when to when, and whether it still is, nobody has said. */
function lastedThroughout(frame: Frame, { at }: Fact): boolean {
  return clauseHas(frame, frame.clauses[frame.clauseOf[at]!]!, 'throughout');
}

function saysHowOften(frame: Frame, clause: Clause): boolean {
  return (
    clauseHas(frame, clause, 'twice') ||
    frame.terms
      .slice(clause.from, clause.to)
      .some((term) => means(term, 'times') && /^\p{L}{2,}$/u.test(term.text))
  );
}
