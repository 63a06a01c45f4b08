import { localDateOf } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Arranging } from '../../understanding/arranging/arranging.ts';
import type { Mendable } from '../../understanding/arranging/mended.ts';
import { readArrangings } from '../../understanding/arranging/read-arrangings.ts';
import type { Context } from '../../understanding/context.ts';
import { openQuestions, withNamed, withoutQuestion, withQuestionsLapsed } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import type { Surroundings } from '../use-cases/hear-message.ts';
import { answerWhenBack, answerWhoGoes } from './answer-family.ts';
import { comeHome } from './come-home.ts';
import { goAfterAll } from './go-after-all.ts';
import { type AwayAsked, goAway, tellPlan } from './go-away.ts';
import { rosterOf } from './roster-of.ts';
import { settle } from './settle.ts';
import { tellHowTo } from './tell-how-to.ts';

/** What is left of a message for the reader of reports. */
export interface LeftToReport {
  /** null: nothing. */
  readonly text: string | null;
  /** What the message puts off: `all done, the bench tonight` closes no duty of it. */
  readonly putOff: readonly SystemId[];
}

/** Does what a message says about who goes when. */
export function hearArrangings(
  handling: Handling,
  text: string,
  around: Surroundings,
  context: Context,
): LeftToReport {
  const asked = askedOf(handling, around);
  const { arrangings, rest } = readArrangings(text, context, {
    awayWhen: asked?.kind === 'away-when',
    whoCovers: asked?.kind === 'who-covers',
    isAway: isAwaySettled(handling),
    mendable: mendableOf(handling, asked),
  });
  if (arrangings.length === 0) return { text, putOff: [] };
  handling.conversation = withQuestionsLapsed(handling.conversation);
  if (asked) handling.conversation = withoutQuestion(handling.conversation, asked.questionId);
  act(handling, arrangings, asked, around);
  if (rest !== null) nameSystems(handling, arrangings);
  return { text: rest, putOff: arrangings.flatMap(systemPutOff) };
}

function isAwaySettled({ standing, heard, nowMs }: Handling): boolean {
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  return rosterOf(standing).absences.some(
    ({ handle, until }) => handle === heard.member.handle && until >= today,
  );
}

/** What this member's last message settled, or was asked about it, while nothing else is talked about. */
function mendableOf(handling: Handling, asked: AwayAsked | null): Mendable | null {
  const { conversation, standing, heard, nowMs } = handling;
  const isElse = asked === null && openQuestions(conversation, heard.writtenAtMs).length > 0;
  const last = conversation.receipts[0]?.settled?.map((place) => standing.arrangements[place]!);
  if (isElse || !last) return null;
  const { handle } = heard.member;
  const { absences } = rosterOf(standing);
  const [first] = last.filter(({ atMs }) => nowMs - atMs <= putRightForMs);
  const absence = absences.findLast(
    (each) => each.handle === handle && nowMs - each.toldAtMs <= putRightForMs,
  );
  if (!first) return null;
  const isSaid = last.some(({ kind }) => kind === 'covers');
  const cover = asked?.kind === 'who-covers' ? 'asked' : isSaid ? 'said' : null;
  return { absence: absence ?? null, cover };
}

const putRightForMs = 30 * 60_000;

function systemPutOff(arranging: Arranging): readonly SystemId[] {
  const isPutOff = arranging.kind === 'claim' || arranging.kind === 'release';
  return isPutOff && arranging.system !== null ? [arranging.system] : [];
}

/** `going to change the buckets on Friday, ph 6.4 now`: what is left is of the system that was named. */
function nameSystems(handling: Handling, arrangings: readonly Arranging[]): void {
  const systems = arrangings.flatMap((each) =>
    'system' in each && each.system !== null ? [each.system] : [],
  );
  const { messageId, writtenAtMs: atMs } = handling.heard;
  handling.conversation = withNamed(handling.conversation, systems, { messageId, atMs });
}

function act(
  handling: Handling,
  arrangings: readonly Arranging[],
  asked: AwayAsked | null,
  { alerts }: Surroundings,
): void {
  const toSettle = arrangings.filter(
    ({ kind }) =>
      !['who-goes', 'plan', 'how-to', 'away', 'back', 'can-go', 'when-back', 'one-chore'].includes(
        kind,
      ),
  );
  if (toSettle.length > 0) settle(handling, toSettle, asked);
  for (const each of arrangings) {
    switch (each.kind) {
      case 'away':
        goAway(handling, each);
        break;
      case 'back':
        comeHome(handling, each, alerts);
        break;
      case 'can-go':
        goAfterAll(handling, each);
        break;
      case 'when-back':
        answerWhenBack(handling, each.handle);
        break;
      case 'one-chore': {
        const { handle, days } = each;
        handling.say({ kind: 'answer', answer: { kind: 'one-chore', handle, date: days.from } });
        break;
      }
      case 'who-goes':
        answerWhoGoes(handling, each.days);
        break;
      case 'plan':
        tellPlan(handling, each.days);
        break;
      case 'how-to':
        tellHowTo(handling, each, null, each.probes);
        break;
      default:
        break;
    }
  }
}

/** The bot's open question about an absence; the latest. */
function askedOf(handling: Handling, { repliedTo }: Surroundings): AwayAsked | null {
  const open = openQuestions(handling.conversation, handling.heard.writtenAtMs);
  const repliedId = repliedTo?.kind === 'question' ? repliedTo.questionId : null;
  const question =
    repliedId === null
      ? open[0]
      : handling.conversation.questions.find(({ questionId }) => questionId === repliedId);
  if (!question) return null;
  const { questionId, doubt } = question;
  const { reason } = doubt;
  if (reason.kind === 'away-when') return { kind: 'away-when', questionId };
  return reason.kind === 'who-covers'
    ? { kind: 'who-covers', questionId, days: { from: reason.from, until: reason.until } }
    : null;
}
