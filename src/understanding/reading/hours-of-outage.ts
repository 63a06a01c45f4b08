import { isLabel } from '../moods/clause-kinds.ts';
import { isMeasure } from './frame.ts';
import type { Lexicon } from './lexicon.ts';
import { measureTerm, wordTerm } from './make-term.ts';
import { Meanings } from './meanings.ts';
import { type MeasureTerm, means, type Term } from './term.ts';
import { meaningless } from './word.ts';

/**
 * `power was off Saturday 9 to 12`, `pump out 2-4`: beside what failed, two whole hours with no unit are no range of
 * an amount, but from when to when it was.
 */
export function withHoursOfOutage(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  if (!terms.some(isOfFailure)) return terms;
  let failed = false;
  return terms.flatMap((term, i): readonly Term[] => {
    if (i === 0 || terms[i - 1]!.kind === 'stop') failed = failsFrom(terms, i);
    if (!failed) return [term];
    // `between 9 and 12`: what leads to the hours says no more than they do.
    if (means(term, 'between') && hoursAt(terms, i + 1, lexicon)) return [];
    if (isHourUntilClock(terms, i)) return [word('from', term.from, term.from), term];
    return hoursAt(terms, i, lexicon) ?? [term];
  });
}

/** `3 till half 4`, `9 till 10:30`: a bare hour, and a time that is surely one. */
function isHourUntilClock(terms: readonly Term[], i: number): boolean {
  const [term, joint, end] = terms.slice(i, i + 3);
  if (!isMeasure(term) || !means(joint, 'until') || means(terms[i - 1], 'from', 'since'))
    return false;
  const { unit, share, whole, values } = term.measure;
  if (unit !== null || share || !whole || values.some((hour) => hour > hoursADay)) return false;
  return end?.kind === 'clock' || (end?.kind === 'word' && end.word.clockTurn !== null);
}

function word(meaning: 'from' | 'until', from: number, to: number): Term {
  return wordTerm(
    { from, to, text: '', glued: false },
    { ...meaningless, concepts: new Meanings([meaning]) },
  );
}

function hoursAt(terms: readonly Term[], i: number, lexicon: Lexicon): readonly Term[] | null {
  const term = terms[i];
  return isMeasure(term) && !isOfLabel(terms, i) ? hoursOf(term, lexicon) : null;
}

function isOfFailure(term: Term): boolean {
  return means(term, 'broken', 'no-power', 'no-bubbles');
}

/** Whether something is said to have failed before the next cut. */
function failsFrom(terms: readonly Term[], from: number): boolean {
  for (let i = from; i < terms.length && terms[i]!.kind !== 'stop'; i++)
    if (isOfFailure(terms[i]!)) return true;
  return false;
}

function isOfLabel(terms: readonly Term[], i: number): boolean {
  return isLabel(terms[i - 1]) || isLabel(terms[i + 1]) || means(terms[i + 1], 'times');
}

const hoursADay = 24;

/** `9 to 12` in its parts; null: it is another range, or no range. */
function hoursOf(term: MeasureTerm, { own }: Lexicon): readonly Term[] | null {
  const { measure } = term;
  if (measure.unit !== null || measure.share || !measure.approximate) return null;
  const [, first, joint, last] = /^(\d{1,2}) ?(\D+?) ?(\d{1,2})$/.exec(term.text) ?? [];
  if (first === undefined || joint === undefined || last === undefined) return null;
  const concepts = own.phrases.get([joint])?.concepts;
  const isDash = joint === '-' || joint === '–';
  if (!isDash && (!concepts || !(concepts.has('until') || concepts.has('and')))) return null;
  if (Number(last) > hoursADay) return null;
  const hour = (text: string, from: number): Term =>
    measureTerm(
      { from, to: from + text.length, text, glued: false },
      { ...measure, values: [Number(text)], approximate: false, whole: true, written: text },
    );
  const [begin, end] = [term.from, term.to - last.length];
  return [
    word('from', begin, begin),
    hour(first, begin),
    word('until', begin + first.length, end),
    hour(last, end),
  ];
}
