import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { OpenQuestion } from '../context.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, measureOf } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { DoubtReason, Statement, TakingBack } from '../statement.ts';
import { correctedValue, isCorrectedBy, slipsAway } from './corrected-value.ts';
import { fillValue } from './fill-value.ts';
import { answering, insteadOf, questionsOf } from './read-answer.ts';
import { isOfUnit } from './something-else.ts';
import { again } from './without-system.ts';

type Correcting = Extract<TakingBack, { kind: 'correct' }>;

/**
 * `oops, 6.2` where the value told last is still asked about: it is put right in the question, and nothing that was
 * logged before. Null: it is of something else.
 */
export function questionPutRight(frame: Frame, back: TakingBack): readonly Statement[] | null {
  if (back.kind !== 'correct' || back.onDate !== undefined) return null;
  for (const question of questionsOf(frame)) {
    const { waiting } = question.doubt;
    const statement =
      waiting?.for === 'value' ? valueTold(frame, question, back) : toldAnew(frame, question, back);
    if (statement) return insteadOf(question, [statement]);
  }
  return null;
}

/** What a number far away from the one told would put right is something else. */
const mostSlips = 2;

/** The value that is waited for. */
function valueTold(frame: Frame, question: OpenQuestion, back: Correcting): Statement | null {
  const { doubt } = question;
  const drafts = doubt.waiting?.drafts ?? [];
  const [first] = drafts;
  const at = frame.terms.findIndex(isMeasure);
  if (!first || at < 0 || back.from !== null || !isOfSystem(back, drafts)) return null;
  const measure = measureOf(frame, at);
  const ofLevel = first.quantity === 'level' ? levelTold(frame, question, measure, back) : null;
  if (ofLevel) return ofLevel;
  const reading = back.to.find(({ quantity }) => quantity === first.quantity);
  const isAmountAsked = doubt.reason.kind === 'missing-amount';
  const isOfIt = isOfUnit(first.quantity, measure, frame.context.greenhouse.units);
  if (!reading || !(isOfIt || isAmountAsked)) return null;
  const offered = doubt.choices.flatMap((choice) => choice.drafts);
  const isNear = offered.some((draft) => slipsAway(draft, reading.value) <= mostSlips);
  if (!isAmountAsked && !isNear) return null;
  const filled = fillValue(frame, doubt, drafts, measure, false, answering(frame, question));
  return filled.kind === 'answered' || isAmountAsked ? filled : null;
}

/** `sorry, 90` where it is asked what 95 is: of what unit is still to be told, unless that is said. */
function levelTold(
  frame: Frame,
  question: OpenQuestion,
  measure: Measure,
  { level }: Correcting,
): Statement | null {
  const { doubt } = question;
  if (level)
    return fillValue(
      frame,
      doubt,
      doubt.waiting!.drafts,
      measure,
      false,
      answering(frame, question),
    );
  if (doubt.reason.kind !== 'which-unit' || !isBare(measure)) return null;
  const reason = { ...doubt.reason, value: measure.written };
  return again(frame, { ...doubt, reason, choices: [] });
}

/** The same question, with the better value. */
function toldAnew(frame: Frame, question: OpenQuestion, back: Correcting): Statement | null {
  const { doubt } = question;
  const { waiting, choices, reason } = doubt;
  const drafts = [...(waiting?.drafts ?? []), ...choices.flatMap((choice) => choice.drafts)];
  if (drafts.length === 0 || !isOfSystem(back, drafts)) return null;
  const meant = meantOf(frame, drafts, back);
  if (!meant) return null;
  const system = systemOf(frame, meant);
  if (correctedValue(meant, back, system) === 'unsure')
    return again(frame, {
      reason: { kind: 'which-unit', quantity: meant.quantity, value: String(back.said) },
      choices: [],
      waiting: null,
    });
  const better = (draft: EntryDraft): EntryDraft => {
    // Of a number of which nobody knows what it is, each thing that it may be is put right.
    const isOpen = reason.kind === 'which-quantity';
    const isSame = isOpen || (draft.value === meant.value && isAlike(draft, meant));
    const value = isSame ? correctedValue(draft, back, systemOf(frame, draft)) : null;
    if (value === null || value === 'unsure') return draft;
    const { saidAs: _as, saidIn: _in, ...rest } = draft;
    return { ...rest, ...value };
  };
  const yes = choices.find(({ label }) => label.kind === 'yes');
  if (doubt.reason.kind === 'is-it-a-reading' && yes?.drafts.length === 1 && saysWhatItIs(frame))
    return answering(frame, question)(yes.drafts.map(better));
  return again(frame, {
    reason: withValue(frame, reason, better(meant).value),
    choices: choices.map((choice) => ({ ...choice, drafts: choice.drafts.map(better) })),
    waiting: waiting && { ...waiting, drafts: waiting.drafts.map(better) },
  });
}

/** `no, it is 5.9`, where it was asked whether 5.4 is to be logged: a value of which nobody is in doubt. */
function saysWhatItIs({ terms }: Frame): boolean {
  const opening = terms.find((term) => !means(term, 'filler') || means(term, 'said-no'));
  const asks = terms.some((term) => term.kind === 'stop' && term.cut === 'question');
  return means(opening, 'said-no') && !asks;
}

/** Of all that is asked about, what the correction comes nearest to. */
function meantOf(frame: Frame, drafts: readonly EntryDraft[], back: Correcting): EntryDraft | null {
  const near = drafts.flatMap((draft) => {
    const system = systemOf(frame, draft);
    const value = correctedValue(draft, back, system);
    if (value === null) return [];
    if (back.from) {
      const isIt = isCorrectedBy(draft, back, system);
      return isIt ? [{ draft, away: 0 }] : [];
    }
    const away = slipsAway(draft, value === 'unsure' ? back.said : value.value);
    return value === 'unsure' || away <= mostSlips ? [{ draft, away }] : [];
  });
  near.sort((a, b) => a.away - b.away);
  return near[0]?.draft ?? null;
}

/** Of the same quantity, or the water that is there or was added. */
function isAlike(draft: EntryDraft, meant: EntryDraft): boolean {
  const isWater = ({ quantity }: EntryDraft): boolean =>
    quantity === 'level' || quantity === 'top-up';
  return draft.quantity === meant.quantity || (isWater(draft) && isWater(meant));
}

function withValue(frame: Frame, reason: DoubtReason, litres: number): DoubtReason {
  if (reason.kind === 'which-quantity') {
    const at = frame.terms.findIndex(isMeasure);
    return at < 0 ? reason : { ...reason, value: measureOf(frame, at).written };
  }
  return reason.kind === 'in-it-or-added' ? { ...reason, litres } : reason;
}

function isOfSystem({ system }: Correcting, drafts: readonly EntryDraft[]): boolean {
  return system === null || drafts.some((draft) => draft.system === system);
}

function systemOf({ context }: Frame, { system }: EntryDraft): System | null {
  return context.greenhouse.systems.find(({ id }) => id === system) ?? null;
}
