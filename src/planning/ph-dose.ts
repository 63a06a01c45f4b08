import {
  afterTrial,
  type DoseResponse,
  factorQuantile,
  presumedMeqFor,
  presumedResponse,
} from '../estimation/dose-response.ts';
import { type PhBuffer, presumedBuffer } from '../estimation/ph-buffer.ts';
import { stockItemFor } from '../greenhouse/common-products.ts';
import type { Entry } from '../greenhouse/entry.ts';
import type { StockItem } from '../greenhouse/greenhouse.ts';
import type { System } from '../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../logbook/logbook.ts';
import { dosePart } from './dose-part.ts';
import { type MeasuredDose, measuredDoses } from './doses-given.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { PlannedDose, RefusedAmount } from './planned-dose.ts';
import { type PresumedStrength, presumedPhStrength } from './product-strength.ts';
import { litresThen } from './volume-then.ts';

/** A dose is laid so that it would not carry the pH past the far end of the range even then. */
const STRONG_CHANCE = 0.97;
/** What is kept free of the far end of the range, as a share of its width. */
const MARGIN_SHARE = 0.25;
/** Where a dose aims, as a share of the range from the end it comes from. */
const AIM_SHARE = 0.4;
const USUAL_WATER_C = 20;
const USUAL_EC_MS_PER_CM = 1.5;
/** From so much alkalinity on, the carbon dioxide that acid sets free is worth a word, meq/L. */
const CLIMBS_BACK_FROM_MEQ_PER_L = 0.5;

/** How much of which product brings a system's pH into its range; `reading` bears a dose. */
export function phDose(
  system: System,
  reading: Entry,
  question: BoardQuestion,
  target: number | null = null,
): PlannedDose | RefusedAmount {
  const { greenhouse } = question;
  const isTooHigh = reading.value > system.ph[1];
  const common = isTooHigh ? 'ph-down' : 'ph-up';
  const item = stockItemFor(common, greenhouse.stock);
  if (!item) return refused({ kind: 'not-in-stock', product: common, neededMl: 0 });
  const presumed = presumedPhStrength(item, greenhouse.water.alkalinityMeqL);
  const trials = phTrials(system, question);
  const buffer = bufferAt(anchorOf(reading, trials), system, question);
  if (!buffer) return refused({ kind: 'outside-formula', quantity: 'water-temperature' });
  const response = learnedResponse(system, item, trials, presumed, question);
  const water = question.outlooks.get(system.id)!;
  const litres = pessimisticLitres(water);
  const width = system.ph[1] - system.ph[0];
  const usualAim = isTooHigh ? system.ph[1] - AIM_SHARE * width : system.ph[0] + AIM_SHARE * width;
  const aim = target ?? usualAim;
  const margin = MARGIN_SHARE * width;
  const farEnd = isTooHigh ? system.ph[0] + margin : system.ph[1] - margin;
  const mLFor = (toPh: number, factor: number): number =>
    (litres * presumedMeqFor(buffer, reading.value, toPh, factor)) / presumed.strength;
  const wholeMl = mLFor(aim, factorQuantile(response, 0.5));
  const harmlessMl = mLFor(farEnd, factorQuantile(response, STRONG_CHANCE));
  const sum = {
    system,
    quantity: 'ph',
    items: [item],
    litres,
    wholeMl,
    harmlessMl,
    trials: response.trials,
  } as const;
  const part = dosePart(sum, question);
  if (!part.ok) return part;
  const { partMl, isFirstPart } = part;
  return {
    ok: true,
    amounts: [{ product: item.product, mL: partMl }],
    reason: {
      kind: 'out-of-range',
      quantity: 'ph',
      value: reading.value,
      measuredAtMs: reading.atMs,
      lowest: system.ph[0],
      highest: system.ph[1],
      aim,
      wholeMl: Math.max(wholeMl, partMl),
      isFirstPart,
      litres: water.litres,
      basis: response.trials === 0 ? presumed.basis : { kind: 'learned', doses: response.trials },
      climbsBack: isTooHigh && greenhouse.water.alkalinityMeqL >= CLIMBS_BACK_FROM_MEQ_PER_L,
    },
  };
}

/** Less water is the safe side: the same millilitres go further in it. */
function pessimisticLitres(water: { readonly litres: number; readonly litresSd: number }): number {
  return Math.max(water.litres / 2, water.litres - water.litresSd);
}

/** A measured dose of acid or alkali, and the pH at which that day's dosing began. */
interface PhTrial extends MeasuredDose {
  readonly item: StockItem;
  readonly sign: 1 | -1;
  readonly anchorPh: number;
}

/** Doses so close together were given to the same water. */
const SAME_WATER_MS = 12 * 3_600_000;

/** Every measured dose of either product, earliest first. */
function phTrials(system: System, { greenhouse, logbook }: BoardQuestion): readonly PhTrial[] {
  const doses = (['ph-down', 'ph-up'] as const)
    .flatMap((common) => {
      const item = stockItemFor(common, greenhouse.stock);
      if (!item) return [];
      const sign: 1 | -1 = common === 'ph-down' ? -1 : 1;
      const measured = measuredDoses(logbook, system.id, 'ph', [item.product]);
      return measured.map((dose) => ({ ...dose, item, sign }));
    })
    .toSorted((one, other) => one.atMs - other.atMs);
  const trials: PhTrial[] = [];
  for (const dose of doses) trials.push({ ...dose, anchorPh: anchorOf(dose.before, trials) });
  return trials;
}

/**
 * The pH at which the dosing of this water began. What acid leaves of the carbonate is reckoned from
 * there: reckoned anew at each reading it would seem to grow with every part.
 */
function anchorOf(reading: Entry, earlier: readonly PhTrial[]): number {
  const last = earlier.at(-1);
  const isSameWater = last && reading.atMs - last.after.atMs <= SAME_WATER_MS;
  return isSameWater ? last.anchorPh : reading.value;
}

/** The response of a system to a product, from every dose of it that was measured. */
function learnedResponse(
  system: System,
  item: StockItem,
  trials: readonly PhTrial[],
  presumed: PresumedStrength,
  question: BoardQuestion,
): DoseResponse {
  const { logbook, nowMs } = question;
  const water = question.outlooks.get(system.id)!;
  const present = { litres: water.litres, usePerDayL: water.usePerDay, atMs: nowMs };
  let response = presumedResponse(presumed.lnSd);
  for (const trial of trials) {
    const buffer = bufferAt(trial.anchorPh, system, question);
    if (!buffer || trial.item !== item) continue;
    const litres = litresThen(system, logbook, present, trial.atMs);
    response = afterTrial(response, {
      buffer,
      fromPh: trial.before.value,
      toPh: trial.after.value,
      presumedMeqPerL: (trial.sign * trial.mL * presumed.strength) / litres,
    });
  }
  return response;
}

function bufferAt(ph: number, system: System, question: BoardQuestion): PhBuffer | null {
  const { greenhouse, logbook } = question;
  const buffer = presumedBuffer({
    presentPh: ph,
    waterAlkalinityMeqPerL: greenhouse.water.alkalinityMeqL,
    ecMsPerCm: latestEntry(logbook, system.id, 'ec')?.value ?? USUAL_EC_MS_PER_CM,
    waterC: liveEntries(logbook, system.id, 'water-temperature').at(-1)?.value ?? USUAL_WATER_C,
  });
  return buffer.ok ? buffer.value : null;
}

function refused(because: RefusedAmount['because']): RefusedAmount {
  return { ok: false, because };
}
