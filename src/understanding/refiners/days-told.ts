import type { Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { namesDay } from '../times/stretch.ts';
import type { TimeMark } from '../times/time-mark.ts';
import type { Settled } from './settled.ts';

/**
 * `on Saturday and Sunday 10 l each`: the same on every day that is told. Without the word nobody knows
 * whether it was both times or in all, nor when: the time is asked.
 */
export function onDaysTold(
  frame: Frame,
  settled: readonly Settled[],
  marks: readonly TimeMark[],
): readonly Settled[] {
  const listOf = new Map(
    listsOf(frame, settled, marks).flatMap((list) => list.map((mark) => [mark, list])),
  );
  if (listOf.size === 0) return settled;
  return settled.flatMap((one): Settled[] => {
    const days = one.mark && listOf.get(one.mark);
    if (!days || one.fact.quantity === 'outage' || one.fact.quantity === 'restored') return [one];
    if (one.fact.each && one.systems?.length === 1)
      return days.map((mark) => ({
        ...one,
        fact: { ...one.fact, each: false },
        mark,
        atMs: mark.atMs,
      }));
    const written = frame.folded.text.slice(
      frame.terms[days[0]!.from]!.from,
      frame.terms[days.at(-1)!.to]!.to,
    );
    const askFrom = days.map(({ atMs }) => atMs).toSorted((a, b) => b - a);
    return [{ ...one, mark: { ...days[0]!, written, askFrom } }];
  });
}

/** Times with nothing but `and` or a comma between them. */
function listsOf(
  frame: Frame,
  settled: readonly Settled[],
  marks: readonly TimeMark[],
): TimeMark[][] {
  const { terms } = frame;
  const lists: TimeMark[][] = [];
  for (const mark of marks) {
    const last = lists.at(-1)?.at(-1);
    const goesOn =
      last !== undefined &&
      terms.slice(last.to + 1, mark.from).every(joinsDays) &&
      last.to + 1 < mark.from;
    if (goesOn && !last.since && !mark.until && !leadsItsOwn(frame, settled, last, mark))
      lists.at(-1)!.push(mark);
    else lists.push([mark]);
  }
  return lists.filter((list) => list.length > 1);
}

/** `took the lid off at 7, at 8 the ph was 5.9`: of two clock times, the first of what has no value, the second of what follows. */
function leadsItsOwn(
  frame: Frame,
  settled: readonly Settled[],
  last: TimeMark,
  mark: TimeMark,
): boolean {
  if (namesDay(frame, last) || namesDay(frame, mark) || last.clause + 1 !== mark.clause)
    return false;
  if (frame.clauses[mark.clause]!.opens !== 'comma') return false;
  return settled.every(({ fact }) => fact.at > mark.to);
}

function joinsDays(term: Term): boolean {
  const isCut = term.kind === 'stop' && (term.cut === 'and' || term.cut === 'comma');
  return isCut || means(term, 'on-day', 'article');
}
