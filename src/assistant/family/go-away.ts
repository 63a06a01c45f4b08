import type { ArrangementDraft } from '../../greenhouse/arrangement.ts';
import { daysBetween, localDateOf } from '../../greenhouse/local-time.ts';
import type { Arranging, Days } from '../../understanding/arranging/arranging.ts';
import { withQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import type { Button } from '../outgoing.ts';
import { may } from '../permissions.ts';
import { undoSettledRow } from '../use-cases/undo-settled-row.ts';
import { planOf } from './plan-of.ts';
import { refuse } from './refuse.ts';
import { rosterOf } from './roster-of.ts';

/** An open question of the bot about an absence. */
export type AwayAsked =
  | { readonly kind: 'away-when'; readonly questionId: string }
  | { readonly kind: 'who-covers'; readonly questionId: string; readonly days: Days };

/** So short an absence needs no talk about who steps in. */
const TALKED_ABOUT_FROM_DAYS = 2;

/** Settles an absence, asks who steps in, and ends with the plan. */
export function goAway(
  handling: Handling,
  { handle, days: said, isEndOnly }: Extract<Arranging, { kind: 'away' }>,
): void {
  const { member } = handling.heard;
  if (!may(member, 'settle-away', handle === member.handle)) return refuse(handling);
  if (!said) return askWhen(handling);
  const { greenhouse } = handling.standing;
  const today = localDateOf(handling.nowMs, greenhouse.timeZone);
  const known =
    isEndOnly &&
    rosterOf(handling.standing).absences.find(
      (each) => each.handle === handle && each.until >= today,
    );
  const days = known && known.from <= said.until ? { from: known.from, until: said.until } : said;
  if (days.until < today) return askWhen(handling);
  handling.settle([{ kind: 'away', handle, ...days }]);
  const isGrower = greenhouse.members.some(
    (each) => each.handle === handle && each.role === 'grower',
  );
  if (!isGrower) {
    const items = [{ kind: 'away', handle, ...days }] as const;
    handling.say({ kind: 'answer', answer: { kind: 'settled', items, instead: [] } }, [
      undoSettledRow(handling),
    ]);
    return;
  }
  const isLong = daysBetween(days.from, days.until) + 1 >= TALKED_ABOUT_FROM_DAYS;
  if (isLong) askOrPlan(handling, days);
  else tellPlan(handling, null, days);
}

/** Asks who steps in on days of an absence where that is open, or else tells the plan. */
export function askOrPlan(handling: Handling, days: Days): void {
  const helpers = helpersOf(handling);
  const isChoice =
    helpers.length > 1 || (helpers.length === 1 && handling.standing.unjoined.length > 0);
  if (isChoice && !isRotaKnown(handling) && !isCovered(handling, days)) {
    askWhoCovers(handling, days);
  } else tellPlan(handling, null, days);
}

function askWhen(handling: Handling): void {
  const questionId = `q${handling.nextOutgoingNo}`;
  const doubt = { reason: { kind: 'away-when' } as const, choices: [], waiting: null };
  remember(handling, questionId, doubt);
  handling.say({ kind: 'question', questionId, doubt });
}

/** A button for each helper, for all in turn, and for nobody. */
function askWhoCovers(handling: Handling, days: Days): void {
  const questionId = `q${handling.nextOutgoingNo}`;
  const helpers = helpersOf(handling);
  const reason = { kind: 'who-covers', ...days, helpers } as const;
  const doubt = { reason, choices: [], waiting: null };
  remember(handling, questionId, doubt);
  const cover = (handles: readonly string[]): ArrangementDraft => ({
    kind: 'covers',
    handles,
    ...days,
  });
  const button = (handles: readonly string[]): readonly Button[] => [
    {
      label: {
        kind: 'cover',
        handles,
        isAll: handles.length === helpers.length && handles.length > 1,
      },
      action: { kind: 'settle', drafts: [cover(handles)] },
    },
  ];
  handling.say({ kind: 'question', questionId, doubt }, [
    ...(helpers.length > 1 ? [button(helpers)] : []),
    ...helpers.map((handle) => button([handle])),
    button([]),
  ]);
}

function remember(
  handling: Handling,
  questionId: string,
  doubt: Parameters<typeof withQuestion>[1]['doubt'],
): void {
  handling.conversation = withQuestion(handling.conversation, {
    questionId,
    doubt,
    askedAtMs: handling.nowMs,
    lapsed: false,
    messageId: handling.heard.messageId,
  });
}

/**
 * The plan of the absence of a grower that has just been arranged, else of the present or next one, or of one that is
 * only thought of.
 */
export function tellPlan(
  handling: Handling,
  thought: Days | null,
  arranged: Days | null = null,
): void {
  const { standing, nowMs } = handling;
  const { greenhouse, arrangements } = standing;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const { handle: me } = handling.heard.member;
  const settled = thought
    ? [
        ...arrangements,
        { kind: 'away' as const, handle: me, ...thought, byHandle: me, atMs: nowMs },
      ]
    : arrangements;
  const roster = rosterOf(standing, settled);
  const growers = greenhouse.members
    .filter(({ role }) => role === 'grower')
    .map(({ handle }) => handle);
  const absences = roster.absences
    .filter(({ handle, until }) => until >= today && (growers.includes(handle) || handle === me))
    .toSorted((one, other) => (one.from < other.from ? -1 : 1));
  const isOfDays = ({ from, until }: Days): boolean =>
    arranged !== null && from <= arranged.until && arranged.from <= until;
  const absence = thought
    ? absences.find(({ from }) => from === thought.from)
    : (absences.find(isOfDays) ?? absences[0]);
  if (!absence) {
    handling.say({ kind: 'answer', answer: { kind: 'nobody-away' } });
    return;
  }
  const { handle } = absence;
  const plan = planOf(standing, roster, absence, nowMs);
  const isOwn = handle === me && !thought;
  handling.say(
    { kind: 'answer', answer: { kind: 'away-plan', handle, plan, isThought: thought !== null } },
    isOwn ? [newsButtons(me)] : [],
  );
}

/** One line a day, or nothing but alerts. */
function newsButtons(handle: string): readonly Button[] {
  return (['day', 'never'] as const).map((every) => ({
    label: { kind: 'news', every },
    action: { kind: 'settle', drafts: [{ kind: 'news', handle, every }] },
  }));
}

/** Those who can be asked: whoever has not joined yet would hear of nothing. */
export function helpersOf({ standing }: Handling): readonly string[] {
  return standing.greenhouse.members
    .filter(({ role, handle }) => role === 'helper' && !standing.unjoined.includes(handle))
    .map(({ handle }) => handle);
}

/** Said in the same message, or before. */
function isCovered({ standing }: Handling, { from, until }: Days): boolean {
  return standing.arrangements.some(
    (each) => each.kind === 'covers' && each.from <= from && until <= each.until,
  );
}

function isRotaKnown({ standing }: Handling): boolean {
  const roster = rosterOf(standing);
  return standing.greenhouse.members.some(
    ({ handle, role }) => role === 'helper' && roster.rotaOf(handle) !== null,
  );
}
