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
import { measuredDoses } from './doses-given.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { PlannedDose, RefusedAmount } from './planned-dose.ts';
import { type PresumedStrength, presumedPhStrength } from './product-strength.ts';
import { litresThen } from './volume-then.ts';

/** A dose is laid so that it would not carry the pH past the far end of the range even then. */
const STRONG_CHANCE = 0.95;
/** What is kept free of the far end of the range, as a share of its width. */
const MARGIN_SHARE = 0.15;
const USUAL_WATER_C = 20;
const USUAL_EC_MS_PER_CM = 1.5;
/** From so much alkalinity on, the carbon dioxide that acid sets free is worth a word, meq/L. */
const CLIMBS_BACK_FROM_MEQ_PER_L = 0.5;

/** How much of which product brings a system's pH into its range; `reading` bears a dose. */
export function phDose(
  system: System,
  reading: Entry,
  question: BoardQuestion,
): PlannedDose | RefusedAmount {
  const { greenhouse } = question;
  const isTooHigh = reading.value > system.ph[1];
  const common = isTooHigh ? 'ph-down' : 'ph-up';
  const item = stockItemFor(common, greenhouse.stock);
  if (!item) return refused({ kind: 'not-in-stock', product: common, neededMl: 0 });
  const presumed = presumedPhStrength(item, greenhouse.water.alkalinityMeqL);
  const buffer = bufferAt(reading.value, system, question);
  if (!buffer) return refused({ kind: 'outside-formula', quantity: 'water-temperature' });
  const response = learnedResponse(system, item, isTooHigh ? -1 : 1, presumed, question);
  const water = question.outlooks.get(system.id)!;
  const litres = pessimisticLitres(water);
  const aim = (system.ph[0] + system.ph[1]) / 2;
  const margin = MARGIN_SHARE * (system.ph[1] - system.ph[0]);
  const farEnd = isTooHigh ? system.ph[0] + margin : system.ph[1] - margin;
  const mLFor = (toPh: number, factor: number): number =>
    (litres * presumedMeqFor(buffer, reading.value, toPh, factor)) / presumed.strength;
  const wholeMl = mLFor(aim, factorQuantile(response, 0.5));
  const harmlessMl = mLFor(farEnd, factorQuantile(response, STRONG_CHANCE));
  const trials = response.trials;
  const sum = {
    system,
    quantity: 'ph',
    items: [item],
    litres,
    wholeMl,
    harmlessMl,
    trials,
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
      basis: trials === 0 ? presumed.basis : { kind: 'learned', doses: trials },
      climbsBack: isTooHigh && greenhouse.water.alkalinityMeqL >= CLIMBS_BACK_FROM_MEQ_PER_L,
    },
  };
}

/** Less water is the safe side: the same millilitres go further in it. */
function pessimisticLitres(water: { readonly litres: number; readonly litresSd: number }): number {
  return Math.max(water.litres / 2, water.litres - water.litresSd);
}

/** The response of a system to a product, from every dose of it that was measured. */
function learnedResponse(
  system: System,
  item: StockItem,
  sign: 1 | -1,
  presumed: PresumedStrength,
  question: BoardQuestion,
): DoseResponse {
  const { logbook, nowMs } = question;
  const water = question.outlooks.get(system.id)!;
  const present = { litres: water.litres, usePerDayL: water.usePerDay, atMs: nowMs };
  let response = presumedResponse(presumed.lnSd);
  for (const dose of measuredDoses(logbook, system.id, 'ph', [item.product])) {
    const buffer = bufferAt(dose.before.value, system, question);
    if (!buffer) continue;
    const litres = litresThen(system, logbook, present, dose.atMs);
    response = afterTrial(response, {
      buffer,
      fromPh: dose.before.value,
      toPh: dose.after.value,
      presumedMeqPerL: (sign * dose.mL * presumed.strength) / litres,
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
