import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { isMark, type MeasureTerm, means, type Term } from './term.ts';

/** `ph 5.9 no wait 6.2`: the second number takes the first one's place. */
export function putRight(terms: readonly Term[]): Term[] {
  const kept = [...terms];
  for (let i = 0; i < kept.length; i++) {
    const first = kept[i];
    if (first?.kind !== 'measure') continue;
    const beside = correctionAfter(kept, i);
    const second = beside ?? correctionOfClause(kept, i);
    if (second === null) continue;
    const better = kept[second] as MeasureTerm;
    const unit = better.measure.unit ?? first.measure.unit;
    const right = measureTerm(better, { ...better.measure, unit });
    if (beside === null) {
      const end = endOfSaying(kept, i)!;
      kept.splice(end, endOfSaidAgain(kept, second, unit) - end);
      kept[i] = right;
    } else kept.splice(i, second - i + 1, right);
    i--;
  }
  return kept;
}

/** Where the clause of the better number ends; `6 sorry, 6 l` says it once more. */
function endOfSaidAgain(terms: readonly Term[], i: number, unit: Measure['unit']): number {
  const end = endOfClause(terms, i);
  const [first, again] = [terms[i], terms[end + 1]];
  if (!isMeasureTerm(first) || !isMeasureTerm(again) || endOfClause(terms, end + 1) !== end + 2)
    return end;
  const isSame =
    again.measure.values[0] === first.measure.values[0] &&
    (unit === null || sameUnits(measureTerm(first, { ...first.measure, unit }), again));
  return isSame ? end + 2 : end;
}

/** The number that corrects the one at `i`: after words like `no wait`, with the same unit or none, and no label of its own. */
function correctionAfter(terms: readonly Term[], i: number): number | null {
  let j = i + 1;
  let said = false;
  let strong = false;
  const labels: number[] = [];
  for (; j < terms.length && j <= i + 8; j++) {
    const term = terms[j]!;
    if (means(term, 'no-wait')) {
      said = true;
      strong ||= !means(term, 'filler', 'no', 'meant') || term.text.includes(' ');
    } else if (
      term.kind === 'stop' &&
      (term.cut === 'comma' || term.cut === 'sentence' || term.cut === 'line')
    )
      continue;
    else if (isMark(term, '-', ':', '*')) continue;
    else if (said && means(term, 'ph', 'ec', 'temperature', 'humidity', 'level', 'oxygen'))
      labels.push(j);
    else if (!(said && means(term, 'link', 'filler', 'article', 'pronoun'))) break;
  }
  if (strong && !isMeasureTerm(terms[j])) j = behindExcuse(terms, i, j) ?? j;
  if (!said || !(sameUnits(terms[i], terms[j]) || isAmount(terms, i, terms[j]))) return null;
  const after = terms[j + 1];
  const isLabelled = means(after, 'ph', 'ec', 'temperature', 'humidity', 'level');
  if (isLabelled && terms[j + 2]?.kind !== 'measure' && !sameLabel(terms, i, after!)) return null;
  return labels.every((label) => sameLabel(terms, i, terms[label]!)) ? j : null;
}

/**
 * `6.2 wait no i read it upside down 5.9`: the number that comes after an excuse of a few words, written as
 * exactly as the one it takes the place of; null where more is told in between.
 */
function behindExcuse(terms: readonly Term[], i: number, from: number): number | null {
  const first = terms[i];
  for (let j = from; j < terms.length && j <= from + longestExcuse; j++) {
    const term = terms[j]!;
    if (isMeasureTerm(term)) {
      const isLike = isMeasureTerm(first) && term.measure.decimals === first.measure.decimals;
      return isLike && term.measure.decimals > 0 ? j : null;
    }
    const isPaused = term.kind === 'stop' && term.cut === 'comma';
    if (!isPaused && (term.kind !== 'word' || isLabel(term) || tellsMore(term))) return null;
  }
  return null;
}

/** A deed, or that the number to come is not the one meant. */
function tellsMore(term: Term): boolean {
  return means(
    term,
    'add',
    'top-up',
    'fill',
    'refill',
    'pick',
    'goes-in',
    'take-away',
    'calibrate',
    'not',
    'instead-of',
    'was',
    'target',
    'intention',
  );
}

/** So many words tell of a slip; more tell of something else. */
const longestExcuse = 8;

function isMeasureTerm(term: Term | undefined): term is MeasureTerm {
  return term?.kind === 'measure';
}

function endOfClause(terms: readonly Term[], i: number): number {
  let end = i + 1;
  while (end < terms.length && terms[end]!.kind !== 'stop') end++;
  return end;
}

/**
 * `20 l rein nein 30`, `20 l in no 30`: with its clause, or before a no that another number follows at once;
 * null where a number stands before either.
 */
function endOfSaying(terms: readonly Term[], i: number): number | null {
  for (let j = i + 1; j < terms.length; j++) {
    const term = terms[j]!;
    if (term.kind === 'stop') return term.cut === 'question' ? null : j;
    if (term.kind === 'measure') return null;
    const isNo = means(term, 'said-no', 'sorry', 'called-off');
    if (isNo && isMeasureTerm(terms[behindBreath(terms, j + 1)]) && !isNumbering(terms, j))
      return j;
  }
  return null;
}

/** `hang on, ok yeah, 2 cans`: what is said while somebody looks again. */
function behindBreath(terms: readonly Term[], i: number): number {
  let at = i;
  while (means(terms[at], 'filler') && !means(terms[at], 'said-no', 'no-wait', 'another')) at++;
  return at;
}

/** Of more than so many no household tells by their numbers. */
const mostNumbered = 10;

/** `added 20 l to tote no 2`. */
function isNumbering(terms: readonly Term[], i: number): boolean {
  const [name, no, number] = [terms[i - 1], terms[i], terms[i + 1]];
  if (!means(no, 'no') || name?.kind !== 'name' || number?.kind !== 'measure') return false;
  return isBare(number.measure) && number.measure.values[0]! <= mostNumbered;
}

/** The last term before `i` that is a number or a cut. */
function edgeBefore(terms: readonly Term[], i: number): Term | undefined {
  let j = i - 1;
  while (j >= 0 && terms[j]!.kind !== 'stop' && terms[j]!.kind !== 'measure') j--;
  return j < 0 ? undefined : terms[j];
}

/** `12 l nachgefüllt, nein 14`: the only number of its clause, and a clause of nothing but the better one. */
function correctionOfClause(terms: readonly Term[], i: number): number | null {
  const end = endOfSaying(terms, i);
  if (end === null) return null;
  if (edgeBefore(terms, i)?.kind === 'measure') return null;
  // `all ph 5.9 except the bench, that is 6.3`: of the one that was left out.
  if (terms.slice(i, end).some((term) => means(term, 'except'))) return null;
  let number = end;
  let isTakenBack = false;
  // `10 l i put, well more like 12`: a breath before the word.
  while (
    isPause(terms[number]) ||
    means(terms[number], 'no-wait') ||
    (means(terms[number], 'filler') &&
      (isTakenBack || means(terms[number + 1], 'no-wait')) &&
      !means(terms[number], 'another'))
  ) {
    isTakenBack ||= means(terms[number], 'no-wait');
    number++;
  }
  const after = terms.slice(number + 1, endOfClause(terms, number));
  // `Moment, 25 waren es`, `wait, 25 it was`.
  const names = terms.slice(i, end).filter(({ kind }) => kind === 'name');
  const isSameName = (term: Term) => names.length === 1 && isNameOf(term, names[0]!);
  // `ph 5.8, 5.9 sorry`: the word may follow.
  isTakenBack ||= after.some(isTakenBackBy);
  const isCorrection =
    isTakenBack &&
    after.every(
      (term) =>
        means(term, 'filler', 'was', 'pronoun', 'meant', 'place', 'article') ||
        isTakenBackBy(term) ||
        isSameName(term),
    );
  return isCorrection && sameUnits(terms[i], terms[number]) ? number : null;
}

/** `sorry`, `i mean`; `no` may begin something else. */
export function isTakenBackBy(term: Term): boolean {
  const isPlain = !means(term, 'filler', 'no', 'said-no', 'that-is');
  return means(term, 'no-wait') && (isPlain || means(term, 'sorry'));
}

/** `5 in the jars, no sorry 3 in the jars`: the system is said again. */
function isNameOf(term: Term, name: Term): boolean {
  return (
    term.kind === 'name' && name.kind === 'name' && term.systems.join() === name.systems.join()
  );
}

/** `…, nein warte, 3 l`: what may stand between what is taken back and what is meant. */
function isPause(term: Term | undefined): boolean {
  return term?.kind === 'stop' && term.cut !== 'question';
}

/** `topped up the bench 30, scrap that, 40 l`: a bare number after a verb of adding is of no other unit. */
function isAmount(terms: readonly Term[], i: number, second: Term | undefined): boolean {
  const first = terms[i];
  if (first?.kind !== 'measure' || second?.kind !== 'measure') return false;
  if (!isBare(first.measure) || !isVolume(second.measure)) return false;
  let j = i - 1;
  while (terms[j]?.kind === 'name' || means(terms[j], 'article', 'place', 'with', 'about')) j--;
  return means(terms[j], 'top-up', 'add', 'fill');
}

function sameUnits(first: Term | undefined, second: Term | undefined): boolean {
  if (first?.kind !== 'measure' || second?.kind !== 'measure') return false;
  return (
    second.measure.unit === null ||
    JSON.stringify(second.measure.unit) === JSON.stringify(first.measure.unit)
  );
}

/** Whether the label is the one that the first number has. */
function sameLabel(terms: readonly Term[], i: number, label: Term): boolean {
  for (let j = i + 1; j >= 0 && j > i - 5; j--) {
    const term = terms[j];
    if (term?.kind === 'word' && label.kind === 'word' && term.text === label.text) return true;
  }
  return false;
}
