import type { EntryDraft, Trouble } from '../greenhouse/entry.ts';
import { askOf } from './asking/ask-of.ts';
import { systemsNamed } from './asking/asked-things.ts';
import { withTopic } from './asking/topic-asked.ts';
import { dangerAskedIn } from './dangers/danger-in.ts';
import type { Fact } from './fact.ts';
import { factsOf } from './facts-of.ts';
import type { Mood } from './moods/mood.ts';
import { moodsOf } from './moods/moods-of.ts';
import { nothingSaid } from './nothing-said.ts';
import type { Frame } from './reading/frame.ts';
import { asksOfTwo, recogniseDone } from './recognisers/done.ts';
import { harmlessIn } from './recognisers/trouble.ts';
import { namesOneOfSeveral } from './recognisers/work-named.ts';
import { withoutConflicts } from './refiners/conflicts.ts';
import { onDaysTold } from './refiners/days-told.ts';
import { asDutiesAnswered } from './refiners/duties-answered.ts';
import { inTheirOrder } from './refiners/in-their-order.ts';
import { withoutLowOnceFilled } from './refiners/low-and-filled.ts';
import { withEnds } from './refiners/outage-ends.ts';
import { withPartsOfIt } from './refiners/parts-of-it.ts';
import { withParts } from './refiners/parts-of-total.ts';
import { inPhaseOrder } from './refiners/phase-order.ts';
import { withPhases } from './refiners/phases.ts';
import { withoutRepeatedQuestions } from './refiners/repeated-questions.ts';
import { withoutSaidAgain } from './refiners/said-again.ts';
import { settleFacts } from './refiners/settle.ts';
import { withSizesAsked } from './refiners/size-of-system.ts';
import { statementsOf } from './refiners/statements-of.ts';
import { withTimesOfMoves } from './refiners/times-of-moves.ts';
import { inUnitSaidBefore } from './refiners/unit-said-before.ts';
import type { Ask, AskStatement, EntryStatement, Statement } from './statement.ts';
import { FactsInOrder } from './systems/facts-in-order.ts';
import { mentionsOf } from './systems/mention.ts';
import { scopesAmong } from './systems/system-of.ts';
import { findTimes } from './times/find-times.ts';

export function newStatements(frame: Frame): readonly Statement[] {
  const marks = findTimes(frame);
  const moods = moodsOf(frame, marks);
  const told = inUnitSaidBefore(withSizesAsked(frame, withParts(frame, factsOf(frame, moods))));
  const phased = withPhases(frame, withEnds(frame, withPartsOfIt(frame, told, moods), marks));
  const facts = withTimesOfMoves(frame, phased, marks);
  const inOrder = new FactsInOrder(facts);
  const mentions = mentionsOf(frame, inOrder);
  const scopeOf = scopesAmong(frame, inOrder, mentions);
  const settled = asDutiesAnswered(
    frame,
    onDaysTold(
      frame,
      inTheirOrder(frame, settleFacts(frame, facts, { mentions, marks, moods, scopeOf })),
      marks,
    ),
  );
  const phases = new Map<EntryDraft, Fact['phase']>();
  const found = withoutRepeatedQuestions(
    withoutLowOnceFilled(withoutSaidAgain(statementsOf(frame, settled, phases))),
  );
  const entries = withoutConflicts(found, (draft) => phases.get(draft));
  const done = onceAsked(
    recogniseDone(frame, moods).map((statement) => answeredDuties(frame, statement)),
  );
  const said = inPhaseOrder([...entries, ...done], (draft) => phases.get(draft));
  const statements = [...said, ...questions(frame, moods, said)];
  const read = statements.length > 0 ? statements : [nothingSaid(frame, moods, marks)];
  return withTopic(frame, read);
}

/** Without a round or a duty to answer, `done` is a question. */
function answeredDuties(frame: Frame, done: Statement): Statement {
  const { repliedTo, roundDuties } = frame.context;
  const isOfChore = done.kind === 'done' && done.chore !== null;
  const isAnswer = repliedTo !== null || roundDuties !== null || isOfChore;
  if (isAnswer && !isWhichTwo(frame, done) && !isOfOneOfSeveral(frame, done)) return done;
  return {
    kind: 'doubt',
    reason: { kind: 'which-duties' },
    choices: [],
    waiting: null,
    span: done.span,
    because: ['nothing to answer'],
  };
}

/** `did the pond, did the table`: one question of what is done. */
function onceAsked(done: readonly Statement[]): readonly Statement[] {
  const first = done.find(({ kind }) => kind === 'doubt');
  return done.filter((statement) => statement.kind !== 'doubt' || statement === first);
}

/** `did the tub`, `did everything but the tub`, where there are two. */
function isOfOneOfSeveral(frame: Frame, done: Statement): boolean {
  const namesNone = done.kind === 'done' && done.systems === null;
  return namesNone && namesOneOfSeveral(frame, { from: 0, to: frame.terms.length });
}

/** `did both`, where more than two are asked for, or one alone. */
function isWhichTwo(frame: Frame, done: Statement): boolean {
  const namesNone = done.kind === 'done' && done.systems === null && done.chore === null;
  return namesNone && frame.places.has('both', 0, frame.terms.length) && !asksOfTwo(frame);
}

/** Where something dangerous or foul is spoken of, `what do I do` asks for no list of duties. */
function whatToDoFirst(of: Trouble | null, ask: Ask): Ask {
  const isWide = ask.kind === 'what-is-due' || ask.kind === 'unknown' || ask.kind === 'help';
  return of && isWide ? { kind: 'first-aid', of } : ask;
}

/** `what should I do about the smell in the barrel`: what is amiss, in the question itself or told before it. */
function troubleAskedIn(frame: Frame): Trouble | null {
  const isAsked =
    frame.places.has('what', 0, frame.terms.length) ||
    frame.places.has('how', 0, frame.terms.length);
  return isAsked ? (harmlessIn(frame, { from: 0, to: frame.terms.length })?.trouble ?? null) : null;
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
  let trouble: { readonly asked: Trouble | null } | null = null;
  for (let i = 0; i < moods.length; i++) {
    if (moods[i] !== 'question' || moods[i - 1] === 'question') continue;
    let to = i;
    while (moods[to] === 'question') to++;
    trouble ??= { asked: dangerAskedIn(frame) ?? troubleAskedIn(frame) };
    const ask = whatToDoFirst(trouble.asked, askOf(frame, i, to, entries));
    const systems = systemsNamed(frame, i, to);
    asks.push({
      kind: 'ask',
      ask,
      ...(systems.length > 1 ? { systems } : {}),
      span: { from: frame.terms[i]!.from, to: frame.terms[to - 1]!.to },
      because: ['question'],
    });
  }
  return asks;
}
