import {
  afterMix,
  presumedStrength,
  riseAt,
  type StrengthResponse,
} from '../estimation/strength-response.ts';
import { stockItemFor } from '../greenhouse/common-products.ts';
import type { Entry } from '../greenhouse/entry.ts';
import type { Greenhouse, StockItem } from '../greenhouse/greenhouse.ts';
import type { System } from '../greenhouse/system.ts';
import { concentratesForConductivity } from '../science/solutions/concentrate-dose.ts';
import { litre } from '../science/units/amount.ts';
import { millisiemensPerCm } from '../science/units/conductivity.ts';
import type { DoseBasis } from './advice-reason.ts';
import { dosePart } from './dose-part.ts';
import { measuredDoses } from './doses-given.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { PlannedDose, RefusedAmount } from './planned-dose.ts';
import { presumedRise } from './product-strength.ts';
import { litresThen } from './volume-then.ts';

/** How strong the concentrates may be, in standard deviations, without carrying EC past its range. */
const STRONG_SD = 1.645;
const MARGIN_SHARE = 0.15;

/** The two concentrates of a household, and what they are believed to add. */
export interface Concentrates {
  readonly partA: StockItem;
  readonly partB: StockItem;
  readonly response: StrengthResponse;
  readonly basis: DoseBasis;
}

/** What the concentrates add, learned from every mix that was measured; null: none in stock. */
export function concentratesOf(
  question: Pick<BoardQuestion, 'greenhouse' | 'logbook' | 'outlooks' | 'nowMs'>,
): Concentrates | null {
  const { greenhouse, logbook, outlooks, nowMs } = question;
  const pair = concentratePair(greenhouse);
  if (!pair) return null;
  const presumed = presumedRise(pair.partA);
  let response = presumedStrength(presumed.strength, presumed.lnSd);
  for (const system of greenhouse.systems) {
    const water = outlooks.get(system.id)!;
    const present = { litres: water.litres, usePerDayL: water.usePerDay, atMs: nowMs };
    const products = [pair.partA.product, pair.partB.product];
    for (const dose of measuredDoses(logbook, system.id, 'ec', products)) {
      response = afterMix(response, {
        riseMsPerCm: dose.after.value - dose.before.value,
        eachMlPerL: dose.mL / 2 / litresThen(system, logbook, present, dose.atMs),
      });
    }
  }
  const basis: DoseBasis =
    response.trials === 0 ? presumed.basis : { kind: 'learned', doses: response.trials };
  return { ...pair, response, basis };
}

function concentratePair({ stock }: Greenhouse): Pick<Concentrates, 'partA' | 'partB'> | null {
  const partA = stockItemFor('nutrient-a', stock);
  const partB = stockItemFor('nutrient-b', stock);
  return partA && partB ? { partA, partB } : null;
}

/** mL of each concentrate that bring so many litres from one EC to another; null: no sum holds. */
export function eachConcentrateMl(
  concentrates: Concentrates,
  mix: { readonly litres: number; readonly fromMsPerCm: number; readonly toMsPerCm: number },
  standardDeviations = 0,
): number | null {
  const dose = concentratesForConductivity({
    volumeL: litre(mix.litres),
    presentMsPerCm: millisiemensPerCm(mix.fromMsPerCm),
    targetMsPerCm: millisiemensPerCm(mix.toMsPerCm),
    riseMsPerCmByMlPerL: riseAt(concentrates.response, standardDeviations),
  });
  return dose.ok ? dose.value.partAMl : null;
}

/** How much of both concentrates brings a system's EC up into its range; `reading` bears a dose. */
export function strengthDose(
  system: System,
  reading: Entry,
  question: BoardQuestion,
  target: number | null = null,
): PlannedDose | RefusedAmount {
  const concentrates = concentratesOf(question);
  if (!concentrates) return refused({ kind: 'not-in-stock', product: 'nutrient-a', neededMl: 0 });
  const { partA, partB, response, basis } = concentrates;
  const water = question.outlooks.get(system.id)!;
  const litres = Math.max(water.litres / 2, water.litres - water.litresSd);
  const [lowest, highest] = system.ecMsPerCm;
  const aim = target ?? (lowest + highest) / 2;
  const farEnd = highest - MARGIN_SHARE * (highest - lowest);
  const from = { litres, fromMsPerCm: reading.value };
  const wholeMl = eachConcentrateMl(concentrates, { ...from, toMsPerCm: aim });
  const harmlessMl = eachConcentrateMl(concentrates, { ...from, toMsPerCm: farEnd }, STRONG_SD);
  if (wholeMl === null || harmlessMl === null) {
    return refused({ kind: 'outside-formula', quantity: 'ec' });
  }
  const items = [partA, partB];
  const { trials } = response;
  const sum = { system, quantity: 'ec', items, litres, wholeMl, harmlessMl, trials } as const;
  const part = dosePart(sum, question);
  if (!part.ok) return part;
  const { partMl, isFirstPart } = part;
  return {
    ok: true,
    amounts: items.map(({ product }) => ({ product, mL: partMl })),
    reason: {
      kind: 'out-of-range',
      quantity: 'ec',
      value: reading.value,
      measuredAtMs: reading.atMs,
      lowest,
      highest,
      aim,
      wholeMl: Math.max(wholeMl, partMl),
      isFirstPart,
      litres: water.litres,
      basis,
      climbsBack: false,
    },
  };
}

function refused(because: RefusedAmount['because']): RefusedAmount {
  return { ok: false, because };
}
