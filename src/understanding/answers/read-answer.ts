import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import type { OpenQuestion } from '../context.ts';
import type { Doubt } from '../doubt.ts';
import { measureAt } from '../numbers/compose-measure.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { readingOf } from '../reading/look-up.ts';
import { means } from '../reading/term.ts';
import { tokenise } from '../reading/tokenise.ts';
import { answeredCalibrations } from '../recognisers/calibration.ts';
import { leastTopUpL } from '../recognisers/some-product.ts';
import type { AnsweredStatement, Choice, DoubtReason, Statement } from '../statement.ts';
import { isBackBeforeOut } from '../times/back-before.ts';
import { answersInTurn } from './answers-in-turn.ts';
import { choose, chooseAll } from './choose.ts';
import { doneByAnother } from './done-by-another.ts';
import { eachItsOwn, type OwnAmount, oneAndOthers } from './each-its-own.ts';
import { fillSystem } from './fill-system.ts';
import { fillSystems } from './fill-systems.ts';
import { type Answered, fillValue } from './fill-value.ts';
import { failedAfterAll, outageAnswered, outageDated } from './how-long-out.ts';
import { answerOfSeveral, isOfSeveral } from './of-several.ts';
import { pickByNumber } from './pick-by-number.ts';
import { productTold } from './product-told.ts';
import { isOfUnit, isSomethingElse } from './something-else.ts';
import { stoppedSince } from './stopped-since.ts';
import { valuesOfSystems } from './values-of-systems.ts';
import { type Said, whatIsSaid } from './what-is-said.ts';
import { again, awaitsSystemToo, fillWithSystem } from './without-system.ts';

/** What a short message says as an answer to one of the bot's open questions; null if it is no answer. */
export function readAnswer(frame: Frame): readonly Statement[] | null {
  const questions = questionsOf(frame);
  const ofEach = answerToEach(frame);
  if (ofEach) return ofEach;
  // A value that one question offers on a button answers that one, whichever was asked last.
  const offering = questions.length > 1 ? questions.filter((one) => offers(frame, one)) : [];
  for (const question of offering.length === 1 ? offering : questions) {
    const answer = ownAmountsFor(frame, question) ?? answerTo(frame, question);
    if (answer) return insteadOf(question, answer);
  }
  return null;
}

/** What answers each of several questions alike; null: it is of one of them. */
function answerToEach(frame: Frame): readonly Statement[] | null {
  const { repliedTo, openQuestions } = frame.context;
  if (repliedTo !== null && repliedTo.kind !== 'question') return null;
  if (openQuestions.length < 2) return null;
  const inTurn = repliedTo === null ? answersInTurn(frame, answerTo) : null;
  if (inTurn) return inTurn.flatMap(({ question, said }) => insteadOf(question, said));
  const alike = unitOfEach(frame) ?? quantityOfEach(frame) ?? addedEach(frame);
  if (!alike) return null;
  const answers = alike.map((question) => ({ question, said: answerTo(frame, question) }));
  if (answers.some(({ said }) => said === null)) return null;
  return answers.flatMap(({ question, said }) => insteadOf(question, said!));
}

/** `both ml`, `jeweils ml`, where the unit of several amounts was asked one by one. */
function unitOfEach(frame: Frame): readonly OpenQuestion[] | null {
  const ofUnit = openOf(frame, 'which-unit');
  if (ofUnit.length < 2 || !frame.places.hasAny(['both', 'each', 'all'])) return null;
  return whatIsSaid(frame)?.unit == null ? null : ofUnit;
}

/** `ph both`, where it was asked of several numbers one by one what they are of. */
function quantityOfEach(frame: Frame): readonly OpenQuestion[] | null {
  const asked = openOf(frame, 'which-quantity');
  if (asked.length < 2 || !frame.places.hasAny(['both', 'each', 'all'])) return null;
  const said = whatIsSaid(frame);
  const isOfEach = said?.measure === null && said.systems.length === 0 && said.quantity !== null;
  return isOfEach ? asked.toReversed() : null;
}

/** `added`, where it was asked of several amounts one by one whether they were: of all of them. */
function addedEach(frame: Frame): readonly OpenQuestion[] | null {
  const asked = openOf(frame, 'in-it-or-added');
  if (asked.length < 2 || frame.context.repliedTo !== null) return null;
  const said = whatIsSaid(frame);
  const isOfNone = said?.measure === null && said.systems.length === 0 && said.ordinal === null;
  // In the order in which they were asked.
  return isOfNone && said.quantity !== null && !said.no ? asked.toReversed() : null;
}

function openOf({ context }: Frame, kind: DoubtReason['kind']): readonly OpenQuestion[] {
  return context.openQuestions.filter(({ doubt }) => doubt.reason.kind === kind);
}

/** What is still asked takes the place of the question that it came from. */
export function insteadOf(
  { questionId }: OpenQuestion,
  statements: readonly Statement[],
): readonly Statement[] {
  return statements.map((one) => (one.kind === 'doubt' ? { ...one, insteadOf: questionId } : one));
}

/** The question that words of an answer were meant for and do not fit: it is asked once more. */
export function questionMissed(frame: Frame): Statement | null {
  return questionsOf(frame).length > 0 && whatIsSaid(frame) ? questionAsked(frame) : null;
}

/** The question that a member has before them, asked once more. */
export function questionAsked(frame: Frame): Statement | null {
  const [question] = questionsOf(frame);
  return question ? { ...again(frame, question.doubt), insteadOf: question.questionId } : null;
}

function offers(frame: Frame, { doubt }: OpenQuestion): boolean {
  const said = whatIsSaid(frame);
  return said?.measure != null && choose(doubt.choices, said) !== null;
}

export function questionsOf(frame: Frame): readonly OpenQuestion[] {
  const { repliedTo, openQuestions } = frame.context;
  if (repliedTo?.kind === 'question')
    return [{ questionId: repliedTo.questionId, doubt: repliedTo.doubt }];
  return repliedTo === null ? openQuestions : [];
}

export function answering(frame: Frame, { questionId }: OpenQuestion): Answered {
  const span = { from: 0, to: frame.folded.text.length };
  return (drafts): AnsweredStatement => ({ kind: 'answered', questionId, drafts, span });
}

/** `jars 2, gutters 8`: an amount for every system asked about. */
function ownAmountsFor(frame: Frame, question: OpenQuestion): readonly Statement[] | null {
  const own = eachItsOwn(frame, question.doubt) ?? oneAndOthers(frame, question.doubt);
  return own && fillOwn(frame, question.doubt, own, answering(frame, question));
}

function answerTo(frame: Frame, question: OpenQuestion): readonly Statement[] | null {
  const { doubt } = question;
  const answered = answering(frame, question);
  const calibrated = calibrations(frame, doubt);
  if (calibrated) return [answered(calibrated)];
  const byAnother = doneByAnother(frame, doubt, answered);
  if (byAnother) return [byAnother];
  const stopped = stoppedSince(frame, doubt);
  if (stopped) return [stopped];
  const said = whatIsSaid(frame);
  if (doubt.reason.kind === 'how-long-out' && !said?.no) {
    const outage = outageAnswered(frame, doubt, said);
    if (outage) return [answered(outage)];
    const dated = outageDated(frame, doubt, said);
    if (dated) return [dated];
    return said?.yes ? [again(frame, doubt)] : null;
  }
  if (doubt.reason.kind === 'switched-or-failed') {
    const out = failedAfterAll(frame, doubt);
    if (out) return [answered(out)];
    if (said?.yes) return [again(frame, doubt)];
  }
  const ofSeveral = isOfSeveral(doubt) ? answerOfSeveral(frame, doubt, said, answered) : null;
  if (ofSeveral) return ofSeveral;
  if (!said) return null;
  if (doubt.reason.kind === 'which-duties') {
    const named = duties(frame, said);
    if (named || doubt.choices.length === 0) return listed(named);
  }
  if (said.no && !saysWhichAllTheSame(doubt, said)) return [answered([])];
  if (doubt.reason.kind === 'which-system' && doubt.reason.ofSeveral)
    return valuesOfSystems(frame, doubt, said, answered);
  if (isSomethingElse(doubt, said, frame.context.greenhouse.units)) return null;
  // `total` of an amount that may be of each or of both together: how it is parted is still to be told.
  const isShared = doubt.reason.kind === 'shared-amount' && said.inAll && said.measure === null;
  if (isShared && !doubt.choices.some(({ label }) => label.kind === 'in-all'))
    return [again(frame, doubt)];
  const product = productTold(frame, doubt, said, answered);
  if (product) return product;
  const dosed = dosesOf(doubt, said);
  if (dosed) return [answered(dosed)];
  const ofUnit = chooseByUnit(frame, doubt, said, answered);
  if (ofUnit) return [ofUnit];
  const chosen =
    choose(doubt.choices, said) ??
    (mayPutRight(frame, doubt)
      ? null
      : pickByNumber(doubt, said, frame.context.greenhouse.systems));
  if (chosen) return [answered(chosen.drafts)];
  const each = doubt.choices.find(({ label }) => label.kind === 'each');
  if (each && said.each && said.measure)
    return [fillValue(frame, doubt, each.drafts, said.measure, true, answered)];
  if (awaitsSystemToo(doubt)) return listed(fillWithSystem(frame, doubt, said, answered));
  const all = chooseAll(doubt.choices, said);
  if (all) return [answered(all)];
  const system = systemFor(frame, doubt, said);
  if (system) return fillSystem(frame, doubt, doubt.waiting!.drafts, system, answered);
  const several = fillSystems(frame, doubt, said, answered);
  if (several) return [several];
  return listed(fill(frame, doubt, said, answered));
}

/** `no 3`, where an amount is asked about: as many of it, and not the third button. */
function mayPutRight({ terms }: Frame, { choices, waiting }: Doubt): boolean {
  if (!means(terms[0], 'said-no') || !isMeasure(terms[1])) return false;
  const drafts = [...(waiting?.drafts ?? []), ...choices.flatMap((choice) => choice.drafts)];
  return drafts.length > 0 && drafts.every(({ quantity }) => isPoured(quantity));
}

/** Which product it was, where it was asked what so many millilitres were of. */
function dosesOf({ reason, choices }: Doubt, { product, measure }: Said): EntryDraft[] | null {
  if (reason.kind !== 'which-quantity' || product === null || measure !== null) return null;
  const poured = choices.flatMap(({ drafts }) =>
    drafts.filter(({ quantity, value }) => quantity === 'top-up' && value < leastTopUpL),
  );
  return poured.length === 0
    ? null
    : poured.map((draft) => ({ ...draft, quantity: 'dose', value: draft.value * 1000, product }));
}

function listed(statement: Statement | null): readonly Statement[] | null {
  return statement && [statement];
}

/** The one system that was told, where that was waited for. */
function systemFor(frame: Frame, { waiting }: Doubt, said: Said): System | null {
  if (waiting?.for !== 'system' || said.measure) return null;
  const isPicked = waiting.drafts.every(({ quantity }) => quantity === 'harvest');
  const meant = isPicked && said.cropOf !== null ? [said.cropOf] : said.systems;
  const named = frame.context.greenhouse.systems.filter(({ id }) => meant.includes(id));
  return named.length === 1 ? named[0]! : null;
}

/** Which work is done, where that was asked: `the jars`. */
function duties(frame: Frame, { systems, measure, quantity, no }: Said): Statement | null {
  if (no || systems.length === 0 || measure !== null || quantity !== null) return null;
  const span = { from: 0, to: frame.folded.text.length };
  return {
    kind: 'done',
    systems,
    duty: null,
    chore: null,
    except: [],
    span,
    because: ['answered'],
  };
}

/** Puts each amount into its own draft; those that fit are logged, of the others the first is asked about. */
function fillOwn(
  frame: Frame,
  doubt: Doubt,
  own: readonly OwnAmount[],
  answered: Answered,
): readonly Statement[] {
  const filled = own.map(({ draft, measure }) =>
    fillValue(
      frame,
      { ...doubt, waiting: { for: 'value', drafts: [draft] } },
      [draft],
      measure,
      true,
      answered,
    ),
  );
  const drafts = filled.flatMap((one) => (one.kind === 'answered' ? one.drafts : []));
  const misfits = filled.filter(({ kind }) => kind !== 'answered');
  return [...(drafts.length > 0 ? [answered(drafts)] : []), ...misfits];
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

/** Puts what was said into the drafts that wait for it. */
export function fill(frame: Frame, doubt: Doubt, said: Said, answered: Answered): Statement | null {
  const { waiting, reason } = doubt;
  if (!waiting) return null;
  // `now 6.3`: what was measured, and no amount of what was added.
  const before = frame.terms.slice(0, Math.max(frame.terms.findIndex(isMeasure), 0));
  if (
    before.some((term) => means(term, 'now')) &&
    waiting.drafts.some(({ quantity }) => isPoured(quantity))
  )
    return null;
  if (waiting.for === 'quantity') return narrow(frame, doubt, waiting.drafts, said, answered);
  if (waiting.for === 'time') {
    if (said.timeMs === null || said.measure) return null;
    const { timeMs } = said;
    const drafts = waiting.drafts.map((draft) => ({ ...draft, atMs: timeMs }));
    const isTooSoon = drafts.some((draft) => isBackBeforeOut(frame.context, draft));
    return isTooSoon ? again(frame, doubt) : answered(drafts);
  }
  if (waiting.for === 'system') return null;
  if (waiting.drafts.some(({ quantity }) => quantity === 'calibration')) return null;
  const measure = said.measure ?? unitSaid(frame, reason, said);
  // `ml` after `EC 55`: no unit of what was asked about.
  const isMisfit =
    said.measure === null && measure !== null && !fitsAny(frame, waiting.drafts, measure);
  if (
    !measure ||
    isMisfit ||
    (said.systems.length > 0 &&
      !waiting.drafts.some(({ system }) => system !== null && said.systems.includes(system)))
  )
    return null;
  // `90`, where it is asked what 95 is: of what unit is still to be told.
  const isOfLevel = waiting.drafts.every(({ quantity }) => quantity === 'level');
  if (reason.kind === 'which-unit' && isOfLevel && isBare(measure))
    return again(frame, {
      ...doubt,
      reason: { ...reason, value: measure.written },
      choices: [],
    });
  // `ml` after `A 20 B 20`: each has its number already.
  const isOfEach = said.each || (said.measure === null && areProducts(waiting.drafts));
  return fillValue(frame, doubt, waiting.drafts, measure, isOfEach, answered);
}

/** Doses of products that differ, in one system. */
function areProducts(drafts: readonly EntryDraft[]): boolean {
  const products = new Set(drafts.map(({ product }) => product));
  const systems = new Set(drafts.map(({ system }) => system));
  return systems.size === 1 && products.size === drafts.length && !products.has(undefined);
}

function isPoured(quantity: Quantity): boolean {
  return quantity === 'dose' || quantity === 'top-up' || quantity === 'reservoir-change';
}

function fitsAny(frame: Frame, drafts: readonly EntryDraft[], measure: Measure): boolean {
  const { units } = frame.context.greenhouse;
  return drafts.some(({ quantity }) => isOfUnit(quantity, measure, units));
}

/** `degrees`, where it was asked what a number is of: of all on offer, what has that unit. */
function chooseByUnit(
  frame: Frame,
  doubt: Doubt,
  { unit }: Said,
  answered: Answered,
): Statement | null {
  const { reason, choices } = doubt;
  if (unit === null || reason.kind !== 'which-quantity') return null;
  const measure = withUnit(frame, reason.value, unit);
  const fitting = choices.filter(
    ({ label, drafts }) =>
      label.kind === 'quantity' && measure !== null && fitsAny(frame, drafts, measure),
  );
  const [only] = fitting;
  return only && measure && fitting.length === 1
    ? fillValue(frame, doubt, only.drafts, measure, true, answered)
    : null;
}

/** The unit alone of a number that was asked about: which it was, or what made it possible. */
function unitSaid(frame: Frame, reason: DoubtReason, { unit }: Said): Measure | null {
  if (unit === null) return null;
  if (reason.kind === 'which-unit') return withUnit(frame, reason.value, unit);
  return reason.kind === 'out-of-range' ? withUnit(frame, String(reason.value), unit) : null;
}

/** `95` and `litres` make `95 litres`. */
function withUnit(frame: Frame, value: string, unit: string): Measure | null {
  const reading = readingOf(tokenise(`${value} ${unit}`), frame.lexicon);
  const measure = measureAt(reading, 0);
  // `three buckets` and `litres` make no amount.
  return measure?.length === reading.tokens.length ? measure.value : null;
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

/** `no, it was in there already`, where it is asked whether it was added: that is the answer. */
function saysWhichAllTheSame({ reason }: Doubt, { quantity }: Said): boolean {
  return reason.kind === 'in-it-or-added' && quantity !== null;
}
