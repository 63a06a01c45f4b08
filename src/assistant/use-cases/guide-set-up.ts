import type { GuideProblem, GuideStep } from '../../greenhouse/set-up/guide-step.ts';
import { methods } from '../../greenhouse/system.ts';
import { understand } from '../../understanding/understand.ts';
import { wishWords } from '../../understanding/vocabulary/wishes/wish-languages.ts';
import {
  type GuideAnswer,
  readGuideAnswer,
  readMended,
} from '../../understanding/wishes/read-guide-answer.ts';
import { readWish } from '../../understanding/wishes/read-wish.ts';
import { answerStep } from '../guide/answer-step.ts';
import { askedStep, type Guide, type GuideOption, newGuide } from '../guide/guide.ts';
import { guidedGreenhouse } from '../guide/guided-greenhouse.ts';
import type { Handling } from '../handling.ts';
import type { Button } from '../outgoing.ts';
import { may } from '../permissions.ts';
import { contextOf } from '../reading-context.ts';
import { makeChange, proposeChange } from './change-set-up.ts';
import type { Surroundings } from './hear-message.ts';

/** A guided set-up that was left alone for so long is over. */
const guideForMs = 3 * 3_600_000;

/** Begins to ask for a whole greenhouse, or for one more system. */
export function startGuide(handling: Handling, of: Guide['of']): void {
  if (!may(handling.heard.member, 'wish-guide', true)) {
    handling.say({ kind: 'refusal', because: { kind: 'growers-change-set-up' } });
    return;
  }
  ask(handling, newGuide(of, handling.nowMs));
}

/** Takes a message as an answer to the guided set-up; false: it is about something else. */
export function hearGuide(handling: Handling, text: string, around: Surroundings): boolean {
  const { guide } = handling.conversation;
  if (!guide) return false;
  const { member } = handling.heard;
  if (handling.nowMs - guide.askedAtMs > guideForMs) {
    endGuide(handling);
    return false;
  }
  const greenhouse = handling.spoken;
  const { step } = guide.now;
  const answer = readGuideAnswer(step, text, greenhouse, member, handling.nowMs);
  const isFree = answer?.kind === 'text' || (answer?.kind === 'method' && answer.isInPassing);
  if ((!answer || isFree) && mend(handling, guide, text)) return true;
  if ((!answer || isFree) && isAboutWork(handling, text, around)) return false;
  const wish = answer ? null : readWish(text, greenhouse, member, handling.nowMs);
  // `what is that?` is about the question that is open.
  if (wish && wish.kind !== 'introduction') return false;
  if (answer) take(handling, guide, answer);
  else ask(handling, guide, { kind: misunderstood(step) });
  return true;
}

function misunderstood(step: GuideStep['kind']): GuideProblem['kind'] {
  if (step === 'place') return 'unknown-place';
  return step === 'method' ? 'which-method' : 'not-understood';
}

/** `wait, it's 200 not 20`: takes the answer just given for another; false: it was not that. */
function mend(handling: Handling, guide: Guide, text: string): boolean {
  const last = guide.past.at(-1);
  if (!last) return false;
  const answer = readMended(
    last.step,
    text,
    handling.spoken,
    handling.heard.member,
    handling.nowMs,
  );
  if (!answer) return false;
  take(handling, { ...guide, now: last, past: guide.past.slice(0, -1) }, answer);
  return true;
}

/** A button of the guided set-up; false: it was for a step that is past. */
export function pressGuide(handling: Handling, answers: number, option: GuideOption): boolean {
  const { guide } = handling.conversation;
  if (guide?.past.length !== answers) return false;
  take(handling, guide, option);
  return true;
}

/** In the midst of it, what is plainly a report or a question is heard as one. */
function isAboutWork(handling: Handling, text: string, around: Surroundings): boolean {
  return understand(text, contextOf(handling, around)).statements.some((statement) => {
    // `what do you mean?` is about the question that is open.
    if (statement.kind === 'ask') return statement.ask.kind !== 'unknown';
    return ['entry', 'taking-back', 'done'].includes(statement.kind);
  });
}

function take(handling: Handling, guide: Guide, answer: GuideAnswer): void {
  switch (answer.kind) {
    case 'stop':
    case 'no':
      endGuide(handling);
      handling.say({ kind: 'answer', answer: { kind: 'set-up-left' } });
      return;
    case 'back': {
      const before = guide.past.at(-1);
      if (!before) return ask(handling, guide, { kind: 'nothing-before' });
      return ask(handling, { ...guide, now: before, past: guide.past.slice(0, -1) });
    }
    case 'anew':
      return ask(handling, newGuide(guide.of, handling.nowMs));
    case 'yes':
      return finish(handling, guide);
    default:
  }
  const { greenhouse } = handling.standing;
  const { methodNames } = wishWords[handling.heard.member.language];
  const answered = answerStep(guide, answer, greenhouse, methodNames);
  if (answered.kind === 'problem') return ask(handling, guide, answered.problem);
  const next = { ...guide, now: answered.draft, past: [...guide.past, guide.now] };
  const added = guide.of === 'system' ? answered.draft.systems[0] : undefined;
  if (!added) return ask(handling, next);
  endGuide(handling);
  proposeChange(handling, { kind: 'system-added', system: added });
}

function finish(handling: Handling, guide: Guide): void {
  endGuide(handling);
  const greenhouse = preview(handling, guide);
  makeChange(handling, { kind: 'set-up-anew', greenhouse }, handling.heard.messageId);
}

function ask(handling: Handling, guide: Guide, problem: GuideProblem | null = null): void {
  handling.conversation = {
    ...handling.conversation,
    guide: { ...guide, askedAtMs: handling.nowMs },
  };
  const { greenhouse } = handling.standing;
  const asked = askedStep(guide.now, greenhouse, preview(handling, guide));
  // One more system is no first of several.
  const step = asked.kind === 'method' && guide.of === 'system' ? { ...asked, position: 2 } : asked;
  const questionId = `q${handling.nextOutgoingNo}`;
  handling.say(
    {
      kind: 'question',
      questionId,
      doubt: { reason: { kind: 'guide', step, problem }, choices: [], waiting: null },
    },
    buttonsOf(step, guide),
  );
}

function preview(handling: Handling, { now }: Guide) {
  const { meterNames } = wishWords[handling.heard.member.language];
  return guidedGreenhouse(now, handling.standing.greenhouse, meterNames);
}

function endGuide(handling: Handling): void {
  const { guide: _guide, ...conversation } = handling.conversation;
  handling.conversation = conversation;
}

function buttonsOf(step: GuideStep, guide: Guide): readonly (readonly Button[])[] {
  const answers = guide.past.length;
  const button = (option: GuideOption): Button => ({
    label: { kind: 'guide', option },
    action: { kind: 'guide', answers, option },
  });
  const back: readonly Button[] = answers > 0 ? [button({ kind: 'back' })] : [];
  const kinds = methods.map((method): readonly Button[] => [button({ kind: 'method', method })]);
  switch (step.kind) {
    case 'method':
      return [...kinds, ...(back.length > 0 ? [back] : [])];
    case 'another':
      return [[button({ kind: 'finish' }), ...back], ...kinds];
    case 'summary':
      return [[button({ kind: 'yes' }), ...back]];
    case 'brim':
      return back.length > 0 ? [back] : [];
    default:
      return [[button({ kind: 'skip' }), ...back]];
  }
}
