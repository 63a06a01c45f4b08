import type { Duty } from '../greenhouse/duty.ts';
import { type LocalDate, localDateOf } from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { System } from '../greenhouse/system.ts';
import type { BeforeDoseReason } from './advice-reason.ts';
import { concentrateCautions, reagentCautions } from './cautions-for.ts';
import { type DoseAdvice, type DoseQuantity, doseAdvice } from './dose-advice.ts';
import { THIN_BELOW_ML, THINNED_TIMES } from './dose-bounds.ts';
import type { DoseRefusal } from './dose-refusal.ts';
import { DOSE_WAIT } from './doses-given.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import type { PlannedDose } from './planned-dose.ts';
import { waitsForTripUntil } from './slightly-out.ts';
import type { WorkStep } from './work-step.ts';

const doseQuantities = ['ec', 'ph'] as const satisfies readonly DoseQuantity[];
/** A reading older than this is taken anew before anything is added. */
const MEASURE_ANEW_MS = 6 * 3_600_000;

/** What is out of range, with a safe dose or with what has to be done before one can be told. */
export function doseDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.systems.flatMap((system) =>
    doseQuantities.flatMap((quantity) => {
      const advice = doseAdvice(question, system, quantity);
      if (advice.kind === 'dose') return doseLines(advice.dose, system, question, today);
      return advice.kind === 'refused' ? beforeDose(advice, system, quantity, question, today) : [];
    }),
  );
}

/** A line a product, in the order in which they go in. */
export function doseLines(
  dose: PlannedDose,
  system: System,
  question: BoardQuestion,
  today: LocalDate,
): readonly DutyLine[] {
  const { logbook, greenhouse, nowMs } = question;
  const { reason, amounts } = dose;
  const systems = greenhouse.systems.map(({ id }) => id);
  const isStale = nowMs - reason.measuredAtMs > MEASURE_ANEW_MS;
  const measuredOn = localDateOf(reason.measuredAtMs, greenhouse.timeZone);
  const range = [reason.lowest, reason.highest] as const;
  // Whoever has just measured is there.
  const waitsUntil = isStale
    ? waitsForTripUntil(reason.quantity, reason.value, range, measuredOn)
    : null;
  const latestOn = waitsUntil === null || waitsUntil < today ? today : waitsUntil;
  return amounts.map(({ product, mL }, place): DutyLine => {
    const isLast = place === amounts.length - 1;
    const cautionsOf = reason.quantity === 'ph' ? reagentCautions : concentrateCautions;
    return {
      duty: { kind: 'dose', system: system.id, dueOn: today, latestOn, product, mL },
      ridesFrom: today,
      ...(waitsUntil === null ? {} : { waitsUntil }),
      reason,
      steps: [
        ...(isStale && place === 0
          ? [{ kind: 'measure-first', quantity: reason.quantity } as const]
          : []),
        adding(product, mL),
        ...mixing(system),
        ...(isLast ? afterwards(reason.quantity) : []),
      ],
      cautions: cautionsOf(logbook, systems, product),
    };
  });
}

function adding(product: string, mL: number): WorkStep {
  if (mL >= THIN_BELOW_ML) return { kind: 'add', product, mL };
  const addMl = Math.round(mL * THINNED_TIMES);
  return { kind: 'thin-first', product, waterMl: THINNED_TIMES - 1, addMl };
}

function mixing(system: System): readonly WorkStep[] {
  return system.method === 'flood-and-drain' ? [{ kind: 'flood-once' }] : [{ kind: 'stir' }];
}

function afterwards(quantity: DoseQuantity): readonly WorkStep[] {
  return [
    { kind: 'wait', fromMin: DOSE_WAIT.fromMin, toMin: DOSE_WAIT.toMin },
    { kind: 'measure-again', quantities: quantity === 'ec' ? ['ec', 'ph'] : ['ph'] },
    { kind: 'then-the-rest' },
  ];
}

/** What is asked of people instead of a dose; nothing where another duty already asks it. */
function beforeDose(
  { entry, because }: Extract<DoseAdvice, { kind: 'refused' }>,
  system: System,
  quantity: DoseQuantity,
  { greenhouse, nowMs }: BoardQuestion,
  today: LocalDate,
): readonly DutyLine[] {
  if (!entry) return [];
  const isStale = nowMs - entry.atMs > MEASURE_ANEW_MS;
  const measuredOn = localDateOf(entry.atMs, greenhouse.timeZone);
  const range = quantity === 'ph' ? system.ph : system.ecMsPerCm;
  const waitsUntil = isStale ? waitsForTripUntil(quantity, entry.value, range, measuredOn) : null;
  const line = (duty: Omit<Duty, 'system' | 'dueOn'>, measured: readonly Quantity[]) => {
    const reason: BeforeDoseReason = {
      kind: 'before-dose',
      quantity,
      value: entry.value,
      quantities: measured,
      because,
    };
    const whole: Duty = { ...duty, system: duty.probe ? null : system.id, dueOn: today };
    const wait = waitsUntil === null ? {} : { waitsUntil };
    return [{ duty: whole, ridesFrom: null, ...wait, reason } satisfies DutyLine];
  };
  switch (because.kind) {
    case 'stale-probe':
    case 'unfit-probe':
      return because.probe === null
        ? []
        : line({ kind: 'calibration', probe: because.probe }, [quantity]);
    case 'meters-disagree':
      return [because.one, because.other].flatMap(({ probe }) =>
        probe === undefined ? [] : line({ kind: 'calibration', probe }, [quantity]),
      );
    case 'unknown-volume':
      return line({ kind: 'check' }, ['level']);
    case 'looks-like-slip':
    case 'just-dosed':
      return line({ kind: 'check' }, [quantity]);
    case 'beyond-bound':
      return line({ kind: 'reservoir-change', litres: system.brimL }, []);
    case 'too-strong':
      return tooStrong(because, entry.value, system, line);
    case 'not-measured':
    case 'strength-first':
    case 'not-in-stock':
    case 'outside-formula':
      return [];
  }
}

/** So far above the range that waiting for the plants to drink it down would do harm, as a share. */
const MUCH_TOO_STRONG_SHARE = 1.25;
const LEAST_WATER_L = 1;

function tooStrong(
  because: Extract<DoseRefusal, { kind: 'too-strong' }>,
  ecMsPerCm: number,
  system: System,
  line: (duty: Omit<Duty, 'system' | 'dueOn'>, measured: readonly Quantity[]) => DutyLine[],
): readonly DutyLine[] {
  const isMuch = ecMsPerCm > MUCH_TOO_STRONG_SHARE * system.ecMsPerCm[1];
  if (because.fits && because.waterL >= LEAST_WATER_L) {
    return line({ kind: 'top-up', litres: Math.round(because.waterL), strength: 'plain' }, ['ec']);
  }
  // At the brim and only a little strong: the next top-up is plain water.
  return isMuch ? line({ kind: 'reservoir-change', litres: system.brimL }, []) : [];
}
