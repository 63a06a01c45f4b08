import { localDateOf } from '../../greenhouse/local-time.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import { findTimes } from '../times/find-times.ts';
import type { Named } from './named.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/**
 * `it was 10 l last night not 12`, `yesterday's bench ph should have been 6.0`, `das von gestern abend waren nur 8 l`,
 * `the 1.7 from yesterday should be 1.9`: what was told of another day, put right; and `the 1.7 I gave should be 1.9`,
 * which says by its number what was told.
 */
export function correctOfTold(frame: Frame, named: () => Named): TakingBack | null {
  const { terms, timed, places } = frame;
  const count = places.where(isMeasure).length;
  // Two values, and what the day may be told with.
  if (count === 0 || count > 4 || !places.hasWhere(saysHowItWas, 0, terms.length)) return null;
  const day = dayBefore(frame);
  if (day === null) return null;
  const numbers = places.where(isMeasure).filter((i) => !timed[i]);
  const isPlain = terms.every(
    (term, i) => timed[i] === true || isMeasure(term) || isSmall(term) || isLastVerb(frame, i),
  );
  const pair = isPlain ? valuesOf(frame, numbers, day.date) : null;
  timed.fill(false);
  if (!pair) return null;
  const { system, quantity } = named();
  const corrected = numbersCorrected(frame, pair, quantity);
  const onDate = day.date === null ? {} : { onDate: day.date };
  return corrected && { kind: 'correct', ...corrected, system, ...onDate };
}

function saysHowItWas(term: Term): boolean {
  return means(term, 'was') || saysAmiss(term);
}

/** That a value told before is not the one. */
function saysAmiss(term: Term): boolean {
  return means(term, 'ought-to-have-been', 'ought-to-be', 'untrue', 'sorry', 'no-wait', 'meant');
}

/** `sollten 1,9 sein`: a verb that ends what is said. */
function isLastVerb({ terms }: Frame, i: number): boolean {
  return i + 1 === terms.length && isMeasure(terms[i - 1]) && isUnknown(terms[i]);
}

/**
 * The one day spoken of, where it is over, and its words left marked as time; `date` null: of no day, or of today.
 * Null: of several times, or of one that is no day.
 */
function dayBefore(frame: Frame): { readonly date: string | null } | null {
  const { greenhouse, writtenAtMs } = frame.context;
  const marks = findTimes(frame);
  frame.taken.fill(false);
  const [mark] = marks;
  if (!mark) return { date: null };
  const date = localDateOf(mark.atMs, greenhouse.timeZone);
  const isOver = date < localDateOf(writtenAtMs, greenhouse.timeZone);
  if (marks.length === 1 && mark.askFrom === null && !mark.until)
    return { date: isOver ? date : null };
  frame.timed.fill(false);
  return null;
}

/** The value meant, and the one given up if it is told; null: nothing says that it was told otherwise. */
function valuesOf(
  frame: Frame,
  numbers: readonly number[],
  date: string | null,
): readonly [number, number | null] | null {
  const { terms, timed } = frame;
  const [first, second] = numbers;
  if (first === undefined || numbers.length > 2) return null;
  if (date === null)
    return second !== undefined && isOneGivenUp(frame, first, second, saysAmiss)
      ? [second, first]
      : null;
  if (second === undefined) {
    const ought = terms.some((term) => means(term, 'ought-to-have-been'));
    return ought || speaksOfWhatWasTold(frame) ? [first, null] : null;
  }
  if (isOneGivenUp(frame, first, second, saysHowItWas)) return [second, first];
  const isOfWas = terms.slice(0, first).some((term) => means(term, 'was'));
  if (!isOfWas) return null;
  const lead = (i: number) => {
    let before = i - 1;
    while (before >= 0 && (timed[before] || means(terms[before], 'article', 'pronoun'))) before--;
    return terms[before];
  };
  if (means(lead(second), 'not', 'instead-of')) return [first, second];
  // `i'd written 3`, `3 hatte ich geschrieben`: what had been told.
  if (terms.slice(first + 1).some((term) => means(term, 'had-said'))) return [first, second];
  return means(lead(first), 'not') ? [second, first] : null;
}

/** `the 12 l from yesterday were only 10`, `die 1,7 von gestern sollten 1,9 sein`: first what was told, then what was. */
function isOneGivenUp(
  { terms, timed }: Frame,
  first: number,
  second: number,
  says: (term: Term) => boolean,
): boolean {
  const isVerb = (term: Term) => says(term) && !means(term, 'place', 'at-hour');
  const lead = terms[first - 1];
  const isSaidSo =
    (means(lead, 'article') && !means(lead, 'indefinite')) || timed[first - 1] === true;
  const wasBefore = terms.slice(0, first).some(isVerb);
  // `die 1,7 hätte 1,9 heißen müssen`: the verb may end it.
  const isLast = means(terms[second + 1], 'ought-to-have-been');
  return isSaidSo && !wasBefore && (isLast || terms.slice(first + 1, second).some(isVerb));
}

/** `the one from last night was 8 l`, `das von gestern waren nur 8 l`. */
function speaksOfWhatWasTold({ terms, timed }: Frame): boolean {
  const day = firstOfDay(timed, terms);
  const lead = means(terms[day], 'from', 'of', 'place');
  const isOne = day > 0 && terms.slice(0, day).every((term) => means(term, 'pronoun', 'article'));
  return lead && isOne && terms.slice(day).some((term) => means(term, 'was'));
}

/** Where the words of the day begin, with what leads to them. */
function firstOfDay(timed: readonly boolean[], terms: readonly Term[]): number {
  const day = timed.indexOf(true);
  return means(terms[day], 'from', 'of', 'place') ? day : day - 1;
}

function isSmall(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question' && term.cut !== 'line';
  if (term.kind === 'mark') return term.text !== '?';
  if (isName(term) || isLabel(term)) return true;
  return means(
    term,
    'ought-to-have-been',
    'ought-to-be',
    'had-said',
    'instead-of',
    'article',
    'pronoun',
    'was',
    'link',
    'filler',
    'place',
    'of',
    'from',
    'not',
    'sorry',
    'meant',
    'no-wait',
    'has',
    'condition',
    'still-there',
    'water',
    'top-up',
    'add',
    'for-somebody',
    'self',
    'untrue',
    'read-as',
  );
}
