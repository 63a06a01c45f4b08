import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Context } from '../context.ts';
import { stems } from '../names/inflection.ts';
import { isVolume, litresFactor, round } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isName, isShare, measureOf } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';

/** So many vessels of one kind, put into one system just now. */
interface Poured {
  /** It is still asked whether it was added: what is said of a share is said of the amount. */
  readonly isAsked: boolean;
  readonly count: number;
  readonly litresOfOne: number;
}

/**
 * `that can was only half full`, `the second was only half full`, `no, the can was just 5 l`: of a top-up told in vessels
 * right before, how much was in one of them; the top-up is put right.
 */
export function vesselNotFull(frame: Frame): TakingBack | null {
  const poured = vesselsPoured(frame);
  if (poured === null || frame.places.hasWhere(isName, 0, frame.terms.length)) return null;
  const was = frame.terms.findIndex((term) => means(term, 'was') && means(term, 'link'));
  const which = was < 0 ? null : vesselsMeant(frame, was, poured);
  const each = which === null ? null : litresInOne(frame, was, poured.litresOfOne);
  if (which === null || each === null || each >= poured.litresOfOne) return null;
  const litres = round((poured.count - which) * poured.litresOfOne + which * each);
  return {
    kind: 'correct',
    said: litres,
    to: [{ quantity: 'top-up', value: litres }],
    from: null,
    system: null,
  };
}

/** Whether what is said of a share or of litres may be of the vessel that was just emptied into a system. */
export function mayBeOfVessel(frame: Frame): boolean {
  return (
    vesselsPoured(frame) !== null &&
    frame.places.hasAny(['merely']) &&
    !frame.places.hasWhere(isName, 0, frame.terms.length)
  );
}

function vesselsPoured({ context }: Frame): Poured | null {
  const asked = amountAsked(context);
  const [only, ...others]: readonly EntryDraft[] = asked ?? context.justLogged ?? [];
  if (only?.quantity !== 'top-up' || others.length > 0 || only.saidIn?.zeroAt !== 0) return null;
  const litresOfOne = only.saidIn.perUnit;
  const count = only.value / litresOfOne;
  const isVessel = context.greenhouse.containers.some(({ litres }) => litres === litresOfOne);
  if (!isVessel || count < 1 || !Number.isInteger(count)) return null;
  return { isAsked: asked !== null, count, litresOfOne };
}

/** `a can in the bench`, of which it is asked whether it is in it or was added. */
function amountAsked({ openQuestions }: Context): readonly EntryDraft[] | null {
  const [question] = openQuestions;
  if (question?.doubt.reason.kind !== 'in-it-or-added') return null;
  const drafts = question.doubt.waiting?.drafts ?? [];
  return drafts.filter(({ quantity }) => quantity === 'top-up');
}

/** How many of them the subject of the sentence speaks of; null: of something else. */
function vesselsMeant(frame: Frame, was: number, poured: Poured): number | null {
  const { isAsked, count } = poured;
  const subject = frame.terms.slice(0, was);
  const isPlain = subject.every(
    (term) => isOfSubject(term) || isVessel(term) || (term.kind === 'stop' && term.cut === 'comma'),
  );
  const vessel = subject.find(isVessel);
  const isOne = subject.some(
    (term) =>
      (term.kind === 'word' && term.word.ordinal !== null) || means(term, 'other-one', 'last'),
  );
  const isLed = means(
    subject.find((term) => term.kind === 'word' && !means(term, 'said-no')),
    'article',
    'pronoun',
  );
  const isAll =
    subject.some((term) => means(term, 'both', 'all')) || isPlural(vessel, frame.lexicon.own);
  if (!isPlain || (vessel && !isOfKind(frame, vessel, poured))) return null;
  const isOfAsked = isAsked && count === 1 && frame.places.hasAny(['merely']);
  if (!vessel && !(isOne && isLed && count > 1) && !isOfAsked) return null;
  if (isAll) return count;
  return isOne || count === 1 || isMeasure(vessel) ? 1 : null;
}

/** A vessel of another kind did not pour it. */
function isOfKind({ context, lexicon }: Frame, vessel: Term, { litresOfOne }: Poured): boolean {
  if (isMeasure(vessel)) return (litresFactor(vessel.measure) ?? 0) === litresOfOne;
  const called = stems(vessel.text, lexicon.own.vocabulary.endings);
  return context.greenhouse.containers.some(
    ({ name, litres }) =>
      litres === litresOfOne && called.some((stem) => name.toLowerCase().endsWith(stem)),
  );
}

function isVessel(term: Term): boolean {
  const isOfContainer =
    isMeasure(term) && term.measure.unit !== null && 'litres' in term.measure.unit;
  return means(term, 'vessel') || (isOfContainer && term.measure.values[0] === 1);
}

function isOfSubject(term: Term): boolean {
  return (
    (term.kind === 'word' && term.word.ordinal !== null) ||
    means(
      term,
      'article',
      'pronoun',
      'filler',
      'said-no',
      'sorry',
      'both',
      'all',
      'last',
      'other-one',
    )
  );
}

function isPlural(
  term: Term | undefined,
  { vocabulary, phrases }: Frame['lexicon']['own'],
): boolean {
  if (term?.kind !== 'word') return false;
  return stems(term.text, vocabulary.endings).some(
    (stem) => stem !== term.text && phrases.get([stem])?.concepts.has('vessel') === true,
  );
}

/** What was in it, told as a share, in litres, or as both where they agree; null: something else is told. */
function litresInOne(frame: Frame, was: number, litresOfOne: number): number | null {
  const said = frame.terms.slice(was + 1);
  const amounts = said.flatMap((term, n): number[] => {
    const i = was + 1 + n;
    if (!isMeasure(term)) return [];
    const { measure } = term;
    if (isShare(term)) return [measure.values[0]! * litresOfOne];
    const isLitres = isVolume(measure) && !(measure.unit && 'litres' in measure.unit);
    return [isLitres ? (litresFactor(measureOf(frame, i)) ?? 0) * measure.values[0]! : Number.NaN];
  });
  const isPlain = said.every(
    (term) =>
      isMeasure(term) ||
      (term.kind === 'stop' && term.cut !== 'question') ||
      means(term, 'filler', 'about', 'merely', 'full', 'empty', 'so', 'that-is', 'pronoun', 'of'),
  );
  const [first, ...others] = amounts;
  const isSame = others.every((other) => Math.abs(other - first!) < 1e-6);
  return isPlain && first !== undefined && first > 0 && isSame ? first : null;
}
