import type { ArrangementDraft } from '../../greenhouse/arrangement.ts';
import { type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Roster } from '../../planning/roster.ts';
import type { Arranging, Days } from '../../understanding/arranging/arranging.ts';
import { answerQuestion } from '../answers/answer-question.ts';
import { recentSystem } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { may } from '../permissions.ts';
import { undoSettledRow } from '../use-cases/undo-settled-row.ts';
import { type AwayAsked, helpersOf, tellPlan } from './go-away.ts';
import { answerMyTurns } from './my-turns.ts';
import { refuse } from './refuse.ts';
import { rosterOf } from './roster-of.ts';

/** Settles what was said, says so in one answer, and tells the plan anew where it changes one. */
export function settle(
  handling: Handling,
  arrangings: readonly Arranging[],
  asked: AwayAsked | null,
): void {
  const drafts: ArrangementDraft[] = [];
  for (const each of arrangings) drafts.push(...draftsOf(handling, each, asked, drafts));
  if (drafts.length === 0) return answerMyTurns(handling);
  const hadTurn = isTurnToday(handling);
  const isSettled = settleDrafts(handling, drafts);
  const isPlanMeant = asked?.kind === 'who-covers' && handling.heard.member.role === 'grower';
  if (isSettled && isPlanMeant) tellPlan(handling, null, asked.days);
  else if (isSettled && !hadTurn && isTurnToday(handling)) tellOfToday(handling);
}

function isTurnToday({ standing, nowMs, heard }: Handling): boolean {
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  return rosterOf(standing).coversOn(today).includes(heard.member.handle);
}

/** To a helper who takes a day over after its round: others had it. */
function tellOfToday(handling: Handling): void {
  const { standing, nowMs, heard } = handling;
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  if (heard.member.role !== 'helper' || standing.rounds.at(-1)?.date !== today) return;
  answerQuestion(handling, { kind: 'what-is-due', system: null }, []);
}

/** The same for what a button settles; false: it is not for this member to settle. */
export function settleDrafts(handling: Handling, drafts: readonly ArrangementDraft[]): boolean {
  const before = rosterOf(handling.standing);
  const { member } = handling.heard;
  const isAllowed = (draft: ArrangementDraft): boolean =>
    may(member, `settle-${draft.kind}`, isOwn(draft, member.handle, before));
  if (!drafts.every(isAllowed)) {
    // `I can't on Friday, Priya goes`: that they cannot holds, whoever goes.
    const hindered = drafts.filter((draft) => draft.kind === 'cannot-go' && isAllowed(draft));
    if (hindered.length > 0) settleDrafts(handling, hindered);
    refuse(handling);
    return false;
  }
  const instead = drafts.flatMap((draft) => {
    if (draft.kind !== 'claim' || draft.system === null) return [];
    const earlier = before.claimsOn(draft.on).find(({ system }) => system === draft.system);
    return earlier && earlier.handle !== draft.handle ? [{ handle: earlier.handle }] : [];
  });
  handling.settle(drafts);
  handling.say(
    {
      kind: 'answer',
      answer: { kind: 'settled', items: drafts, instead, ...unjoinedIn(handling, drafts) },
    },
    [undoSettledRow(handling)],
  );
  return true;
}

function unjoinedIn({ standing }: Handling, drafts: readonly ArrangementDraft[]) {
  const named = drafts.flatMap((draft) => {
    if (draft.kind === 'covers') return draft.handles;
    return draft.kind === 'claim' ? [draft.handle] : [];
  });
  const unjoined = [...new Set(named)].filter((handle) => standing.unjoined.includes(handle));
  return unjoined.length === 0 ? {} : { unjoined };
}

function isTurnOf(me: string, { from, until }: Days, roster: Roster): boolean {
  for (let date = from; date <= until; date = plusDays(date, 1)) {
    if (roster.coversOn(date)[0] !== me) return false;
  }
  return true;
}

/** Whether it is about the member alone. */
function isOwn(draft: ArrangementDraft, me: string, before: Roster): boolean {
  switch (draft.kind) {
    case 'covers': {
      const isMe = draft.handles.length > 0 && draft.handles.every((handle) => handle === me);
      // Whoever took a turn over can hand it back, and whoever's turn it is can ask another.
      return (
        isMe ||
        (draft.handles.length > 0 && (before.tookOver(me, draft) || isTurnOf(me, draft, before)))
      );
    }
    case 'claim': {
      const { handle, system, on } = draft;
      const had = before
        .claimsOn(on)
        .some((claim) => claim.handle === me && claim.system === system);
      // Whoever has it, or whose day it is, can hand it over.
      return handle === me || had || before.coversOn(on)[0] === me;
    }
    default:
      return draft.handle === me;
  }
}

function draftsOf(
  handling: Handling,
  each: Arranging,
  asked: AwayAsked | null,
  before: readonly ArrangementDraft[],
): readonly ArrangementDraft[] {
  const { handle: me } = handling.heard.member;
  const { greenhouse } = handling.standing;
  const today = localDateOf(handling.nowMs, greenhouse.timeZone);
  switch (each.kind) {
    case 'cannot-go': {
      const { kind, handle, system, reason } = each;
      const days = each.days ?? ownTurns(handling, handle);
      if (days === null) return [];
      const on = days.from;
      const hadTaken = rosterOf(handling.standing)
        .claimsOn(on)
        .some((claim) => claim.handle === handle && claim.system === system);
      // What was taken of one system is given back, and the day stays theirs.
      return handle !== null && system !== null && hadTaken
        ? [{ kind: 'release', handle, system, on, reason }]
        : [{ kind, handle, ...days, reason }];
    }
    case 'covers': {
      if (each.isOwn && each.days) {
        const on = ownTurnLike(handling, each.days.from);
        return [{ kind: 'covers', handles: each.handles, from: on, until: on }];
      }
      if (each.isInstead) {
        return [{ kind: 'covers', handles: each.handles, ...(each.days ?? lastCovered(handling)) }];
      }
      const days = each.days ?? leftOver(handling, asked, before);
      const handles = each.handles.includes('*') ? helpersOf(handling) : each.handles;
      // Told first, a stretch begins where the absence does.
      const meant = daysToCover(handling, asked);
      const isWithin = meant !== null && today < meant.from && meant.from <= days.until;
      const from = days.from === today && isWithin ? meant.from : days.from;
      return [{ kind: 'covers', handles, from, until: days.until }];
    }
    case 'claim': {
      const { kind, handle, duty, days, isEvening } = each;
      const system = each.system ?? (each.isIt ? spokenOf(handling) : null);
      return [{ kind, handle, system, duty, on: days.from, isEvening }];
    }
    case 'release':
      return [{ kind: 'release', handle: me, system: each.system, on: each.on, reason: null }];
    case 'news':
      return [{ kind: 'news', handle: me, every: each.every }];
    case 'rota':
      return [each];
    default:
      return [];
  }
}

/** The one system that the member spoke of last, in a message that was to be about it. */
function spokenOf({ conversation, heard, standing }: Handling): SystemId | null {
  const system = recentSystem(conversation, heard.writtenAtMs);
  return standing.greenhouse.systems.some(({ id }) => id === system) ? system : null;
}

/** The days that were asked about, or of the present or next absence of a grower; null: none. */
function daysToCover(handling: Handling, asked: AwayAsked | null): Days | null {
  if (asked?.kind === 'who-covers') return asked.days;
  const { greenhouse } = handling.standing;
  const today = localDateOf(handling.nowMs, greenhouse.timeZone);
  const growers = greenhouse.members.filter(({ role }) => role === 'grower');
  const [next] = rosterOf(handling.standing)
    .absences.filter(
      ({ handle, until }) => until >= today && growers.some((each) => each.handle === handle),
    )
    .toSorted((one, other) => (one.from < other.from ? -1 : 1));
  return next ? { from: next.from, until: next.until } : null;
}

/** From now to the last of somebody's turns that is to come; null: there is none. */
function ownTurns({ standing, nowMs }: Handling, handle: string | null): Days | null {
  const helper = standing.greenhouse.members.find((each) => each.handle === handle);
  if (helper?.role !== 'helper') return null;
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const roster = rosterOf(standing);
  const turns = Array.from({ length: turnsLookedUp }, (_, ahead) => plusDays(today, ahead)).filter(
    (date) => handle !== null && roster.coversOn(date)[0] === handle,
  );
  return turns.length === 0 ? null : { from: today, until: turns.at(-1)! };
}

const turnsLookedUp = 42;

/** `my Monday`: the next such weekday on which it is the member's turn; the day itself, where there is none. */
function ownTurnLike({ standing, heard }: Handling, day: LocalDate): LocalDate {
  const roster = rosterOf(standing);
  const weeks = Array.from({ length: turnsLookedUp / 7 }, (_, week) => plusDays(day, 7 * week));
  return weeks.find((date) => roster.coversOn(date)[0] === heard.member.handle) ?? day;
}

/** What is left of the days on which somebody was put down last; else today. */
function lastCovered({ standing, nowMs }: Handling): Days {
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const last = standing.arrangements.findLast((each) => each.kind === 'covers');
  if (last?.kind !== 'covers' || last.until < today) return { from: today, until: today };
  return { from: last.from < today ? today : last.from, until: last.until };
}

/** Those of them that nobody named before covers yet. */
function leftOver(
  handling: Handling,
  asked: AwayAsked | null,
  before: readonly ArrangementDraft[],
): Days {
  const today = localDateOf(handling.nowMs, handling.standing.greenhouse.timeZone);
  const days = daysToCover(handling, asked) ?? { from: today, until: today };
  const last = before.findLast((draft) => draft.kind === 'covers');
  if (last?.kind !== 'covers' || last.until >= days.until) return days;
  return { from: plusDays(last.until, 1), until: days.until };
}
