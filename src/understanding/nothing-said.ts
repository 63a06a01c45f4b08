import type { EntryDraft } from '../greenhouse/entry.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { askOf } from './asking/ask-of.ts';
import type { Context } from './context.ts';
import { couldNotAt, isDeed, isLabel } from './moods/clause-kinds.ts';
import type { Mood } from './moods/mood.ts';
import { opensAsAsked } from './moods/opens-as-asked.ts';
import type { Folded } from './reading/fold.ts';
import { type Frame, isMeasure } from './reading/frame.ts';
import { means, type Term } from './reading/term.ts';
import { choreIn } from './recognisers/chores.ts';
import { systemOfNote } from './recognisers/note.ts';
import type { DoubtStatement, Span, Statement } from './statement.ts';
import type { TimeMark } from './times/time-mark.ts';
import { workTold } from './work-told.ts';

/** What a messenger lets people send at once. */
const longestKeptAsNote = 4096;

/** Nothing to log: a greeting, thanks, something plainly not done; or text that means nothing. */
export function nothingSaid(
  frame: Frame,
  moods: readonly (Mood | null)[],
  marks: readonly TimeMark[],
): Statement {
  const span = { from: 0, to: frame.folded.text.length };
  const asksOnly =
    frame.terms.length > 0 &&
    frame.terms.every((term) => term.kind === 'stop' && term.cut === 'question');
  if (asksOnly) return { kind: 'ask', ask: { kind: 'help' }, span, because: ['question'] };
  const words = frame.terms.filter(({ kind }) => kind !== 'stop' && kind !== 'mark');
  if (saysAllChecked(words)) return whichWork(span);
  if (
    words.length > 0 &&
    words.every((term) =>
      means(term, 'greeting', 'filler', 'thanks', 'yes', 'said-no', 'member', 'all', 'chatter'),
    )
  ) {
    const thanks = words.some((term) => means(term, 'thanks'));
    const greeting = words.some((term) => means(term, 'greeting'));
    return {
      kind: 'passed-over',
      why: thanks ? 'thanks' : greeting ? 'greeting' : 'chatter',
      span,
    };
  }
  // `nothing yet`, `noch nix`, `nothing needed`: only that there is nothing to tell.
  const isNothing = words.some((term) => means(term, 'not', 'did-not'));
  if (isNothing && words.every((term) => means(term, 'not', 'did-not', ...besideNothing)))
    return { kind: 'passed-over', why: 'negation', span };
  if (words.some((term) => means(term, 'outside')))
    return { kind: 'passed-over', why: 'not-a-reading', span };
  const why = moods.find(
    (mood) => mood !== null && mood !== 'question' && mood !== 'queried' && mood !== 'others',
  );
  if (why && opensAsAsked(frame)) {
    const ask = askOf(frame, 0, frame.terms.length, []);
    return { kind: 'ask', ask, span, because: ['question'] };
  }
  if (why && !tellsValue(frame, moods) && isAboutTheGreenhouse(frame))
    return { kind: 'passed-over', why: why as 'negation', span };
  const asNote = unclear(
    frame.folded,
    frame.context,
    frame.folded.original,
    systemOfNote(frame.terms),
  );
  const work = workTold(frame, moods, marks);
  if (work) return { ...work, choices: [...work.choices, ...asNote.choices] };
  const saysCannot = frame.clauses.some(
    (clause) => clause.opens === 'start' && couldNotAt(frame, clause) !== null,
  );
  return saysCannot ? { ...asNote, reason: { kind: 'which-failed' } } : asNote;
}

/** `ec left 2.0, forgot the tub`: a value beside its label that nobody takes back, though it could not be read. */
function tellsValue(frame: Frame, moods: readonly (Mood | null)[]): boolean {
  return frame.clauses.some(
    (clause) =>
      frame.places.hasWhere(isLabel, clause.from, clause.to) &&
      frame.places
        .within(isMeasure, clause.from, clause.to)
        .some((i) => moods[i] === null && !frame.taken[i] && !frame.timed[i]),
  );
}

/** What was not there, where nothing was. */
const besideNothing = [
  'filler',
  'need',
  'took',
  'use',
  'was',
  'has',
  'today',
  'do',
  'going',
  'job',
  'due',
] as const;

/** `checked everything`: whether the checks that are due were made, or all was looked at. */
function saysAllChecked(words: readonly Term[]): boolean {
  return (
    words.some((term) => means(term, 'checked')) &&
    words.some((term) => means(term, 'all', 'both')) &&
    words.every((term) =>
      means(term, 'checked', 'all', 'both', 'filler', 'self', 'pronoun', 'has', 'of', 'today'),
    )
  );
}

function whichWork(span: Span): DoubtStatement {
  return {
    kind: 'doubt',
    reason: { kind: 'which-duties' },
    choices: [],
    waiting: null,
    span,
    because: ['checked, and nothing measured'],
  };
}

/** It speaks of a system, a quantity, a product or a deed. */
function isAboutTheGreenhouse(frame: Frame): boolean {
  if (frame.clauses.some((clause) => choreIn(frame, clause) !== null)) return true;
  return frame.terms.some(
    (term) =>
      term.kind === 'name' ||
      isDeed(term) ||
      (term.kind === 'word' && (term.word.product !== null || term.word.probe !== null)) ||
      means(
        term,
        'ph',
        'ec',
        'temperature',
        'humidity',
        'level',
        'oxygen',
        'solution',
        'reservoir',
        'power',
        'pump',
        'air-pump',
        'outside',
        'forecast',
      ),
  );
}

export function unclear(
  folded: Folded,
  context: Context,
  original: string,
  /** The one system that it names. */
  system: SystemId | null = null,
): DoubtStatement {
  const note: EntryDraft = {
    system,
    quantity: 'note',
    value: 1,
    atMs: context.writtenAtMs,
    note: original.trim(),
  };
  const keep = original.length <= longestKeptAsNote && note.note !== '';
  return {
    kind: 'doubt',
    reason: { kind: 'unclear' },
    choices: keep ? [{ label: { kind: 'keep-as-note' }, drafts: [note] }] : [],
    waiting: null,
    span: { from: 0, to: folded.text.length },
    because: ['nothing understood'],
  };
}
