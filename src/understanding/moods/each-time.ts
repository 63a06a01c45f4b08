import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/** `3 mal gemessen, immer 5,8`: each time that it was measured, and no habit. */
export function isEachTimeMeasured(frame: Frame, { sentence }: Clause): boolean {
  const said = frame.clauses.filter((clause) => clause.sentence === sentence);
  const range = { from: said[0]!.from, to: said.at(-1)!.to };
  return (
    clauseHas(frame, range, 'each-time') &&
    clauseHas(frame, range, 'read-as') &&
    (clauseHas(frame, range, 'twice') ||
      frame.places.hasWhere(isCountOfTimes, range.from, range.to))
  );
}

function isCountOfTimes(term: Term): boolean {
  return means(term, 'times') && term.text.length > 1;
}
