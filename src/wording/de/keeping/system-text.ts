import type { System } from '../../../greenhouse/system.ts';
import { depth } from '../../spoken/depth.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { rangeText } from '../value-text.ts';
import { cropText } from './crop-text.ts';

/** A system in one line, as it is set up. */
export function systemText(system: System, s: Speaker): string {
  const { name, brimL, lowL, depthCm, ph, ecMsPerCm } = system;
  const litres = (value: number): string => s.amount(measureOf('level', value, s.units));
  return [
    `${name}: ${litres(brimL)} bis zum Rand, ${s.amount(depth(depthCm, s.units.volume))} tief`,
    `untere Marke ${litres(lowL)}`,
    cropText(system),
    `pH ${rangeText('ph', ph[0], ph[1], s)}`,
    `EC ${rangeText('ec', ecMsPerCm[0], ecMsPerCm[1], s)}`,
  ].join(', ');
}
