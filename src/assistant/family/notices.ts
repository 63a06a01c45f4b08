import type { Arrangement } from '../../greenhouse/arrangement.ts';
import type { Duty } from '../../greenhouse/duty.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import { type LocalDate, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { mayHandleAcids } from '../../greenhouse/member.ts';
import { isDone } from '../../planning/duty-done.ts';
import { nudgesOf } from '../../planning/family/nudges.ts';
import { Roster } from '../../planning/roster.ts';
import type { Button } from '../outgoing.ts';
import { inDaytime } from '../quiet-hours.ts';
import type { Reminder } from '../reminders-due.ts';
import type { FamilyAlert } from '../replies/family.ts';
import type { Alert } from '../replies/reply.ts';
import type { Standing } from '../standing.ts';

/** Something to be said unasked, once for its key. */
export interface Notice {
  readonly key: string;
  readonly atMs: number;
  readonly to: string;
  readonly alert: Alert;
  readonly buttons: readonly (readonly Button[])[];
}

/** What others should hear of a settlement or a deed, they hear within so long. */
const NEWS_HOLDS_MS = 12 * 3_600_000;

/** All that is to be said unasked around `nowMs`, whether it was said before or not; earliest first. */
export function noticesOf(
  standing: Standing,
  nowMs: number,
  reminders: readonly Reminder[],
): readonly Notice[] {
  const roster = new Roster(standing.greenhouse, standing.arrangements);
  return [
    ...ofReminders(reminders, standing, roster, nowMs),
    ...ofNudges(standing, roster, nowMs),
    ...ofArrangements(standing, roster, nowMs),
    ...ofDeeds(standing, roster, nowMs),
  ].toSorted((one, other) => one.atMs - other.atMs || (one.key < other.key ? -1 : 1));
}

/** Whoever covers hears it as well; a grower who is away hears no more of a dose that others can give. */
function ofReminders(
  reminders: readonly Reminder[],
  { greenhouse }: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const today = localDateOf(nowMs, greenhouse.timeZone);
  return reminders.flatMap(({ key, atMs, to, alert }) => {
    const isAnyAway = to.some((handle) => roster.absenceOn(handle, today));
    const shown = greenhouse.members
      .filter((member) => mayHandleAcids(member) && roster.canGo(member.handle, today))
      .map(({ handle }) => handle);
    const settling = alert.kind === 'dose-wanted' && shown.length > 0 ? shown : null;
    const covers = alert.kind === 'dose-wanted' ? [] : roster.coversOn(today);
    const readers = isAnyAway ? (settling ?? [...new Set([...to, ...covers])]) : to;
    return readers.map((handle) => notice(`${key}:${handle}`, atMs, handle, alert));
  });
}

/** What was not said at its time, since nothing ran or it was not yet so, is not said late. */
const NUDGE_HOLDS_MS = 30 * 60_000;

function ofNudges(
  { greenhouse, logbook, rounds }: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const round = rounds.at(-1);
  if (!round) return [];
  return nudgesOf(round, rounds.at(-2), greenhouse, logbook, roster)
    .filter(({ atMs }) => nowMs - atMs <= NUDGE_HOLDS_MS)
    .map(({ stage, atMs, to, of, duties }) =>
      notice(
        `undone:${stage}:${round.date}:${atMs}:${to}`,
        atMs,
        to,
        { kind: 'undone', stage, of, duties },
        stage === 'tell'
          ? []
          : duties.map((duty) => nudgeButtons(duty, stage, to, round.date, round.sentAtMs)),
      ),
    );
}

function nudgeButtons(
  duty: Duty,
  stage: 'ask' | 'offer',
  handle: string,
  on: LocalDate,
  askedAtMs: number,
): readonly Button[] {
  const done: Button = { label: { kind: 'tick', duty }, action: { kind: 'tick', duty, askedAtMs } };
  if (stage === 'ask') {
    return [done, { label: { kind: 'cannot', duty }, action: { kind: 'cannot', duty, askedAtMs } }];
  }
  const claim = {
    kind: 'claim',
    handle,
    system: duty.system,
    duty: duty.kind,
    on,
    isEvening: true,
  } as const;
  return [
    done,
    { label: { kind: 'take-over', duty }, action: { kind: 'settle', drafts: [claim] } },
  ];
}

/** To those whom somebody else's word concerns: who steps in, who was named. */
function ofArrangements(
  { greenhouse, arrangements }: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const today = localDateOf(nowMs, greenhouse.timeZone);
  return arrangements.flatMap((each, n): readonly Notice[] => {
    if (nowMs - each.atMs > NEWS_HOLDS_MS * 2) return [];
    const atMs = inDaytime(each.atMs, greenhouse.timeZone);
    if (each.kind === 'covers') {
      const absence = roster.absences.find(
        ({ from, until }) => from <= each.until && each.from <= until && until >= today,
      );
      return each.handles
        .filter((handle) => handle !== each.byHandle)
        .map((handle) => {
          const { byHandle: _by, atMs: _at, ...settled } = each;
          const alert: FamilyAlert = absence
            ? {
                kind: 'your-days',
                away: absence.handle,
                from: absence.from,
                until: absence.until,
                days: daysOf(roster, handle, each.from, each.until),
              }
            : { kind: 'named-for', by: each.byHandle, settled };
          return notice(`covers:${n}:${handle}`, atMs, handle, alert);
        });
    }
    if (each.kind === 'claim' && each.handle !== each.byHandle) {
      const { byHandle, atMs: _at, ...settled } = each;
      return [
        notice(`claim:${n}`, atMs, each.handle, { kind: 'named-for', by: byHandle, settled }),
      ];
    }
    return [];
  });
}

/** Somebody did what another had taken, or could not do what was theirs. */
function ofDeeds(standing: Standing, roster: Roster, nowMs: number): readonly Notice[] {
  const { greenhouse, logbook, rounds } = standing;
  const round = rounds.at(-1);
  if (!round) return [];
  const { date } = round;
  const recent = logbook.all.filter(
    ({ struck, recordedAtMs, source }) =>
      struck === null && source.kind === 'member' && nowMs - recordedAtMs < NEWS_HOLDS_MS,
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
        (duty) => duty.system === entry.system && duty.kind === (entry.duty ?? duty.kind),
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
    each.kind === 'release' && each.on === round.date && nowMs - each.atMs < NEWS_HOLDS_MS
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
        open.map((duty) => nudgeButtons(duty, 'offer', handle, round.date, round.sentAtMs)),
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

function daysOf(roster: Roster, handle: string, from: LocalDate, until: LocalDate): LocalDate[] {
  const days: LocalDate[] = [];
  for (let date = from; date <= until; date = plusDays(date, 1)) {
    if (roster.coversOn(date).includes(handle)) days.push(date);
  }
  return days;
}

function notice(
  key: string,
  atMs: number,
  to: string,
  alert: Alert,
  buttons: Notice['buttons'] = [],
): Notice {
  return { key, atMs, to, alert, buttons };
}
