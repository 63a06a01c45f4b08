import type { Entry } from '../greenhouse/entry.ts';
import { localDateOf } from '../greenhouse/local-time.ts';
import { mayHandleAcids } from '../greenhouse/member.ts';
import { latestEntry, liveEntries } from '../logbook/logbook.ts';
import { doseAdvice } from '../planning/dose-advice.ts';
import { doseLines } from '../planning/dose-duties.ts';
import type { BoardQuestion } from '../planning/duty-board.ts';
import type { OutageProspect } from '../planning/outage-prospect.ts';
import { outageProspects } from '../planning/outage-prospects.ts';
import { endedBy, type OpenOutage, openOutages } from '../planning/outages.ts';
import { boardQuestion } from './board-question.ts';
import type { AdviceAlert } from './replies/advice.ts';
import type { Standing } from './standing.ts';
import { surpriseReminders } from './surprise-reminders.ts';
import { allClearAlert, outageAlerts } from './use-cases/tell-of-outages.ts';

/** Something to be said unasked, once: `key` is the same however often it is reckoned. */
export interface Reminder {
  readonly key: string;
  /** When it falls due. */
  readonly atMs: number;
  /** Handles of those who get it. */
  readonly to: readonly string[];
  readonly alert: AdviceAlert;
  /** Who has heard it already, in answer to their report. */
  readonly heardBy?: string | null;
}

/** A reminder comes while there is time left to act: this share of the earliest bound before it. */
const SOON_SHARE = 0.25;
const SOON_LEAST_MS = 15 * 60_000;
/** A helper's reading that calls for the grower is passed on for so long. */
const PASSED_ON_FOR_MS = 24 * 3_600_000;

/**
 * What is to be said unasked by `nowMs`, earliest first, whether it was said before or not: who sends
 * it keeps the keys, and may give those of readings that were looked at (`told`) to save the work. Outages as growers who did not report them learn of them, a reminder before each
 * system runs out and one when it likely has, doses that a helper must not give, what does not fit
 * what was learned.
 */
export function remindersDue(
  standing: Standing,
  nowMs: number,
  told: ReadonlySet<string> = new Set(),
): readonly Reminder[] {
  return allReminders(standing, nowMs, told).filter(({ atMs }) => atMs <= nowMs);
}

/** The instant of the next reminder after `afterMs`; null: none is in sight. */
export function nextReminderMs(standing: Standing, afterMs: number): number | null {
  return allReminders(standing, afterMs, null).find(({ atMs }) => atMs > afterMs)?.atMs ?? null;
}

/** told null: what is still to come hangs on outages, and on surprises that wait for the morning. */
function allReminders(
  standing: Standing,
  nowMs: number,
  told: ReadonlySet<string> | null,
): readonly Reminder[] {
  const { logbook, greenhouse } = standing;
  const systems = greenhouse.systems.map(({ id }) => id);
  const outages = openOutages(logbook, systems);
  const readings =
    told === null
      ? []
      : readingsOfHelpers(standing, nowMs).filter((entry) => !told.has(doseWantedKey(entry)));
  const surprises = surpriseReminders(standing, nowMs);
  const over = endsToTell(standing, nowMs);
  if (outages.length + readings.length + over.length === 0) return surprises;
  const question = boardQuestion(standing, nowMs);
  return [
    ...outages.flatMap((outage) => ofOutage(outage, question)),
    ...readings.flatMap((entry) => ofReading(entry, question)),
    ...over.flatMap((entry) => ofEnd(entry, question)),
    ...surprises,
  ].toSorted((one, other) => one.atMs - other.atMs || (one.key < other.key ? -1 : 1));
}

function ofOutage(outage: OpenOutage, question: BoardQuestion): readonly Reminder[] {
  const { entry, of, sinceMs } = outage;
  const reporter = reporterOf(entry);
  const growers = growersOf(question);
  const uninformed = growers.filter((handle) => handle !== reporter);
  const everybody = [...new Set([...growers, ...(reporter === null ? [] : [reporter])])];
  const places =
    outage.system === null ? question.greenhouse.systems.map(({ id }) => id) : [outage.system];
  const { systems } = outageProspects(question, places, of, sinceMs);
  const [alert] = outageAlerts([entry], question);
  const told =
    alert && uninformed.length > 0
      ? [
          {
            key: `outage:${entry.no}:told`,
            atMs: entry.recordedAtMs,
            to: uninformed,
            alert,
            heardBy: reporter,
          },
        ]
      : [];
  const reminders = systems.flatMap((prospect) =>
    (['soon', 'now'] as const).map((stage) => ({
      key: `outage:${entry.no}:${prospect.system}:${stage}`,
      atMs: wholeMinute(stage === 'soon' ? soonMs(prospect, sinceMs) : prospect.likelyAtMs),
      to: everybody,
      alert: { kind: 'outage-reminder', of, prospect, stage } as const,
    })),
  );
  // What had passed when the outage was told stood in the alert itself.
  return [...told, ...reminders.filter(({ atMs }) => atMs > entry.recordedAtMs)];
}

/** Ends of outages that others had been alarmed of, as they were first told. */
function endsToTell({ logbook, greenhouse }: Standing, nowMs: number): readonly Entry[] {
  return [null, ...greenhouse.systems.map(({ id }) => id)].flatMap((place) => {
    const ends = liveEntries(logbook, place, 'restored');
    return ends.filter((end) => {
      if (nowMs - end.recordedAtMs > PASSED_ON_FOR_MS) return false;
      const began = endedBy(end, logbook);
      const isFirst = !ends.some(
        (other) => other.no < end.no && other.of === end.of && began && other.atMs >= began.atMs,
      );
      return began !== null && began.recordedAtMs < end.recordedAtMs && isFirst;
    });
  });
}

/** Whoever was alarmed hears that it is over. */
function ofEnd(end: Entry, question: BoardQuestion): readonly Reminder[] {
  const alert = allClearAlert(end, question);
  const began = endedBy(end, question.logbook);
  if (!alert || !began) return [];
  const reporter = reporterOf(began);
  const to = [...new Set([...growersOf(question), ...(reporter === null ? [] : [reporter])])];
  const heardBy = reporterOf(end);
  return [{ key: `restored:${end.no}`, atMs: end.recordedAtMs, to, alert, heardBy }];
}

function soonMs({ lowAtMs }: OutageProspect, sinceMs: number): number {
  return lowAtMs - Math.max(SOON_LEAST_MS, SOON_SHARE * (lowAtMs - sinceMs));
}

/** Hours from an estimate are no more exact than this, and an instant is a whole number. */
const MINUTE_MS = 60_000;

function wholeMinute(atMs: number): number {
  return Math.floor(atMs / MINUTE_MS) * MINUTE_MS;
}

/** The latest pH readings by members who must not give the dose that they may call for. */
export function readingsOfHelpers(
  { logbook, greenhouse }: Standing,
  nowMs: number,
): readonly Entry[] {
  return greenhouse.systems.flatMap(({ id }) => {
    const entry = latestEntry(logbook, id, 'ph');
    if (!entry || nowMs - entry.recordedAtMs > PASSED_ON_FOR_MS) return [];
    const reporter = greenhouse.members.find(({ handle }) => handle === reporterOf(entry));
    return reporter && !mayHandleAcids(reporter) ? [entry] : [];
  });
}

function ofReading(entry: Entry, question: BoardQuestion): readonly Reminder[] {
  const system = question.greenhouse.systems.find(({ id }) => id === entry.system)!;
  const advice = doseAdvice(question, system, 'ph');
  if (advice.kind !== 'dose') return [];
  const today = localDateOf(question.nowMs, question.greenhouse.timeZone);
  const lines = doseLines(advice.dose, system, question, today);
  const askedBy = reporterOf(entry) ?? '';
  return [
    {
      key: doseWantedKey(entry),
      atMs: entry.recordedAtMs,
      to: growersOf(question),
      alert: { kind: 'dose-wanted', lines, askedBy },
    },
  ];
}

export function doseWantedKey({ no }: Pick<Entry, 'no'>): string {
  return `dose-wanted:${no}`;
}

function growersOf({ greenhouse }: BoardQuestion): readonly string[] {
  return greenhouse.members.filter(({ role }) => role === 'grower').map(({ handle }) => handle);
}

function reporterOf({ source }: Entry): string | null {
  return source.kind === 'member' ? source.handle : null;
}
