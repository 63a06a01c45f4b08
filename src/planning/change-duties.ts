import { daysBetween, type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import type { System } from '../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../logbook/logbook.ts';
import { topUpToLimit } from '../science/solutions/salt-accumulation.ts';
import { SALT_TOLERANCE } from '../science/solutions/sodium-chloride-limits.ts';
import { litre } from '../science/units/amount.ts';
import { millimolePerL } from '../science/units/concentration.ts';
import type { ChangeReason } from './advice-reason.ts';
import { changeCautions } from './cautions-for.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { lastSaidDoneMs } from './last-done.ts';
import { newSolution } from './new-solution.ts';
import { concentratesOf } from './strength-dose.ts';

/** Common practice: small reservoirs after one to two weeks, large ones after three to four. */
const OLD_AFTER_DAYS = [
  { upToL: 50, days: 14 },
  { upToL: 200, days: 21 },
  { upToL: Number.POSITIVE_INFINITY, days: 28 },
] as const;
/** Common practice: the top-ups since the last change sum to the reservoir. */
const TOP_UPS_SHARE = 1;
/** So much of its time over, it is worth doing on a trip that is made anyway. */
const RIDES_FROM_SHARE = 0.75;
/** So late it turns urgent. */
const LATEST_SHARE = 1.3;
/** More pH doses than this within a week: the solution no longer holds. */
const DOSES_THAT_HOLD = 3;
const DOSES_WITHIN_MS = 7 * 86_400_000;
const DRIFT_DAYS = 2;
/** Household water: about a fifth of its salts is sodium, and 1 mS/cm is 10 meq/L. An estimate. */
const SODIUM_MMOL_PER_L_PER_MS = 2;
const ANY_CROP_MOST_SODIUM_MMOL_PER_L = 8;
const ANY_CROP_UPTAKE_SHARE = 0.12;
const LEAST_USE_L_PER_DAY = 0.05;

/** When the solution of each circulating system is used up, and by what. */
export function changeDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.systems.flatMap((system) =>
    // Jars start with the crop's whole water and end nearly dry: there is nothing to change.
    system.method === 'non-circulating' ? [] : [changeOf(system, question, today)],
  );
}

interface UsedUp {
  readonly because: ChangeReason['because'];
  /** Days after the last change. */
  readonly days: number;
}

function changeOf(system: System, question: BoardQuestion, today: LocalDate): DutyLine {
  const { greenhouse, logbook, createdAtMs } = question;
  const saidMs = lastSaidDoneMs(logbook, system.id, 'reservoir-change');
  const loggedMs = latestEntry(logbook, system.id, 'reservoir-change')?.atMs ?? null;
  const lastMs = Math.max(saidMs ?? createdAtMs, loggedMs ?? createdAtMs);
  const lastOn = localDateOf(lastMs, greenhouse.timeZone);
  const toppedUpL = liveEntries(logbook, system.id, 'top-up')
    .filter(({ atMs }) => atMs > lastMs)
    .reduce((sum, entry) => sum + entry.value, 0);
  const ageDays = Math.max(0, daysBetween(lastOn, today));
  const first = soonest(system, question, { toppedUpL, ageDays, lastMs });
  const dueAgeDays = Math.ceil(first.days);
  const dueOn = plusDays(lastOn, dueAgeDays);
  const latestOn = plusDays(lastOn, Math.ceil(first.days * LATEST_SHARE));
  const isKnown = saidMs !== null || loggedMs !== null;
  const mix = newSolution(system, greenhouse, concentratesOf(question));
  return {
    duty: {
      kind: 'reservoir-change',
      system: system.id,
      dueOn: dueOn < today ? today : dueOn,
      latestOn,
      litres: system.brimL,
      ...(mix.concentrates.length > 0 ? { concentrates: mix.concentrates } : {}),
    },
    ridesFrom: plusDays(lastOn, Math.ceil(first.days * RIDES_FROM_SHARE)),
    waitsUntil: latestOn,
    reason: {
      kind: 'change',
      because: first.because,
      lastOn: isKnown ? lastOn : null,
      ageDays,
      dueAgeDays,
      toppedUpL,
      brimL: system.brimL,
    },
    steps: mix.steps,
    cautions: changeCautions(
      logbook,
      greenhouse.systems.map(({ id }) => id),
    ),
  };
}

function soonest(
  system: System,
  question: BoardQuestion,
  since: { readonly toppedUpL: number; readonly ageDays: number; readonly lastMs: number },
): UsedUp {
  const { toppedUpL, ageDays, lastMs } = since;
  const usePerDayL = Math.max(LEAST_USE_L_PER_DAY, question.outlooks.get(system.id)!.usePerDay);
  const afterTopUps = (litres: number): number => ageDays + (litres - toppedUpL) / usePerDayL;
  const saltL = litresToSaltLimit(system, question);
  const age = OLD_AFTER_DAYS.find(({ upToL }) => system.brimL <= upToL)!.days;
  const reasons: UsedUp[] = [
    { because: 'top-ups', days: afterTopUps(TOP_UPS_SHARE * system.brimL) },
    { because: 'age', days: age },
    ...(saltL === null ? [] : [{ because: 'salts' as const, days: afterTopUps(saltL) }]),
    ...(isDrifting(system, question, lastMs)
      ? [{ because: 'drift' as const, days: ageDays + DRIFT_DAYS }]
      : []),
  ];
  return reasons.reduce((one, other) => (other.days < one.days ? other : one));
}

/** Litres of top-up until sodium reaches what the crop's roots bear; null: never. */
function litresToSaltLimit(system: System, { greenhouse }: BoardQuestion): number | null {
  const tolerance = SALT_TOLERANCE.get(system.crop ?? '');
  const mostMmolPerL = tolerance?.rootZoneMost.sodium ?? ANY_CROP_MOST_SODIUM_MMOL_PER_L;
  const sodium = SODIUM_MMOL_PER_L_PER_MS * greenhouse.water.ecMsPerCm;
  const limit = topUpToLimit(
    {
      volumeL: litre(system.brimL),
      waterMmolPerL: millimolePerL(sodium),
      presentMmolPerL: millimolePerL(sodium),
      uptakeShare: tolerance ? tolerance.uptake.sodium / mostMmolPerL : ANY_CROP_UPTAKE_SHARE,
    },
    millimolePerL(mostMmolPerL),
  );
  return limit.ok && limit.value.kind === 'reached' ? limit.value.topUpL : null;
}

/** The pH has been set right again and again of late, and did not stay. */
function isDrifting(system: System, { logbook, nowMs }: BoardQuestion, lastMs: number): boolean {
  const days = new Set(
    liveEntries(logbook, system.id, 'dose')
      .filter(
        ({ atMs, product }) =>
          atMs > lastMs && nowMs - atMs < DOSES_WITHIN_MS && /ph/i.test(product ?? ''),
      )
      .map(({ atMs }) => Math.floor(atMs / 86_400_000)),
  );
  return days.size > DOSES_THAT_HOLD;
}
