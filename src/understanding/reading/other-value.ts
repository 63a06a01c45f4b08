import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/**
 * `10 maybe 12 litres` lies between the two; `10 l in the bench, maybe 12`, `6 or 5.8` is one of them: the first keeps
 * the second as what disputes it.
 */
export function withOtherValues(terms: readonly Term[]): readonly Term[] {
  if (!terms.some(mayLeadOther)) return terms;
  const kept: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const other =
      (isMaybe(terms[i]!) ? otherValue(kept, terms, i) : null) ??
      (means(terms[i], 'or') ? eitherValue(kept, terms, i) : null);
    if (!other) {
      kept.push(terms[i]!);
      continue;
    }
    kept.length = Math.max(other.at + 1, other.cut);
    kept[other.at] = other.term;
    i = other.last;
  }
  return kept;
}

interface Other {
  /** Of the terms kept: the value told first, and what the doubt begins with. */
  readonly at: number;
  readonly cut: number;
  readonly term: MeasureTerm;
  /** Of the terms as they stand: the last that says the other value. */
  readonly last: number;
}

function otherValue(kept: readonly Term[], terms: readonly Term[], maybe: number): Other | null {
  let next = maybe + 1;
  while (next < terms.length && isSmall(terms[next])) next++;
  const second = terms[next];
  // `10 l, maybe around 8`: an hour, as like as not.
  if (means(terms[next - 1], 'at-hour') && !isMaybe(terms[next - 1]!)) return null;
  const ofLabelled = labelledOther(kept, terms, next);
  if (ofLabelled) return ofLabelled;
  const cut = kept.at(-1)?.kind === 'stop' ? kept.length - 1 : kept.length;
  const at = saidBefore(kept, cut);
  const first = kept[at];
  if (first?.kind !== 'measure' || second?.kind !== 'measure') return null;
  const isBeside = at === kept.length - 1;
  if (!isOfOneThing(first, second) || !isClose(first.measure, second.measure)) return null;
  if (isBare(first.measure) && isBare(second.measure) && (isBeside || !isLabelled(kept, at)))
    return null;
  let end = next + 1;
  while (end < terms.length && means(terms[end], 'ish', 'about') && !isMaybe(terms[end]!)) end++;
  const isAlone = end === terms.length || terms[end]!.kind === 'stop';
  if (isBeside) {
    if (isLabel(terms[end])) return null;
    return { at, cut: at + 1, term: between(first, second), last: next };
  }
  if (!isAlone) return null;
  const unit = second.measure.unit ?? first.measure.unit;
  const disputedBy: Measure = { ...second.measure, unit };
  const term = measureTerm(first, { ...first.measure, disputedBy });
  return { at, cut, term, last: end - 1 };
}

/** `1.2, no idea, maybe 1.4 ec`: what it is of is said with the second alone. */
function labelledOther(kept: readonly Term[], terms: readonly Term[], next: number): Other | null {
  const second = terms[next];
  if (second?.kind !== 'measure' || !isLabel(terms[next + 1])) return null;
  let cut = kept.length;
  while (cut > 0 && (kept[cut - 1]!.kind === 'stop' || means(kept[cut - 1], 'said-no', 'filler')))
    cut--;
  const first = kept[cut - 1];
  if (first?.kind !== 'measure' || cut === kept.length || isLabelled(kept, cut - 1)) return null;
  const isOfOne = isBare(first.measure) && isBare(second.measure);
  if (!isOfOne || !isClose(first.measure, second.measure)) return null;
  const term = measureTerm(first, { ...first.measure, disputedBy: second.measure });
  return { at: cut - 1, cut, term, last: next };
}

/** `6 or 5.8`, `5,8 bzw. 6`: either, or of two systems each its own. */
function eitherValue(kept: readonly Term[], terms: readonly Term[], or: number): Other | null {
  const at = kept.length - 1;
  const [first, second, after] = [kept[at], terms[or + 1], terms[or + 2]];
  if (first?.kind !== 'measure' || second?.kind !== 'measure' || isLabel(after)) return null;
  if (!isOfOneThing(first, second) || !isClose(first.measure, second.measure)) return null;
  const unit = second.measure.unit ?? first.measure.unit;
  const disputedBy: Measure = { ...second.measure, unit };
  const term = measureTerm(first, {
    ...first.measure,
    unit: first.measure.unit ?? unit,
    disputedBy,
  });
  return { at, cut: at + 1, term, last: or + 1 };
}

function mayLeadOther(term: Term): boolean {
  return means(term, 'maybe', 'or');
}

function isMaybe(term: Term): boolean {
  return means(term, 'maybe');
}

function isSmall(term: Term | undefined): boolean {
  return (
    means(term, 'maybe', 'about', 'filler', 'article', 'pronoun', 'link') && !means(term, 'add')
  );
}

/** The value that stands before, with nothing but its product and where it went between. */
function saidBefore(kept: readonly Term[], cut: number): number {
  let at = cut - 1;
  while (at >= 0 && kept[at]!.kind !== 'measure' && standsBehindValue(kept[at])) at--;
  return at;
}

function standsBehindValue(term: Term | undefined): boolean {
  if (term?.kind === 'name') return true;
  if (term?.kind !== 'word') return false;
  const isProduct = term.word.product !== null || term.word.shyProduct !== null;
  return (
    isProduct ||
    term.word.anyProduct ||
    means(term, 'place', 'article', 'add', 'top-up', 'of', 'filler', 'ish')
  );
}

/** Two values of one thing are of one unit, told with either of them. */
function isOfOneThing({ measure: first }: MeasureTerm, { measure: second }: MeasureTerm): boolean {
  if (isBare(first) || isBare(second)) return true;
  return JSON.stringify(first.unit) === JSON.stringify(second.unit);
}

/** Nobody is in doubt by more: what lies further off is of something else. */
const mostTimes = 2;

function isClose(first: Measure, second: Measure): boolean {
  const [a, b] = [first.values[0]!, second.values[0]!];
  return a !== b && a > 0 && b > 0 && Math.max(a, b) <= mostTimes * Math.min(a, b);
}

function isLabelled(kept: readonly Term[], at: number): boolean {
  let label = at - 1;
  while (label >= 0 && means(kept[label], 'about', 'link', 'article', 'filler', 'was')) label--;
  return isLabel(kept[label]);
}

function between(first: MeasureTerm, second: MeasureTerm): MeasureTerm {
  const middle = (first.measure.values[0]! + second.measure.values[0]!) / 2;
  const measure: Measure = {
    ...first.measure,
    values: [middle],
    unit: first.measure.unit ?? second.measure.unit,
    approximate: true,
    written: `${first.measure.written}–${second.measure.written}`,
    whole: false,
  };
  const { from, glued } = first;
  return measureTerm({ from, to: second.to, text: measure.written, glued }, measure);
}
