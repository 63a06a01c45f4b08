import type { System } from '../../../greenhouse/system.ts';

/** `12 × lettuce`; nothing planted: `nothing planted`. */
export function cropText({ crop, plants }: Pick<System, 'crop' | 'plants'>): string {
  if (plants === 0) return 'nothing planted';
  return crop === null ? `${plants} plants` : `${plants} × ${crop}`;
}
