import type { CleanPart } from '../greenhouse/duty.ts';
import { daysBetween, type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import { partsToClean } from '../greenhouse/parts-to-clean.ts';
import type { System } from '../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../logbook/logbook.ts';
import { ROOT_OXYGEN } from '../science/oxygen/oxygen-limits.ts';
import type { CleanReason } from './advice-reason.ts';
import { cleaningCautions } from './cautions-for.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { lastSaidDoneMs } from './last-done.ts';

/** A flood that takes this much longer than it should has a clogged filter. Common practice. */
const SLOW_SHARE = 1.2;
const VERY_SLOW_SHARE = 1.5;
/** Until something was seen: filters and stones about every five weeks. Common practice. */
const USUAL_DAYS = 35;
const LEAST_DAYS = 7;
const MOST_DAYS = 120;
const RIDES_FROM_SHARE = 0.7;
/** A finding calls for work within these days, and so soon only with a trip. */
const AFTER_FINDING_DAYS = 3;
const FINDING_HOLDS_DAYS = 14;
/** It may be so late, for a trip to come. */
const GRACE_DAYS = 4;

/** Filters and stones: when fill times or oxygen say so, else at an interval learned from fill times. */
export function cleanDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.systems.flatMap((system) => {
    const parts = partsToClean(system);
    return parts.length === 0 ? [] : [cleanOf(system, parts, question, today)];
  });
}

function cleanOf(
  system: System,
  parts: readonly CleanPart[],
  question: BoardQuestion,
  today: LocalDate,
): DutyLine {
  const { greenhouse, logbook, createdAtMs } = question;
  const doneMs = lastSaidDoneMs(logbook, system.id, 'clean');
  const sinceMs = doneMs ?? createdAtMs;
  const sinceOn = localDateOf(sinceMs, greenhouse.timeZone);
  const finding = findingOf(system, parts, question, sinceMs);
  const everyDays = learnedDays(system, question, sinceMs) ?? USUAL_DAYS;
  const dueOn = finding
    ? plusDays(
        localDateOf(finding.atMs, greenhouse.timeZone),
        finding.isUrgent ? 0 : AFTER_FINDING_DAYS,
      )
    : plusDays(sinceOn, everyDays);
  return {
    duty: {
      kind: 'clean',
      system: system.id,
      dueOn: dueOn < today ? today : dueOn,
      parts: finding ? [finding.part] : parts,
    },
    ...(finding?.isUrgent ? {} : { waitsUntil: plusDays(dueOn, GRACE_DAYS) }),
    ridesFrom: finding ? today : plusDays(sinceOn, Math.round(everyDays * RIDES_FROM_SHARE)),
    reason: {
      kind: 'clean',
      because: finding?.because ?? {
        kind: 'interval',
        everyDays,
        lastOn: doneMs === null ? null : sinceOn,
      },
    },
    steps: [
      { kind: 'unplug' },
      ...(finding ? [finding.part] : parts).map((part) => ({ kind: 'clean-part', part }) as const),
    ],
    cautions: cleaningCautions(
      logbook,
      greenhouse.systems.map(({ id }) => id),
    ),
  };
}

interface Finding {
  readonly part: CleanPart;
  readonly because: CleanReason['because'];
  readonly atMs: number;
  readonly isUrgent: boolean;
}

function findingOf(
  system: System,
  parts: readonly CleanPart[],
  { logbook, nowMs }: BoardQuestion,
  sinceMs: number,
): Finding | null {
  const isRecent = (atMs: number) =>
    atMs > sinceMs && nowMs - atMs < FINDING_HOLDS_DAYS * 86_400_000;
  const fill = latestEntry(logbook, system.id, 'fill-time');
  const usual = usualFillMin(system, liveEntries(logbook, system.id, 'fill-time'));
  if (fill && usual !== null && isRecent(fill.atMs) && fill.value >= SLOW_SHARE * usual) {
    return {
      part: 'pump-filter',
      because: { kind: 'fill-time', minutes: fill.value, usualMinutes: usual },
      atMs: fill.atMs,
      isUrgent: fill.value >= VERY_SLOW_SHARE * usual,
    };
  }
  const oxygen = latestEntry(logbook, system.id, 'dissolved-oxygen');
  const isLow = oxygen && isRecent(oxygen.atMs) && oxygen.value < ROOT_OXYGEN.wantedMgPerL;
  if (isLow && parts.includes('air-stones')) {
    return {
      part: 'air-stones',
      because: { kind: 'low-oxygen', mgPerL: oxygen.value },
      atMs: oxygen.atMs,
      isUrgent: oxygen.value < ROOT_OXYGEN.lowMgPerL,
    };
  }
  return null;
}

/** How long a flood takes with a clean filter: as set up, or the shortest that was logged. */
function usualFillMin(system: System, fills: readonly { readonly value: number }[]): number | null {
  if (system.floods) return system.floods.fillMin;
  return fills.length < 2 ? null : Math.min(...fills.map(({ value }) => value));
}

/** Days from clean to slow, going by how the fill time has grown since the last cleaning. */
function learnedDays(
  system: System,
  { logbook, greenhouse }: BoardQuestion,
  sinceMs: number,
): number | null {
  const fills = liveEntries(logbook, system.id, 'fill-time');
  const usual = usualFillMin(system, fills);
  const last = fills.at(-1);
  if (usual === null || !last || last.atMs <= sinceMs) return null;
  const days = daysBetween(
    localDateOf(sinceMs, greenhouse.timeZone),
    localDateOf(last.atMs, greenhouse.timeZone),
  );
  const growth = last.value / usual - 1;
  if (days < 2 || growth <= 0.02) return null;
  return Math.round(Math.min(MOST_DAYS, Math.max(LEAST_DAYS, ((SLOW_SHARE - 1) * days) / growth)));
}
