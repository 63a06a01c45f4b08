import type { Doubt } from '../../understanding/doubt.ts';
import type { DoubtReason } from '../../understanding/statement.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { productName, quantityNames, volumeNames } from './names.ts';
import { forSystem, fromSystem, inSystem } from './place-text.ts';

/** Asks for the amount that a verb came without. */
export function missingAmountText(
  reason: Extract<DoubtReason, { kind: 'missing-amount' }>,
  doubt: Doubt,
  s: Speaker,
): string {
  const volumeName = volumeNames[s.units.volume];
  switch (reason.quantity) {
    case 'top-up':
      return `How many ${volumeName} did you top up${inSystem(doubt, s)}?`;
    case 'reservoir-change':
      return `How many ${volumeName} of fresh solution went in${forSystem(doubt, s)}?`;
    case 'level':
      return `How much is${inSystem(doubt, s) || ' in it'} now, in ${volumeName} or ${s.units.volume === 'gal' ? 'inches' : 'cm'}?`;
    case 'dose':
      return reason.product === undefined
        ? `How many mL, and of what${forSystem(doubt, s)}?`
        : `How many mL of ${productName(reason.product)}${forSystem(doubt, s)}?`;
    case 'calibration':
      return 'What did the probe show, and in which reference? For example “7.00 read 7.12”.';
    case 'harvest':
      return `How much did you pick${fromSystem(doubt, s)}, in g or kg?`;
    case 'fill-time':
      return `How many minutes did the fill take${forSystem(doubt, s)}?`;
    case 'aeration':
      return `How many minutes an hour does the aeration run${forSystem(doubt, s)}?`;
    case 'ph':
    case 'ec':
    case 'water-temperature':
    case 'air-temperature':
    case 'humidity':
    case 'dissolved-oxygen':
    case 'outage':
    case 'restored':
    case 'duty-done':
    case 'duty-failed':
    case 'note':
      return `What is the ${quantityNames[reason.quantity]}${forSystem(doubt, s)}?`;
  }
}
