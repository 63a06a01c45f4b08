import type { EntryDraft } from '../greenhouse/entry.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { readAnswer } from './answers/read-answer.ts';
import { askOf } from './asking/ask-of.ts';
import type { Context } from './context.ts';
import type { Fact } from './fact.ts';
import type { Mood } from './moods/mood.ts';
import { moodsOf } from './moods/moods-of.ts';
import { withoutCompounds } from './reading/compounds.ts';
import { type Folded, fold } from './reading/fold.ts';
import { type Frame, frameOf } from './reading/frame.ts';
import { languageOf, lexiconFor } from './reading/lexicon.ts';
import { readingOf } from './reading/look-up.ts';
import { putRight } from './reading/put-right.ts';
import { shadeMeasures } from './reading/shade-measures.ts';
import { means } from './reading/term.ts';
import { termsOf } from './reading/terms-of.ts';
import { tokenise } from './reading/tokenise.ts';
import { recogniseAeration } from './recognisers/aeration.ts';
import { recogniseCalibrations } from './recognisers/calibration.ts';
import { recogniseChanges } from './recognisers/change.ts';
import { choreIn } from './recognisers/chores.ts';
import { recogniseDone } from './recognisers/done.ts';
import { recogniseDoses } from './recognisers/dose.ts';
import { recogniseFailures } from './recognisers/duty-failed.ts';
import { recogniseFillTimes } from './recognisers/fill-time.ts';
import { recogniseHarvests } from './recognisers/harvest.ts';
import { recogniseLeftOvers } from './recognisers/left-over.ts';
import { recogniseLevels } from './recognisers/level.ts';
import { takeNotReadings } from './recognisers/not-readings.ts';
import { findNote, noteEntry } from './recognisers/note.ts';
import { recogniseOutages } from './recognisers/outage.ts';
import { recogniseReadings } from './recognisers/readings.ts';
import { recogniseShorthand } from './recognisers/shorthand.ts';
import { recogniseTakingBack } from './recognisers/taking-back.ts';
import { recogniseTopUps } from './recognisers/top-up.ts';
import { recogniseWellBeing } from './recognisers/well-being.ts';
import { asDutiesAnswered } from './refiners/duties-answered.ts';
import { withEnds } from './refiners/outage-ends.ts';
import { withPhases } from './refiners/phases.ts';
import { withoutRepeatedQuestions } from './refiners/repeated-questions.ts';
import { settleFacts } from './refiners/settle.ts';
import { inPhaseOrder, statementsOf, withoutConflicts } from './refiners/statements-of.ts';
import type {
  AskStatement,
  DoubtStatement,
  EntryStatement,
  Statement,
  Understanding,
} from './statement.ts';
import { mentionsOf } from './systems/mention.ts';
import { findTimes } from './times/find-times.ts';

/** Longer messages are no report from a greenhouse; only a note may be as long as it likes. */
const longestRead = 2000;
/** What a messenger lets people send at once. */
const longestKeptAsNote = 4096;

/** Reads one message against its context. Never throws, whatever the text. */
export function understand(text: string, context: Context): Understanding {
  const folded = fold(text.length > longestRead ? text.slice(0, longestRead) : text);
  const tokens = tokenise(folded.text);
  const lexicon = lexiconFor(
    context.greenhouse,
    languageOf(tokens, context.greenhouse, context.member.language),
  );
  const note = findNote(folded, lexicon);
  if (note && text.length > longestRead) {
    const whole = { ...folded, original: text };
    return {
      foldedText: folded.text,
      statements: [noteEntry(context, whole, lexicon, note)],
      named: [],
    };
  }
  if (text.length > longestRead)
    return { foldedText: folded.text, statements: [unclear(folded, context, text)], named: [] };
  const said = note ? tokens.filter(({ to }) => to <= note.from) : tokens;
  const read = withoutCompounds(said, lexicon);
  const terms = putRight(shadeMeasures(termsOf(readingOf(read, lexicon))));
  const frame = frameOf(context, lexicon, folded, terms);
  const { statements, named } =
    note && read.length === 0 ? { statements: [], named: [] } : readFrame(frame);
  if (note) {
    const rest = statements.filter(
      (statement) => statement.kind !== 'doubt' || statement.reason.kind !== 'unclear',
    );
    return {
      foldedText: folded.text,
      statements: [...rest, noteEntry(context, folded, lexicon, note)],
      named,
    };
  }
  return { foldedText: folded.text, statements, named };
}

interface Read {
  readonly statements: readonly Statement[];
  readonly named: readonly SystemId[];
}

function readFrame(frame: Frame): Read {
  const named = namesSaid(frame);
  const answer = readAnswer(frame);
  if (answer) return { statements: [answer], named };
  frame.taken.fill(false);
  frame.timed.fill(false);
  const back = recogniseTakingBack(frame);
  if (back) return { statements: [back], named };
  return { statements: newStatements(frame), named };
}

function namesSaid(frame: Frame): SystemId[] {
  return [
    ...new Set(
      frame.terms.flatMap((term) => (term.kind === 'name' && term.sure ? term.systems : [])),
    ),
  ];
}

function newStatements(frame: Frame): readonly Statement[] {
  const marks = findTimes(frame);
  const moods = moodsOf(frame, marks);
  const facts = withPhases(frame, withEnds(frame, factsOf(frame, moods), marks));
  const mentions = mentionsOf(frame, (i) => facts.some(({ at }) => at === i));
  const settled = asDutiesAnswered(frame, settleFacts(frame, facts, mentions, marks, moods));
  const phases = new Map<EntryDraft, Fact['phase']>();
  const found = withoutRepeatedQuestions(statementsOf(frame, settled, phases));
  const entries = withoutConflicts(found, (draft) => phases.get(draft));
  const done = recogniseDone(frame, moods).map((statement) => answeredDuties(frame, statement));
  const said = inPhaseOrder([...entries, ...done], (draft) => phases.get(draft));
  const statements = [...said, ...questions(frame, moods, said)];
  return statements.length > 0 ? statements : [nothingSaid(frame, moods)];
}

/** In this order: the more a pattern asks for, the earlier; each sees what those before it have told. */
const recognisers: readonly ((frame: Frame, told: readonly Fact[]) => Fact[])[] = [
  recogniseCalibrations,
  recogniseAeration,
  recogniseFillTimes,
  recogniseOutages,
  recogniseDoses,
  recogniseHarvests,
  recogniseChanges,
  recogniseTopUps,
  recogniseLevels,
  recogniseReadings,
  recogniseShorthand,
  recogniseLeftOvers,
];

function factsOf(frame: Frame, moods: readonly (Mood | null)[]): Fact[] {
  const facts = recogniseFailures(frame);
  takeNotReadings(frame);
  for (const recognise of recognisers) facts.push(...recognise(frame, facts));
  facts.push(...recogniseWellBeing(frame, moods));
  return facts.sort((a, b) => a.at - b.at);
}

/** Without a round or a duty to answer, `done` is a question. */
function answeredDuties(frame: Frame, done: Statement): Statement {
  const { repliedTo, roundDuties } = frame.context;
  if (repliedTo !== null || roundDuties !== null || (done.kind === 'done' && done.chore !== null))
    return done;
  return {
    kind: 'doubt',
    reason: { kind: 'which-duties' },
    choices: [],
    waiting: null,
    span: done.span,
    because: ['nothing to answer'],
  };
}

function questions(
  frame: Frame,
  moods: readonly (Mood | null)[],
  said: readonly Statement[],
): AskStatement[] {
  const entries = said.filter(
    (statement): statement is EntryStatement => statement.kind === 'entry',
  );
  const asks: AskStatement[] = [];
  for (let i = 0; i < moods.length; i++) {
    if (moods[i] !== 'question' || moods[i - 1] === 'question') continue;
    let to = i;
    while (moods[to] === 'question') to++;
    const ask = askOf(frame, i, to, entries);
    asks.push({
      kind: 'ask',
      ask,
      span: { from: frame.terms[i]!.from, to: frame.terms[to - 1]!.to },
      because: ['question'],
    });
  }
  return asks;
}

/** Nothing to log: a greeting, thanks, something plainly not done; or text that means nothing. */
function nothingSaid(frame: Frame, moods: readonly (Mood | null)[]): Statement {
  const span = { from: 0, to: frame.folded.text.length };
  const asksOnly =
    frame.terms.length > 0 &&
    frame.terms.every((term) => term.kind === 'stop' && term.cut === 'question');
  if (asksOnly) return { kind: 'ask', ask: { kind: 'help' }, span, because: ['question'] };
  const words = frame.terms.filter(({ kind }) => kind !== 'stop' && kind !== 'mark');
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
  if (words.some((term) => means(term, 'outside')))
    return { kind: 'passed-over', why: 'not-a-reading', span };
  const why = moods.find(
    (mood) => mood !== null && mood !== 'question' && mood !== 'queried' && mood !== 'others',
  );
  if (why && isAboutTheGreenhouse(frame))
    return { kind: 'passed-over', why: why as 'negation', span };
  return unclear(frame.folded, frame.context, frame.folded.original);
}

/** It speaks of a system, a quantity, a product or a deed. */
function isAboutTheGreenhouse(frame: Frame): boolean {
  if (frame.clauses.some((clause) => choreIn(frame, clause) !== null)) return true;
  return frame.terms.some(
    (term) =>
      term.kind === 'name' ||
      (term.kind === 'word' && (term.word.product !== null || term.word.probe !== null)) ||
      means(
        term,
        'ph',
        'ec',
        'temperature',
        'humidity',
        'level',
        'oxygen',
        'top-up',
        'changed-solution',
        'calibrate',
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

function unclear(folded: Folded, context: Context, original: string): DoubtStatement {
  const note: EntryDraft = {
    system: null,
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
