import { localDateOf } from '../../greenhouse/local-time.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import { findTimes } from '../times/find-times.ts';
import type { Named } from './named.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/**
 * `it was 10 l last night not 12`, `yesterday's bench ph should have been 6.0`, `das von gestern abend waren nur 8 l`,
 * `the 1.7 from yesterday should be 1.9`: what was told of another day, put right.
 */
export function correctOfDay(frame: Frame, named: () => Named): TakingBack | null {
  const { terms, timed, places } = frame;
  const count = places.where(isMeasure).length;
  // Two values, and what the day may be told with.
  if (count === 0 || count > 4 || !places.hasWhere(saysHowItWas, 0, terms.length)) return null;
  const onDate = dayBefore(frame);
  if (onDate === null) return null;
  const numbers = places.where(isMeasure).filter((i) => !timed[i]);
  const isPlain = terms.every((term, i) => timed[i] === true || isMeasure(term) || isSmall(term));
  const pair = isPlain ? valuesOf(frame, numbers) : null;
  timed.fill(false);
  if (!pair) return null;
  const { system, quantity } = named();
  const corrected = numbersCorrected(frame, pair, quantity);
  return corrected && { kind: 'correct', ...corrected, system, onDate };
}

function saysHowItWas(term: Term): boolean {
  return means(term, 'ought-to-have-been', 'ought-to-be', 'was');
}

/** The one day spoken of, where it is over; its words are left marked as time. */
function dayBefore(frame: Frame): string | null {
  const { greenhouse, writtenAtMs } = frame.context;
  const marks = findTimes(frame);
  frame.taken.fill(false);
  const [mark] = marks;
  const date = mark ? localDateOf(mark.atMs, greenhouse.timeZone) : null;
  const isOver = date !== null && date < localDateOf(writtenAtMs, greenhouse.timeZone);
  if (marks.length === 1 && mark?.askFrom === null && !mark.until && isOver) return date;
  frame.timed.fill(false);
  return null;
}

/** The value meant, and the one given up if it is told; null: nothing says that it was told otherwise. */
function valuesOf(
  frame: Frame,
  numbers: readonly number[],
): readonly [number, number | null] | null {
  const { terms, timed } = frame;
  const [first, second] = numbers;
  if (first === undefined || numbers.length > 2) return null;
  if (second === undefined) {
    const ought = terms.some((term) => means(term, 'ought-to-have-been'));
    return ought || speaksOfWhatWasTold(frame) ? [first, null] : null;
  }
  if (isOneGivenUp(frame, first, second)) return [second, first];
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
function isOneGivenUp({ terms }: Frame, first: number, second: number): boolean {
  const between = terms.slice(first + 1, second);
  const isSaidSo = means(terms[first - 1], 'article') && !means(terms[first - 1], 'indefinite');
  const isVerb = (term: Term) =>
    means(term, 'was', 'ought-to-be', 'ought-to-have-been') && !means(term, 'place', 'at-hour');
  const wasBefore = terms.slice(0, first).some(isVerb);
  return isSaidSo && !wasBefore && between.some(isVerb);
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
  );
}
