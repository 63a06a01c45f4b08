import type { DoseRefusal } from '../../../planning/dose-refusal.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { atTime, dayText, onDay } from '../day-text.ts';
import { productName, quantityNames } from '../names.ts';
import { valueText } from '../value-text.ts';

/** Why no amount is told, and what to do instead. */
export function refusedDoseText(because: DoseRefusal, s: Speaker): string {
  switch (because.kind) {
    case 'not-measured':
      return because.lastOn === null
        ? 'It has not been measured yet, so I give no amount.'
        : `It was last measured ${onDay(because.lastOn, s)}: please measure again first.`;
    case 'stale-probe':
      return because.probe === null
        ? 'I know of no meter for that, so I cannot tell whether the reading is right. No dose before a calibration.'
        : `The ${because.probe} ${
            because.calibratedOn === null
              ? 'was never calibrated'
              : `was last calibrated ${onDay(because.calibratedOn, s)} and is trusted for ${because.trustedDays} days`
          }: calibrate it and measure again before anything is added.`;
    case 'unfit-probe':
      return `The ${because.probe} failed its last calibration, so its readings bear no dose. Clean or replace it and calibrate again first.`;
    case 'unknown-volume':
      return `Before I name a dose I must know how full it is, and that is not known well enough (about ${s.amount(roughVolume(because.litres, s.units.volume))}, give or take ${s.amount(roughVolume(because.litresSd, s.units.volume))}): tell me the level.`;
    case 'meters-disagree': {
      const [one, other] = [because.one, because.other].map(
        (entry) =>
          `${entry.probe ?? 'one meter'} says ${valueText(entry.quantity, entry.value, s)}`,
      );
      return `Two meters disagree: ${one ?? ''}, ${other ?? ''}. Calibrate both before anything is added.`;
    }
    case 'looks-like-slip':
      return `It was ${valueText(because.before.quantity, because.before.value, s)} ${dayText(s.dateOf(because.before.atMs), s)}, and nothing was done since: please measure again before anything is added.`;
    case 'beyond-bound':
      return `It would take ${dose(because.mL, s)} of ${productName(because.product)}, which is beyond what I tell (${dose(because.mostMl, s)} at most). Change the solution instead, and have the water's alkalinity checked.`;
    case 'not-in-stock':
      return because.neededMl > 0
        ? `It takes ${dose(because.neededMl, s)} of ${productName(because.product)}, and there is not that much left in stock.`
        : `There is no ${productName(because.product)} in stock.`;
    case 'just-dosed':
      return `Something was added ${atTime(because.atMs, s)}: measure again${because.readyAtMs > s.nowMs ? ` ${atTime(because.readyAtMs, s)} or later` : ''}, then I can say what is still missing.`;
    case 'strength-first':
      return 'Set the strength right first, since nutrients move the pH; then measure the pH again.';
    case 'too-strong': {
      const water = s.amount(roughVolume(because.waterL, s.units.volume));
      return because.fits
        ? `It is too strong, and no dose helps: add about ${water} of plain water.`
        : `It is too strong, and no dose helps. It would take about ${water} of plain water, more than fits: top up with plain water only, or change the solution.`;
    }
    case 'outside-formula':
      return `My sums do not hold for this ${quantityNames[because.quantity]}, so I give no amount.`;
  }
}

function dose(mL: number, s: Speaker): string {
  return s.amount(measureOf('dose', mL, s.units));
}
