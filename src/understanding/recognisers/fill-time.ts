import type { Fact } from '../fact.ts';
import { isBare, minutesFactor, unitIs } from '../numbers/quantity-of-measure.ts';
import { clauseHas, type Frame, inClause, measureOf, measuresIn, take } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { onlySystemWith } from './devices.ts';

/** `bench fill took 9 min`, `took 9 min to fill`: how long a flood took. */
export function recogniseFillTimes(frame: Frame): Fact[] {
  return frame.clauses.flatMap((clause): Fact[] => {
    const word = inClause(
      frame,
      clause,
      (term) => means(term, 'flood') && !means(term, 'change', 'pump'),
    )[0];
    if (word === undefined || clauseHas(frame, clause, 'venturi', 'aeration', 'air-stones'))
      return [];
    const took = clauseHas(frame, clause, 'took');
    const at = measuresIn(frame, clause).find((i) => {
      const measure = measureOf(frame, i);
      if (unitIs(measure, 'm')) return took;
      return minutesFactor(measure) !== null || (isBare(measure) && isTakenTime(frame, i));
    });
    if (at === undefined || means(frame.terms[at + 1], 'ago')) return [];
    // `the bench floods every 3 hours`: how often, and not how long.
    if (means(frame.terms[at - 1], 'every')) return [];
    take(frame, at, word);
    for (const i of inClause(frame, clause, (term) => means(term, 'fill', 'took'))) take(frame, i);
    const only = onlySystemWith(frame, ({ floods }) => floods !== null);
    const byDevice =
      only !== null && means(frame.terms[word - 1], 'pump') ? { byDevice: only } : {};
    return [
      {
        quantity: 'fill-time',
        amount: { kind: 'measure', measure: measureOf(frame, at) },
        at,
        from: Math.min(word, at),
        to: Math.max(word, at),
        ...byDevice,
        because: 'fill time',
      },
    ];
  });
}

/** `took 9`: minutes are meant, most likely; asked. */
function isTakenTime(frame: Frame, i: number): boolean {
  const before = frame.terms[i - 1];
  return means(before, 'took') && !means(before, 'link', 'place', 'at');
}
