import { localDateOf } from '../../greenhouse/local-time.ts';
import type { Fact } from '../fact.ts';
import { type Clause, clauseHas, type Frame, measureOf, measuresIn } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { spanMs } from '../times/ago.ts';
import type { TimeMark } from '../times/time-mark.ts';

/** `power was out from 2 to 4`, `power was out for 2 hours last night` tell the end of the outage as well. */
export function withEnds(frame: Frame, facts: readonly Fact[], marks: readonly TimeMark[]): Fact[] {
  return facts.flatMap((fact) => {
    if (fact.quantity !== 'outage') return [fact];
    const clause = frame.clauseOf[fact.at];
    const inClause = marks.filter((mark) => mark.clause === clause);
    const end = inClause.find(({ until }) => until);
    const begun = inClause.find(({ until }) => !until);
    // `from 9 to 11`, written at 10: no end that could have come yet.
    if (end && begun && end.atMs < begun.atMs) return [howLong(fact, [begun])];
    if (end && begun) return [fact, { ...fact, quantity: 'restored' as const, ends: true }];
    const over = lasted(frame, fact, inClause);
    if (over) return over;
    const isOpen = !facts.some((other) => other.quantity === 'restored' && other.of === fact.of);
    return [isOpen && wasOut(frame, fact, inClause) ? howLong(fact, inClause) : fact];
  });
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
    clauseHas(frame, clause, 'was') &&
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
