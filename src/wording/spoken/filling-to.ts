import { litresAtDepth, type System } from '../../greenhouse/system.ts';

/** How far a top-up goes; a system that must keep its air gap is not filled back to the brim. */
export type FillingTo =
  | { readonly kind: 'brim' }
  | { readonly kind: 'just-under-brim' }
  | { readonly kind: 'level'; readonly litres: number; readonly belowBrimCm: number };

/** Nobody sees less than this between water and brim. */
const visibleCm = 0.5;

export function fillingTo(system: System, fillToL: number): FillingTo {
  if (fillToL >= system.brimL) return { kind: 'brim' };
  const belowBrimCm = (system.brimL - fillToL) / litresAtDepth(system, 1);
  if (belowBrimCm < visibleCm) return { kind: 'just-under-brim' };
  return { kind: 'level', litres: fillToL, belowBrimCm };
}
