import type { Entry } from '../greenhouse/entry.ts';
import type { System } from '../greenhouse/system.ts';
import { waterToDiluteL } from '../science/conductivity/mixing.ts';
import { litre } from '../science/units/amount.ts';
import { millisiemensPerCm } from '../science/units/conductivity.ts';
import type { DoseRefusal } from './dose-refusal.ts';
import type { BoardQuestion } from './duty-board.ts';
import { phDose } from './ph-dose.ts';
import type { PlannedDose } from './planned-dose.ts';
import { bearingReading } from './reading-trust.ts';
import { strengthDose } from './strength-dose.ts';

export type DoseQuantity = 'ph' | 'ec';

/** What is to be done about the pH or the EC of a system. */
export type DoseAdvice =
  | { readonly kind: 'in-range'; readonly entry: Entry }
  | { readonly kind: 'dose'; readonly dose: PlannedDose }
  /** entry: the reading that is out of range, or may be; null: there is none that counts. */
  | { readonly kind: 'refused'; readonly entry: Entry | null; readonly because: DoseRefusal };

/** A volume is known when it is given or taken by no more than this share. */
const KNOWN_VOLUME_SHARE = 0.25;

/**
 * One decision for one system and quantity: a safe dose, or why there is none. `target`: what somebody
 * wants it to come to; what lies outside the wanted range is not aimed at.
 */
export function doseAdvice(
  question: BoardQuestion,
  system: System,
  quantity: DoseQuantity,
  target: number | null = null,
): DoseAdvice {
  const bearing = bearingReading(question, system.id, quantity);
  const { entry } = bearing;
  const aim = target === null ? null : withinRange(target, quantity, system);
  const isToRise = quantity === 'ec' && entry !== null && aim !== null && aim > entry.value;
  if (entry && isInRange(entry, system) && !isToRise) {
    const because = bearing.ok ? null : bearing.because;
    // A meter that contradicts another is a matter also where this one shows what is wanted.
    if (because?.kind !== 'meters-disagree') return { kind: 'in-range', entry };
  }
  if (!bearing.ok) return { kind: 'refused', entry, because: bearing.because };
  const refused = (because: DoseRefusal): DoseAdvice => ({
    kind: 'refused',
    entry: bearing.entry,
    because,
  });
  const water = question.outlooks.get(system.id)!;
  if (water.litresSd > KNOWN_VOLUME_SHARE * water.litres) {
    return refused({
      kind: 'unknown-volume',
      litres: water.litres,
      litresSd: water.litresSd,
    });
  }
  if (quantity === 'ec' && bearing.entry.value > system.ecMsPerCm[1]) {
    return refused(tooStrong(system, bearing.entry, water.litres, question));
  }
  if (quantity === 'ph' && isWeak(question, system)) return refused({ kind: 'strength-first' });
  const dose =
    quantity === 'ph'
      ? phDose(system, bearing.entry, question, aim)
      : strengthDose(system, bearing.entry, question, aim);
  return dose.ok ? { kind: 'dose', dose } : refused(dose.because);
}

function withinRange(target: number, quantity: DoseQuantity, system: System): number {
  const [lowest, highest] = quantity === 'ph' ? system.ph : system.ecMsPerCm;
  return Math.min(highest, Math.max(lowest, target));
}

function isInRange(entry: Entry, system: System): boolean {
  const [lowest, highest] = entry.quantity === 'ph' ? system.ph : system.ecMsPerCm;
  return entry.value >= lowest && entry.value <= highest;
}

/** A dose of nutrients is due: it moves the pH by itself. */
function isWeak(question: BoardQuestion, system: System): boolean {
  const bearing = bearingReading(question, system.id, 'ec');
  if (!bearing.ok || bearing.entry.value >= system.ecMsPerCm[0]) return false;
  return strengthDose(system, bearing.entry, question).ok;
}

function tooStrong(
  system: System,
  entry: Entry,
  litres: number,
  { greenhouse }: BoardQuestion,
): DoseRefusal {
  const [lowest, highest] = system.ecMsPerCm;
  const water = waterToDiluteL({
    volumeL: litre(litres),
    conductivityMsPerCm: millisiemensPerCm(entry.value),
    targetMsPerCm: millisiemensPerCm((lowest + highest) / 2),
    waterMsPerCm: millisiemensPerCm(greenhouse.water.ecMsPerCm),
  });
  if (!water.ok) return { kind: 'outside-formula', quantity: 'ec' };
  return { kind: 'too-strong', waterL: water.value, fits: litres + water.value <= system.brimL };
}
