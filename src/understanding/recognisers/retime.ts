import { type Frame, frameOf, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import { nothingSaid } from '../times/building.ts';
import { workOut } from '../times/day-time.ts';
import { findTimes } from '../times/find-times.ts';

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly atMs: number;
  readonly vague: boolean;
}

/** `that was yesterday`, `das war um 8`: nothing but a time, of something told before. */
export function retime(frame: Frame): TakingBack | null {
  const left = withoutTimeGivenUp(frame);
  return retimeTo(left ?? frame, left !== null);
}

function retimeTo(frame: Frame, givesUp: boolean): TakingBack | null {
  const isBack = isOfWhatCameBack(frame);
  const isSince = isSinceWhen(frame);
  if (!givesUp && !isBack && !isSince && !saysThatItWas(frame)) return null;
  const time = onlyTime(frame) ?? hourAlone(frame);
  const { writtenAtMs, existsSinceMs } = frame.context;
  if (!time || time.atMs >= writtenAtMs || time.atMs < existsSinceMs) return null;
  const saysElse = frame.terms.some(
    (term, i) =>
      (i < time.from || i > time.to) &&
      !mayStandBeside(term) &&
      !isOfJustLogged(frame, term) &&
      !(isBack && saysBack(term)) &&
      !(isSince && means(term, 'since', 'about', 'ish')),
  );
  const isVague = time.vague || (isSince && frame.places.hasAny(['about', 'ish']));
  return saysElse ? null : { kind: 'retime', atMs: time.atMs, isVague };
}

/** `at 7, not now`, `at 7 not 8`: without the time that is given up; null: none is. */
function withoutTimeGivenUp({ context, lexicon, folded, terms, places }: Frame): Frame | null {
  const not = terms.findIndex((term) => means(term, 'not'));
  if (not < 0) return null;
  // A number is an hour where the other one is said to be.
  const isHour = places.hasWhere(isAtHour, 0, terms.length);
  let to = not + 1;
  while (to < terms.length && (isTimeWord(terms[to]) || (isHour && isHourTerm(terms[to])))) to++;
  const isWhole = to > not + 1 && (to === terms.length || terms[to]!.kind === 'stop');
  if (!isWhole) return null;
  const after = terms[to]?.kind === 'stop' ? to + 1 : to;
  const rest = [...terms.slice(0, not), ...terms.slice(after)];
  return frameOf(context, lexicon, folded, rest);
}

function isAtHour(term: Term): boolean {
  return means(term, 'at-hour') || term.kind === 'clock';
}

function isTimeWord(term: Term | undefined): boolean {
  return term?.kind === 'clock' || means(term, 'now', 'today', 'just-now', 'yesterday', 'at-hour');
}

function isHourTerm(term: Term | undefined): boolean {
  return isMeasure(term) && term.measure.unit === null && term.measure.values[0]! <= 24;
}

/** `came back at 7:20 actually`, where nothing is out any more and what came back was told just now. */
function isOfWhatCameBack({ context, terms }: Frame): boolean {
  const [last, ...others] = context.justLogged ?? [];
  if (last?.quantity !== 'restored' || others.length > 0 || context.outSince) return false;
  return terms.some((term) => means(term, 'working') && !means(term, 'broken'));
}

/** `since 8, I think`, right after it was told that something is out and not since when. */
function isSinceWhen({ context, terms }: Frame): boolean {
  const [last, ...others] = context.justLogged ?? [];
  if (last?.quantity !== 'outage' || others.length > 0) return false;
  const isOfNow = context.writtenAtMs - last.atMs <= toldOfNowMs;
  return (
    isOfNow &&
    means(
      terms.find(({ kind }) => kind !== 'stop'),
      'since',
    )
  );
}

/** What was told to be so when it was written was written no longer ago. */
const toldOfNowMs = 10 * 60_000;

/** `that with the gutters was at 12`, `das mit der Rinne war um 12`: all that the last message told is of that one. */
function isOfJustLogged({ context, terms }: Frame, term: Term): boolean {
  if (term.kind === 'name') {
    const logged = context.justLogged ?? [];
    const [only, ...others] = term.systems;
    return (
      logged.length > 0 && others.length === 0 && logged.every(({ system }) => system === only)
    );
  }
  return means(term, 'with', 'for-somebody') && terms.some(({ kind }) => kind === 'name');
}

function saysBack(term: Term): boolean {
  const isWorking = means(term, 'working') && !means(term, 'broken');
  return isWorking || means(term, 'power', 'after-all');
}

/** `that was`, `das war`, or the verb alone at the start. */
function saysThatItWas({ terms }: Frame): boolean {
  if (means(terms[0], 'was')) return true;
  const isPast = terms.some((term) => means(term, 'was'));
  // `die waren von gestern`: the article stands for what was told.
  if (means(terms[0], 'article') && means(terms[1], 'was')) return true;
  return terms.some((term) => means(term, 'meant') || (isPast && means(term, 'pronoun')));
}

function onlyTime(frame: Frame): Stretch | null {
  const marks = findTimes(frame);
  frame.taken.fill(false);
  frame.timed.fill(false);
  const [mark] = marks;
  return mark && marks.length === 1 && mark.askFrom === null && !mark.until ? mark : null;
}

/** `that was at 8`: an hour, where a reading would need its word. */
function hourAlone({ terms, context }: Frame): Stretch | null {
  const at = terms.findIndex((term) => isMeasure(term));
  const term = terms[at];
  if (!isMeasure(term) || !means(terms[at - 1], 'at-hour')) return null;
  const { unit, whole, values } = term.measure;
  const hour = values[0]!;
  if (unit !== null || !whole || hour < 1 || hour > 24) return null;
  const said = { ...nothingSaid, minutes: hour * 60, eitherHalf: true };
  const { atMs, vague } = workOut(said, context.greenhouse, context.writtenAtMs);
  return { from: at - 1, to: at, atMs, vague };
}

function mayStandBeside(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question';
  return means(
    term,
    'pronoun',
    'was',
    'link',
    'filler',
    'sorry',
    'no-wait',
    'said-no',
    'meant',
    'article',
    'place',
    'of',
  );
}
