import type { ProductAmount } from '../greenhouse/duty.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import type { System } from '../greenhouse/system.ts';
import { doseTold } from './dose-bounds.ts';
import { DOSE_WAIT } from './doses-given.ts';
import { type Concentrates, eachConcentrateMl } from './strength-dose.ts';
import type { WorkStep } from './work-step.ts';

/** What a reservoir is filled anew with, and in which order that is done. */
export function newSolution(
  system: System,
  greenhouse: Greenhouse,
  concentrates: Concentrates | null,
): { readonly concentrates: readonly ProductAmount[]; readonly steps: readonly WorkStep[] } {
  const amounts = amountsFor(system, greenhouse, concentrates);
  const steps: readonly WorkStep[] = [
    { kind: 'unplug' },
    { kind: 'empty' },
    { kind: 'old-solution' },
    { kind: 'rinse' },
    { kind: 'fill-with-water', litres: system.brimL },
    ...(amounts.length > 0 ? [{ kind: 'add-one-by-one', amounts } as const] : []),
    { kind: 'stir' },
    { kind: 'wait', fromMin: DOSE_WAIT.fromMin, toMin: DOSE_WAIT.toMin },
    { kind: 'measure-again', quantities: ['ec', 'ph'] },
    { kind: 'set-ph', lowest: system.ph[0], highest: system.ph[1] },
  ];
  return { concentrates: amounts, steps };
}

function amountsFor(
  system: System,
  { water }: Greenhouse,
  concentrates: Concentrates | null,
): readonly ProductAmount[] {
  if (!concentrates) return [];
  const [lowest, highest] = system.ecMsPerCm;
  const eachMl = eachConcentrateMl(concentrates, {
    litres: system.brimL,
    fromMsPerCm: water.ecMsPerCm,
    toMsPerCm: (lowest + highest) / 2,
  });
  if (eachMl === null) return [];
  const mL = doseTold(eachMl);
  return [concentrates.partA, concentrates.partB].map(({ product }) => ({ product, mL }));
}
