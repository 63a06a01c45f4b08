import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { OpenQuestion } from '../context.ts';
import type { Doubt } from '../doubt.ts';
import type { Fact } from '../fact.ts';
import { measureAt } from '../numbers/compose-measure.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { readingOf, unitAt } from '../reading/look-up.ts';
import { isMark, isUnknown, means } from '../reading/term.ts';
import { tokenise } from '../reading/tokenise.ts';
import { answeredCalibrations } from '../recognisers/calibration.ts';
import { valueOf } from '../refiners/value-of.ts';
import type { AnsweredStatement, Choice, DoubtStatement, Statement } from '../statement.ts';
import { findTimes } from '../times/find-times.ts';

/** What a short message says as an answer to one of the bot's open questions; null if it is no answer. */
export function readAnswer(frame: Frame): Statement | null {
  for (const question of questionsOf(frame)) {
    const answer = answerTo(frame, question);
    if (answer) return answer;
  }
  return null;
}

function questionsOf(frame: Frame): readonly OpenQuestion[] {
  const { repliedTo, openQuestions } = frame.context;
  if (repliedTo?.kind === 'question')
    return [{ questionId: repliedTo.questionId, doubt: repliedTo.doubt }];
  return repliedTo === null ? openQuestions : [];
}

/** What of an answer a message holds. */
interface Said {
  readonly measure: Measure | null;
  readonly systems: readonly SystemId[];
  readonly ordinal: number | null;
  readonly yes: boolean;
  readonly no: boolean;
  readonly each: boolean;
  readonly inAll: boolean;
  readonly quantity: Quantity | null;
  readonly timeMs: number | null;
  readonly unit: string | null;
}

function answerTo(frame: Frame, question: OpenQuestion): Statement | null {
  const { doubt, questionId } = question;
  const answered = (drafts: readonly EntryDraft[]): AnsweredStatement => ({
    kind: 'answered',
    questionId,
    drafts,
    span: { from: 0, to: frame.folded.text.length },
  });
  const calibrated = calibrations(frame, doubt);
  if (calibrated) return answered(calibrated);
  const said = whatIsSaid(frame);
  if (!said) return null;
  if (said.no) return answered([]);
  const chosen = choose(doubt.choices, said);
  if (chosen) return answered(chosen.drafts);
  return fill(frame, doubt, said, answered);
}

/** What a probe read in its references, where that was asked. */
function calibrations(frame: Frame, doubt: Doubt): EntryDraft[] | null {
  const waiting = doubt.waiting?.drafts[0];
  if (waiting?.quantity !== 'calibration') return null;
  const facts = answeredCalibrations(frame, waiting.probe);
  return (
    facts?.flatMap((fact): EntryDraft[] => {
      if (fact.amount.kind !== 'value') return [];
      const { probe, read } = fact;
      return [
        {
          ...waiting,
          value: fact.amount.value,
          ...(probe === undefined ? {} : { probe }),
          ...(read === undefined ? {} : { read }),
        },
      ];
    }) ?? null
  );
}

/** The parts of an answer; null if the message says anything else. */
function whatIsSaid(frame: Frame): Said | null {
  const marks = findTimes(frame);
  const isTime = marks.map(({ from, to }) => [from, to] as const);
  const rest = frame.terms
    .map((term, i) => ({ term, i }))
    .filter(({ i }) => !isTime.some(([from, to]) => i >= from && i <= to));
  const measures = rest.filter(({ term }) => isMeasure(term));
  const names = rest.flatMap(({ term }) => (term.kind === 'name' ? term.systems : []));
  const now = rest.some(({ term }) => means(term, 'just-now', 'now'));
  const unit = unitAlone(frame);
  if (measures.length > 1 || marks.length > 1) return release(frame, null);
  for (const { term } of rest) {
    if (term.kind === 'stop') {
      if (term.cut === 'question') return release(frame, null);
      continue;
    }
    if (isMeasure(term) || term.kind === 'name' || isMark(term, '-', ':', '*', '#', '%', '°'))
      continue;
    if (unit !== null) continue;
    if (isUnknown(term) || term.kind !== 'word') return release(frame, null);
    const small = means(
      term,
      'article',
      'filler',
      'place',
      'pronoun',
      'yes',
      'said-no',
      'each',
      'both',
      'in-all',
      'all',
      'about',
      'ish',
      'link',
      'self',
      'just-now',
      'now',
      'thanks',
      'at',
      'since',
      'at-hour',
    );
    const names = means(
      term,
      'ph',
      'ec',
      'temperature',
      'level',
      'humidity',
      'left-over',
      'top-up',
      'add',
      'has',
      'fill',
      'water',
      'air',
      'inside',
      'oxygen',
      'solution',
    );
    if (!small && !names && term.word.ordinal === null) return release(frame, null);
  }
  const first = measures[0]?.term;
  const ordinal =
    rest.flatMap(({ term }) =>
      term.kind === 'word' && term.word.ordinal !== null ? [term.word.ordinal] : [],
    )[0] ?? null;
  const some = (...concepts: Parameters<typeof means>[1][]) =>
    rest.some(({ term }) => means(term, ...concepts));
  return {
    measure: isMeasure(first) ? first.measure : null,
    systems: [...new Set(names)],
    ordinal: names.length > 0 ? null : ordinal,
    yes: some('yes') && measures.length === 0 && names.length === 0,
    no: some('said-no') && measures.length === 0 && names.length === 0,
    each: some('each', 'both'),
    inAll: some('in-all'),
    quantity: quantitySaid(some),
    timeMs: marks[0]?.atMs ?? (now && rest.length <= 2 ? frame.context.writtenAtMs : null),
    unit,
  };
}

/** Times are taken while looking for an answer; where there is none, the message is read afresh. */
function release(frame: Frame, nothing: null): null {
  frame.taken.fill(false);
  return nothing;
}

function quantitySaid(
  some: (...concepts: Parameters<typeof means>[1][]) => boolean,
): Quantity | null {
  if (some('ph')) return 'ph';
  if (some('ec')) return 'ec';
  if (some('humidity')) return 'humidity';
  if (some('oxygen')) return 'dissolved-oxygen';
  if (some('top-up', 'fill')) return 'top-up';
  if (some('temperature')) return some('air', 'inside') ? 'air-temperature' : 'water-temperature';
  if (some('level', 'left-over')) return 'level';
  return some('add') ? 'top-up' : null;
}

/** A unit said by itself: `litres`. */
function unitAlone(frame: Frame): string | null {
  const reading = readingOf(tokenise(frame.folded.text), frame.lexicon);
  const unit = unitAt(reading, 0);
  return unit?.length === reading.tokens.length ? frame.folded.text : null;
}

function choose(choices: readonly Choice[], said: Said): Choice | null {
  const offered = choices.filter(
    ({ label }) => label.kind !== 'keep-as-note' || choices.length === 1,
  );
  if (said.yes)
    return (
      offered.find(({ label }) => label.kind === 'yes') ??
      (offered.length === 1 ? offered[0]! : null)
    );
  if (said.ordinal !== null)
    return (said.ordinal < 0 ? offered.at(-1) : offered[said.ordinal - 1]) ?? null;
  const fitting = offered.filter((choice) => fits(choice, said));
  return fitting.length === 1 ? fitting[0]! : null;
}

function fits({ label }: Choice, said: Said): boolean {
  switch (label.kind) {
    case 'system':
      return said.measure === null && said.systems.length === 1 && said.systems[0] === label.system;
    case 'systems':
      return (
        said.measure === null &&
        said.systems.length === label.systems.length &&
        label.systems.every((system) => said.systems.includes(system))
      );
    case 'quantity':
      return said.measure === null && said.systems.length === 0 && said.quantity === label.quantity;
    case 'value':
      return (
        said.measure !== null &&
        isBare(said.measure) &&
        said.measure.values.some((value) => Math.abs(value - label.value) < 1e-6)
      );
    case 'each':
      return said.each && said.measure === null;
    case 'in-all':
      return said.inAll && said.measure === null;
    case 'time':
      return said.timeMs === label.atMs && said.measure === null;
    case 'amount':
    case 'yes':
    case 'no':
    case 'one-top-up':
    case 'two-top-ups':
    case 'keep-as-note':
      return false;
  }
}

type Answered = (drafts: readonly EntryDraft[]) => AnsweredStatement;

/** Puts what was said into the drafts that wait for it. */
function fill(frame: Frame, doubt: Doubt, said: Said, answered: Answered): Statement | null {
  const { waiting, reason } = doubt;
  if (!waiting) return null;
  const { greenhouse } = frame.context;
  const systemsSaid = greenhouse.systems.filter(({ id }) => said.systems.includes(id));
  if (waiting.for === 'quantity') return narrow(frame, doubt, waiting.drafts, said, answered);
  if (waiting.for === 'time') {
    if (said.timeMs === null || said.measure) return null;
    const { timeMs } = said;
    return answered(waiting.drafts.map((draft) => ({ ...draft, atMs: timeMs })));
  }
  if (waiting.for === 'system') {
    if (said.measure || systemsSaid.length !== 1) return null;
    return answered(waiting.drafts.map((draft) => ({ ...draft, system: systemsSaid[0]!.id })));
  }
  if (waiting.drafts.some(({ quantity }) => quantity === 'calibration')) return null;
  const measure =
    said.measure ??
    (said.unit !== null && reason.kind === 'which-unit'
      ? withUnit(frame, reason.value, said.unit)
      : null);
  if (
    !measure ||
    (said.systems.length > 0 &&
      !waiting.drafts.some(({ system }) => system !== null && said.systems.includes(system)))
  )
    return null;
  return fillValue(frame, doubt, waiting.drafts, measure, answered);
}

/** `95` and `litres` make `95 litres`. */
function withUnit(frame: Frame, value: string, unit: string): Measure | null {
  const reading = readingOf(tokenise(`${value} ${unit}`), frame.lexicon);
  return measureAt(reading, 0, false, false)?.value ?? null;
}

function fillValue(
  frame: Frame,
  doubt: Doubt,
  waiting: readonly EntryDraft[],
  measure: Measure,
  answered: Answered,
): Statement {
  const { greenhouse } = frame.context;
  const drafts: EntryDraft[] = [];
  for (const draft of waiting) {
    const system = greenhouse.systems.find(({ id }) => id === draft.system) ?? null;
    const valued = valueOf(asFact(draft, measure), system, greenhouse.units);
    if (valued.kind === 'asked')
      return askAgain(frame, doubt, draft, valued.reason, valued.options);
    drafts.push({
      ...draft,
      value: valued.value,
      ...(valued.saidAs ? { saidAs: valued.saidAs } : {}),
      ...(measure.approximate ? { approximate: true } : {}),
    });
  }
  return answered(drafts);
}

/** A bare number answers in the unit that the question is about. */
function asFact(draft: EntryDraft, measure: Measure): Fact {
  const { quantity } = draft;
  const unit =
    isBare(measure) && quantity === 'dose'
      ? { id: 'ml' as const, shy: false }
      : isBare(measure) && quantity === 'fill-time'
        ? { id: 'minute' as const, shy: false }
        : isBare(measure) && quantity === 'aeration'
          ? { id: 'minute-an-hour' as const, shy: false }
          : measure.unit;
  const bareVolume =
    isBare(measure) &&
    (quantity === 'top-up' || quantity === 'reservoir-change' || quantity === 'level');
  const asVolume = bareVolume && quantity === 'level' ? { id: 'l' as const, shy: false } : unit;
  return {
    quantity,
    amount: { kind: 'measure', measure: { ...measure, unit: asVolume } },
    at: 0,
    from: 0,
    to: 0,
    ...(bareVolume && quantity !== 'level' ? { bareVolume } : {}),
    because: 'answer',
  };
}

function askAgain(
  frame: Frame,
  doubt: Doubt,
  draft: EntryDraft,
  reason: DoubtStatement['reason'],
  options: readonly number[],
): DoubtStatement {
  return {
    kind: 'doubt',
    reason,
    choices: options.map(
      (value): Choice => ({
        label: { kind: 'value', quantity: draft.quantity, value },
        drafts: [{ ...draft, value }],
      }),
    ),
    waiting: doubt.waiting,
    span: { from: 0, to: frame.folded.text.length },
    because: ['answer that needs asking about'],
  };
}

/** Of all that a bare amount could be, what the answer leaves: `added, to the dwc`. */
function narrow(
  frame: Frame,
  doubt: Doubt,
  drafts: readonly EntryDraft[],
  said: Said,
  answered: Answered,
): Statement | null {
  if (said.measure && !isVolume(said.measure)) return null;
  if (said.measure || (said.quantity === null && said.systems.length === 0)) return null;
  const left = drafts.filter(
    (draft) =>
      (said.quantity === null || draft.quantity === said.quantity) &&
      (said.systems.length === 0 || (draft.system !== null && said.systems.includes(draft.system))),
  );
  if (left.length === 0) return null;
  if (left.length === 1) return answered(left);
  const bySystem = new Set(left.map(({ system }) => system)).size > 1;
  return {
    kind: 'doubt',
    reason: bySystem ? { kind: 'which-system', quantity: said.quantity } : doubt.reason,
    choices: left.map(
      (draft): Choice => ({
        label:
          bySystem && draft.system
            ? { kind: 'system', system: draft.system }
            : { kind: 'quantity', quantity: draft.quantity },
        drafts: [draft],
      }),
    ),
    waiting: { for: 'quantity', drafts: left },
    span: { from: 0, to: frame.folded.text.length },
    because: ['answered in part'],
  };
}
