import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { isWeekday, means, type Term } from '../reading/term.ts';
import type { TimeMark } from '../times/time-mark.ts';
import type { Mood } from './mood.ts';

/**
 * `power cut tomorrow`, `no power tonight`: an outage that is told of in advance, with nothing else beside it; of
 * `no power on Thursday` nobody can tell. Not `power out until tomorrow`. Null: it is told as something that is.
 */
export function outageToCome(
  frame: Frame,
  clause: Clause,
  marks: readonly TimeMark[],
): Mood | null {
  if (!clauseHas(frame, clause, 'no-power', 'broken')) return null;
  if (isOfEveryDay(frame, clause)) return 'hearsay';
  if (isAnnounced(frame, clause)) return 'intention';
  if (!tellsOutageAlone(frame, clause)) return null;
  const own = marks.filter((mark) => !mark.until && frame.clauses[mark.clause] === clause);
  const isTonight = (mark: TimeMark) => mark.askFrom !== null && has(frame, mark, saysTonight);
  if (own.some(isTonight)) return 'intention';
  const isOfWeekday = own.some((mark) => has(frame, mark, isWeekday));
  return isOfWeekday && !tellsOfPast(frame, clause) ? 'queried' : null;
}

/** `power off from 10 to 12 tomorrow says the letter`: only times and small words between the outage and its day. */
function isAnnounced(frame: Frame, clause: Clause): boolean {
  const { terms, timed } = frame;
  for (let i = clause.from; i < clause.to; i++) {
    if (!means(terms[i], 'tomorrow') || means(terms[i - 1], 'until')) continue;
    // `pump dead, tomorrow I'll buy a new one`: what somebody does about it.
    if (clauseHas(frame, { from: i + 1, to: clause.to }, 'self', 'intention')) return false;
    let from = i - 1;
    while (
      from >= clause.from &&
      !isOut(terms[from]!) &&
      (timed[from] || mayStandBetween(terms[from]!))
    )
      from--;
    if (from >= clause.from && isOut(terms[from]!)) return true;
    let to = i + 1;
    while (to < clause.to && !isOut(terms[to]!) && (timed[to] || mayStandBetween(terms[to]!))) to++;
    return to < clause.to && isOut(terms[to]!);
  }
  return false;
}

function isOut(term: Term): boolean {
  return means(term, 'no-power', 'broken');
}

function mayStandBetween(term: Term): boolean {
  // `10 to 12`: the turn of a clock may be a span of hours.
  if (term.kind !== 'word' || term.word.clockTurn !== null) return true;
  return isOfOutage(term) || means(term, 'this', 'morning', 'evening');
}

/** `the power goes out every Friday`: of no day in particular. */
function isOfEveryDay({ terms, timed }: Frame, { from, to }: Clause): boolean {
  for (let i = from; i + 1 < to; i++)
    if (means(terms[i], 'every') && (timed[i + 1] === true || isWeekday(terms[i + 1]))) return true;
  return false;
}

function has({ terms }: Frame, { from, to }: TimeMark, test: (term: Term) => boolean): boolean {
  return terms.slice(from, to + 1).some(test);
}

function saysTonight(term: Term): boolean {
  return means(term, 'tonight');
}

/** `power went out on Friday`, `no power since Friday`: not the bare noun. */
function tellsOfPast(frame: Frame, clause: Clause): boolean {
  if (!clauseHas(frame, clause, 'no-power') || clauseHas(frame, clause, 'was', 'last', 'has'))
    return true;
  return frame.terms
    .slice(clause.from, clause.to)
    .some((term) => means(term, 'since') && !means(term, 'from'));
}

function tellsOutageAlone(frame: Frame, { from, to }: Clause): boolean {
  for (let i = from; i < to; i++) {
    const term = frame.terms[i]!;
    if (term.kind === 'word' && frame.timed[i] !== true && !isOfOutage(term)) return false;
  }
  return true;
}

function isOfOutage(term: Term): boolean {
  return means(
    term,
    'tomorrow',
    'no-power',
    'broken',
    'power',
    'pump',
    'air-pump',
    'was',
    'has',
    'from',
    'to',
    'until',
    'at-hour',
    'article',
    'place',
    'link',
    'filler',
  );
}
