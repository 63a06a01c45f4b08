import type { MixStrength, ProductAmount } from '../greenhouse/duty.ts';
import type { Entry } from '../greenhouse/entry.ts';
import type { System } from '../greenhouse/system.ts';
import { type Logbook, latestEntry, liveEntries } from '../logbook/logbook.ts';
import type { MixReason } from './advice-reason.ts';
import { doseTold } from './dose-bounds.ts';
import type { BoardQuestion } from './duty-board.ts';
import { stockLeftMl } from './stock-left.ts';
import { type Concentrates, eachConcentrateMl } from './strength-dose.ts';

export interface TopUpMix {
  readonly strength: MixStrength;
  readonly concentrates: readonly ProductAmount[];
  readonly reason: MixReason;
}

const DAY_MS = 86_400_000;
/** A reading of EC tells what to add for so long. */
const READING_HOLDS_MS = 7 * DAY_MS;
/** Drift is looked at over so long. */
const DRIFT_OVER_MS = 14 * DAY_MS;
const LEAST_APART_MS = 0.5 * DAY_MS;
/** The strength is judged by where it will be in some days. */
const AHEAD_DAYS = 2;
/** Thirds of the range: in the upper one water, in the middle one half, in the lower one all. */
const PLAIN_FROM = 2 / 3;
const HALF_FROM = 1 / 3;

/**
 * How strong the litres of a top-up should be, by where EC is and which way it drifts, with mL of
 * each concentrate; null where no EC of late is known or no concentrate is in stock.
 */
export function topUpMix(
  system: System,
  litres: number,
  question: BoardQuestion,
  concentrates: Concentrates | null,
): TopUpMix | null {
  const { logbook, greenhouse, nowMs } = question;
  const reading = latestEntry(logbook, system.id, 'ec');
  const renewedMs = latestEntry(logbook, system.id, 'reservoir-change')?.atMs ?? 0;
  if (!concentrates || !reading || reading.atMs < renewedMs) return null;
  if (nowMs - reading.atMs > READING_HOLDS_MS) return null;
  const [lowest, highest] = system.ecMsPerCm;
  const driftPerDay = strengthDriftPerDay(system, logbook, nowMs);
  const ahead = reading.value + AHEAD_DAYS * (driftPerDay ?? 0);
  const place = (ahead - lowest) / (highest - lowest);
  const strength = place >= PLAIN_FROM ? 'plain' : place >= HALF_FROM ? 'half' : 'full';
  const full = (lowest + highest) / 2;
  const wanted = strength === 'full' ? full : strength === 'half' ? full / 2 : 0;
  const { ecMsPerCm } = greenhouse.water;
  const eachMl =
    wanted <= ecMsPerCm || litres <= 0
      ? 0
      : eachConcentrateMl(concentrates, { litres, fromMsPerCm: ecMsPerCm, toMsPerCm: wanted });
  const mL = doseTold(eachMl ?? 0);
  const amounts = [concentrates.partA, concentrates.partB].map(({ product }) => ({ product, mL }));
  return {
    strength,
    concentrates: mL > 0 ? amounts : [],
    reason: {
      strength,
      ecMsPerCm: reading.value,
      lowest,
      highest,
      driftPerDay,
      basis: concentrates.basis,
      ...(isInStock(amounts, question) ? {} : { isShort: true as const }),
    },
  };
}

/** Whether there is as much as is to be mixed in. */
function isInStock(amounts: readonly ProductAmount[], { greenhouse, logbook }: BoardQuestion) {
  return greenhouse.stock.every((item) => {
    const wanted = amounts.find(({ product }) => product === item.product);
    return !wanted || wanted.mL <= stockLeftMl(item, greenhouse, logbook);
  });
}

/** How EC moves while nobody does anything, mS/cm a day, weighed by time; null: not seen yet. */
export function strengthDriftPerDay(
  system: System,
  logbook: Logbook,
  nowMs: number,
): number | null {
  const readings = liveEntries(logbook, system.id, 'ec').filter(
    ({ atMs }) => nowMs - atMs <= DRIFT_OVER_MS,
  );
  let moved = 0;
  let days = 0;
  for (const [i, reading] of readings.slice(1).entries()) {
    const before = readings[i]!;
    if (reading.atMs - before.atMs < LEAST_APART_MS) continue;
    if (wasWorkedOn(system, before, reading, logbook)) continue;
    moved += reading.value - before.value;
    days += (reading.atMs - before.atMs) / DAY_MS;
  }
  return days > 0 ? moved / days : null;
}

function wasWorkedOn(system: System, before: Entry, after: Entry, logbook: Logbook): boolean {
  return (['dose', 'top-up', 'reservoir-change'] as const).some((quantity) =>
    liveEntries(logbook, system.id, quantity).some(
      ({ atMs }) => atMs >= before.atMs && atMs <= after.atMs,
    ),
  );
}
