import { type LocalDate, localDateOf } from '../../greenhouse/local-time.ts';
import { daysAt } from '../arranging/days-said.ts';
import { piecesOf } from '../arranging/piece.ts';
import type { Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Ask } from '../statement.ts';

/** `anything for tomorrow`, `what is due this week`, `and on Friday?`: the work up to a day that is still to come. */
export function withDaysAhead(ask: Ask, frame: Frame, from: number, to: number): Ask {
  const isOfWork = ask.kind === 'what-is-due';
  if (!isOfWork && ask.kind !== 'unknown') return ask;
  const terms = frame.terms.slice(from, to);
  if (!terms.some(saysDay) || terms.some((term) => means(term, 'how-much'))) return ask;
  const by = lastDayAhead(frame, terms);
  if (by === null || !(isOfWork || terms.every(isOfDayAlone))) return ask;
  return { by, kind: 'what-is-due', system: isOfWork ? ask.system : null };
}

function saysDay(term: Term): boolean {
  return means(term, 'tomorrow', 'week', 'next') || (term.kind === 'word' && isOfCalendar(term));
}

function isOfCalendar({ word, text }: Extract<Term, { kind: 'word' }>): boolean {
  // `in the sun` is no Sunday.
  return (word.weekday !== null && text.length > 3) || word.month !== null;
}

function isOfDayAlone(term: Term): boolean {
  return (
    saysDay(term) ||
    term.kind === 'stop' ||
    means(term, 'and', 'what', 'this', 'on-day', 'place', 'filler', 'article')
  );
}

/** The last of the days that are spoken of; null: none is later than today. */
function lastDayAhead(frame: Frame, terms: readonly Term[]): LocalDate | null {
  const { greenhouse, writtenAtMs } = frame.context;
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  const text = frame.folded.text.slice(terms[0]!.from, terms.at(-1)!.to);
  const pieces = piecesOf(text, frame.lexicon);
  for (let i = 0; i < pieces.length; i++) {
    const said = daysAt(pieces, i, today);
    if (said && said.days.until > today) return said.days.until;
  }
  return null;
}
