import { localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import { endOfSentence, type Frame, isMeasure } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { nothingSaid } from './building.ts';
import { workOut } from './day-time.ts';
import type { TimeMark } from './time-mark.ts';

const msPer = { second: 1000, minute: 60_000, hour: 3_600_000 };

/** How long it is that an amount of seconds, minutes or hours says; null: it is none. */
export function spanMs(measure: Measure): number | null {
  const unit = (['second', 'minute', 'hour'] as const).find((each) => unitIs(measure, each));
  return unit === undefined ? null : measure.values[0]! * msPer[unit];
}

/** `an hour ago`, `10 min ago`, `vor einer Stunde`, `for 2 hours`. */
export function agoAt(frame: Frame, i: number): TimeMark | null {
  let start = i;
  const before = frame.terms[i];
  const goesBefore = means(before, 'ago-before');
  const forSoLong = means(before, 'for-so-long') && isOutageSentence(frame, i);
  if (goesBefore || forSoLong) start++;
  while (means(frame.terms[start], 'about', 'ish') && start < i + 3) start++;
  const term = frame.terms[start];
  if (!isMeasure(term)) return null;
  let end = start;
  if (!goesBefore && !forSoLong) {
    if (means(frame.terms[end + 1], 'ish')) end++;
    if (!means(frame.terms[end + 1], 'ago')) return null;
    end++;
  }
  const { measure } = term;
  const { writtenAtMs, greenhouse } = frame.context;
  const base = {
    from: i,
    to: end,
    clause: frame.clauseOf[i]!,
    since: forSoLong,
    until: false,
    askFrom: null,
    written: frame.folded.text.slice(before!.from, frame.terms[end]!.to),
  };
  const ms = spanMs(measure);
  if (ms !== null)
    return { atMs: writtenAtMs - ms, vague: measure.approximate || isAbout(frame, start), ...base };
  const days = unitIs(measure, 'day') ? 1 : unitIs(measure, 'week') ? 7 : 0;
  if (days === 0) return null;
  const day = plusDays(
    localDateOf(writtenAtMs, greenhouse.timeZone),
    -Math.round(measure.values[0]! * days),
  );
  return { ...base, ...workOut({ ...nothingSaid, day }, greenhouse, writtenAtMs) };
}

function isAbout(frame: Frame, i: number): boolean {
  return means(frame.terms[i - 1], 'about');
}

const supplyWords = ['broken', 'no-power', 'no-bubbles', 'no-flow', 'working'] as const;

/** Something failed or came back in the sentence, or that was asked and nothing else is spoken of. */
export function isOutageSentence(frame: Frame, i: number): boolean {
  if (isAskedHowLongOut(frame)) return true;
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  const from = frame.sentences[clause.sentence]![0]!.from;
  const to = endOfSentence(frame, clause);
  return supplyWords.some((concept) => frame.places.has(concept, from, to));
}

/** `from 2 to 4`, where the bot has asked when something was out. */
function isAskedHowLongOut({ context, terms }: Frame): boolean {
  const { repliedTo, openQuestions } = context;
  const asked = repliedTo?.kind === 'question' ? [repliedTo] : repliedTo ? [] : openQuestions;
  return (
    asked.some(({ doubt }) => doubt.reason.kind === 'how-long-out') &&
    !terms.some((term) => term.kind === 'name' || isLabel(term) || isDeed(term))
  );
}
