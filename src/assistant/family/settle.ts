import type { ArrangementDraft } from '../../greenhouse/arrangement.ts';
import { localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { Roster } from '../../planning/roster.ts';
import type { Arranging, Days } from '../../understanding/arranging/arranging.ts';
import type { Handling } from '../handling.ts';
import { may, type UseCase } from '../permissions.ts';
import { undoSettledRow } from '../use-cases/undo-last.ts';
import { type AwayAsked, tellPlan } from './go-away.ts';
import { refuse } from './refuse.ts';

/** Settles what was said, says so in one answer, and tells the plan anew where it changes one. */
export function settle(
  handling: Handling,
  arrangings: readonly Arranging[],
  asked: AwayAsked | null,
): void {
  const { member } = handling.heard;
  const drafts: ArrangementDraft[] = [];
  for (const each of arrangings) {
    const found = draftsOf(handling, each, asked, drafts);
    if (!found) return refuse(handling);
    drafts.push(...found);
  }
  settleDrafts(handling, drafts);
  const isPlanMeant = asked?.kind === 'who-covers' && member.role === 'grower';
  if (isPlanMeant) tellPlan(handling, null);
}

/** The same for what a button settles. */
export function settleDrafts(handling: Handling, drafts: readonly ArrangementDraft[]): void {
  const { greenhouse, arrangements } = handling.standing;
  const before = new Roster(greenhouse, arrangements);
  const instead = drafts.flatMap((draft) => {
    if (draft.kind !== 'claim' || draft.system === null) return [];
    const earlier = before.claimsOn(draft.on).find(({ system }) => system === draft.system);
    return earlier && earlier.handle !== draft.handle ? [{ handle: earlier.handle }] : [];
  });
  handling.settle(drafts);
  handling.say({ kind: 'answer', answer: { kind: 'settled', items: drafts, instead } }, [
    undoSettledRow(handling),
  ]);
}

/** null: the member may not. */
function draftsOf(
  handling: Handling,
  each: Arranging,
  asked: AwayAsked | null,
  before: readonly ArrangementDraft[],
): readonly ArrangementDraft[] | null {
  const { member } = handling.heard;
  const me = member.handle;
  const { greenhouse } = handling.standing;
  const today = localDateOf(handling.nowMs, greenhouse.timeZone);
  const allowed = (
    useCase: UseCase,
    isOwn: boolean,
    drafts: readonly ArrangementDraft[],
  ): readonly ArrangementDraft[] | null => (may(member, useCase, isOwn) ? drafts : null);
  switch (each.kind) {
    case 'cannot-go': {
      const { handle, days, reason } = each;
      return allowed('settle-cannot-go', handle === me, [
        { kind: 'cannot-go', handle, ...days, reason },
      ]);
    }
    case 'rota':
      return allowed('settle-rota', each.handle === me, [
        { kind: 'rota', handle: each.handle, weekdays: each.weekdays },
      ]);
    case 'covers': {
      const days = each.days ?? leftOver(handling, asked, before);
      const handles = each.handles.includes('*')
        ? greenhouse.members.filter(({ role }) => role === 'helper').map(({ handle }) => handle)
        : each.handles;
      const isOwn = handles.every((handle) => handle === me);
      // Told first, a stretch begins where the absence does.
      const from =
        asked?.kind === 'who-covers' && days.from === today ? asked.days.from : days.from;
      return allowed('settle-covers', isOwn, [
        { kind: 'covers', handles, from, until: days.until },
      ]);
    }
    case 'claim': {
      const { handle, system, duty, days, isEvening } = each;
      const on = days.from;
      const roster = new Roster(greenhouse, handling.standing.arrangements);
      const had = roster
        .claimsOn(on)
        .some((claim) => claim.handle === me && claim.system === system);
      // Whoever has it, or whose day it is, can hand it over.
      const isOwn = handle === me || had || roster.coversOn(on)[0] === me;
      return allowed('settle-claim', isOwn, [
        { kind: 'claim', handle, system, duty, on, isEvening },
      ]);
    }
    case 'release':
      return allowed('settle-release', true, [
        { kind: 'release', handle: me, system: each.system, on: each.on, reason: null },
      ]);
    case 'news':
      return allowed('settle-news', true, [{ kind: 'news', handle: me, every: each.every }]);
    default:
      return [];
  }
}

/** The days that were asked about and that nobody named before covers yet. */
function leftOver(
  handling: Handling,
  asked: AwayAsked | null,
  before: readonly ArrangementDraft[],
): Days {
  const { greenhouse, arrangements } = handling.standing;
  const today = localDateOf(handling.nowMs, greenhouse.timeZone);
  const absence = new Roster(greenhouse, arrangements).absences.find(({ until }) => until >= today);
  const days =
    asked?.kind === 'who-covers' ? asked.days : (absence ?? { from: today, until: today });
  const last = before.findLast((draft) => draft.kind === 'covers');
  if (last?.kind !== 'covers' || last.until >= days.until)
    return { from: days.from, until: days.until };
  return { from: plusDays(last.until, 1), until: days.until };
}
