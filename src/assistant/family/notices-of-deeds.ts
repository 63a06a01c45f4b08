import type { Arrangement } from '../../greenhouse/arrangement.ts';
import type { Duty } from '../../greenhouse/duty.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import { isDone } from '../../planning/duty-done.ts';
import type { Roster } from '../../planning/roster.ts';
import { inDaytime } from '../quiet-hours.ts';
import type { Standing } from '../standing.ts';
import { type Notice, newsHoldsMs, notice, nudgeRows } from './notice.ts';

/** Somebody did what another had taken, or could not do what was theirs. */
export function noticesOfDeeds(
  standing: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const { greenhouse, logbook, rounds } = standing;
  const round = rounds.at(-1);
  if (!round) return [];
  const { date } = round;
  const recent = logbook.all.filter(
    ({ struck, recordedAtMs, source }) =>
      struck === null && source.kind === 'member' && nowMs - recordedAtMs < newsHoldsMs,
  );
  const taken = roster.claimsOn(date).flatMap((claim): readonly Notice[] => {
    const done = recent.find(
      (entry) =>
        isOther(entry, claim.handle) && entry.recordedAtMs >= claim.atMs && does(entry, claim),
    );
    if (done?.source.kind !== 'member') return [];
    const duty: Duty = { kind: claim.duty ?? 'top-up', system: claim.system, dueOn: date };
    const alert = { kind: 'done-by-other', by: done.source.handle, duty } as const;
    const key = `done-by-other:${date}:${duty.kind}:${duty.system}:${claim.handle}`;
    return [notice(key, inDaytime(done.recordedAtMs, greenhouse.timeZone), claim.handle, alert)];
  });
  return [...taken, ...givenBack(standing, roster, recent, nowMs)];
}

function givenBack(
  { greenhouse, logbook, rounds, arrangements }: Standing,
  roster: Roster,
  recent: readonly Entry[],
  nowMs: number,
): readonly Notice[] {
  const round = rounds.at(-1)!;
  const failed = recent
    .filter(
      ({ quantity, recordedAtMs }) => quantity === 'duty-failed' && recordedAtMs >= round.sentAtMs,
    )
    .flatMap((entry) => {
      const duties = round.duties.filter(
        (duty) =>
          duty.system === entry.system &&
          duty.kind === (entry.duty ?? duty.kind) &&
          duty.chore === (entry.chore ?? duty.chore),
      );
      const by = entry.source.kind === 'member' ? entry.source.handle : '';
      return [
        {
          key: `failed:${entry.no}`,
          atMs: entry.recordedAtMs,
          by,
          duties,
          reason: entry.note ?? null,
        },
      ];
    });
  const released = arrangements.flatMap((each, n) =>
    each.kind === 'release' && each.on === round.date && nowMs - each.atMs < newsHoldsMs
      ? [
          {
            key: `released:${n}`,
            atMs: each.atMs,
            by: each.handle,
            duties: round.duties.filter(
              ({ system }) => each.system === null || system === each.system,
            ),
            reason: each.reason,
          },
        ]
      : [],
  );
  return [...failed, ...released].flatMap(({ key, atMs, by, duties, reason }) => {
    const open = duties.filter((duty) => !isDone(duty, logbook, round.sentAtMs));
    if (open.length === 0) return [];
    const others = roster.ableOn(round.date).filter((handle) => handle !== by);
    return others.map((handle) =>
      notice(
        `${key}:${handle}`,
        inDaytime(atMs, greenhouse.timeZone),
        handle,
        { kind: 'given-back', by, duties: open, reason },
        nudgeRows(open, 'offer', handle, round.date, round.sentAtMs),
      ),
    );
  });
}

function does(
  entry: Entry,
  { system, duty }: Extract<Arrangement, { readonly kind: 'claim' }>,
): boolean {
  if (system === null || entry.system !== system) return false;
  const kind = duty ?? 'top-up';
  return entry.quantity === kind || (entry.quantity === 'duty-done' && entry.duty === kind);
}

function isOther({ source }: Entry, handle: string): boolean {
  return source.kind === 'member' && source.handle !== handle;
}
