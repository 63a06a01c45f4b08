import type { AdviceReason, DoseReason, MixReason } from '../../../planning/advice-reason.ts';
import { doseTold } from '../../../planning/dose-bounds.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { atTime, dayText, everyDays, onDay } from '../day-text.ts';
import { failureNames } from '../names.ts';
import { rangeText, valueText } from '../value-text.ts';
import { basisText } from './basis.ts';
import { refusedDoseText } from './refused-dose.ts';

/**
 * The reason of a piece of advice, in a sentence or two. `tellsBasis`: also what its amounts rest on,
 * which beside others is told once for all.
 */
export function adviceWhy(reason: AdviceReason, s: Speaker, tellsBasis: boolean): string {
  switch (reason.kind) {
    case 'out-of-range':
      return doseWhy(reason, s, tellsBasis);
    case 'before-dose':
      return `${valueText(reason.quantity, reason.value, s)} is out of range. ${refusedDoseText(reason.because, s)}`;
    case 'after-outage':
      return `After “${failureNames[reason.of]}”, over ${atTime(reason.restoredAtMs, s)}: see that all is well.`;
    case 'calibration': {
      const last =
        reason.lastOn === null
          ? 'Never calibrated.'
          : `Last calibrated ${onDay(reason.lastOn, s)}.`;
      if (reason.verdict === 'unfit')
        return `${last} It failed then, so its readings mean nothing.`;
      const rhythm = reason.isLearned ? 'going by how it has drifted' : 'as is usual';
      return `${last} Due ${everyDays(reason.everyDays)}, ${rhythm}.`;
    }
    case 'change':
      return changeWhy(reason, s);
    case 'aeration': {
      const water = s.amount(measureOf('water-temperature', reason.waterC, s.units));
      const present = s.amount(measureOf('aeration', reason.presentMinPerHour, s.units));
      return reason.isForecast
        ? `The water is likely to reach ${water}, and warm water holds less oxygen; it now runs ${present}.`
        : `The water is at ${water}; the air now runs ${present}.`;
    }
    case 'clean':
      return cleanWhy(reason, s);
  }
}

function doseWhy(reason: DoseReason, s: Speaker, tellsBasis: boolean): string {
  const { quantity, value, lowest, highest, wholeMl, isFirstPart, litres } = reason;
  const wanted = rangeText(quantity, lowest, highest, s);
  const amount = s.amount(measureOf('dose', doseTold(wholeMl), s.units));
  const whole = quantity === 'ec' ? `${amount} of each` : amount;
  const water = s.amount(roughVolume(litres, s.units.volume));
  const part = isFirstPart
    ? `In all it may take about ${whole}, so this is the first part`
    : `About ${whole} may still be missing`;
  const back = reason.climbsBack
    ? ' The pH will climb again within a day as carbon dioxide leaves the water.'
    : '';
  return `${valueText(quantity, value, s)}, ${wanted} is wanted. ${part}; for about ${water}${tellsBasis ? `, ${basisText(reason.basis)}` : ''}.${back}`;
}

function changeWhy(reason: Extract<AdviceReason, { kind: 'change' }>, s: Speaker): string {
  const since = reason.lastOn === null ? 'As far as I know' : `Since ${dayText(reason.lastOn, s)}`;
  const added = s.amount(roughVolume(reason.toppedUpL, s.units.volume));
  const brim = s.amount(roughVolume(reason.brimL, s.units.volume));
  switch (reason.because) {
    case 'top-ups':
      return `${since} ${added} have been topped up, against the ${brim} it holds: what plants leave behind piles up.`;
    case 'salts':
      return `${since} ${added} have been topped up: by then sodium from the water nears what these roots bear.`;
    case 'drift':
      return 'Its pH was set right again and again this week and did not stay.';
    case 'age':
      return reason.ageDays < reason.dueAgeDays
        ? `The solution is ${daysLong(reason.ageDays)} old; for a reservoir of ${brim} its time is at ${daysLong(reason.dueAgeDays)}.`
        : `The solution is ${daysLong(reason.ageDays)} old, which is its time for a reservoir of ${brim}.`;
  }
}

function daysLong(days: number): string {
  return days === 1 ? '1 day' : `${days} days`;
}

function cleanWhy({ because }: Extract<AdviceReason, { kind: 'clean' }>, s: Speaker): string {
  switch (because.kind) {
    case 'fill-time': {
      const [took, usual] = [because.minutes, because.usualMinutes].map((minutes) =>
        s.amount(measureOf('fill-time', minutes, s.units)),
      );
      return `The last flood took ${took ?? ''} against ${usual ?? ''}: that is the filter.`;
    }
    case 'low-oxygen':
      return `Oxygen is down to ${s.amount(measureOf('dissolved-oxygen', because.mgPerL, s.units))}: that may be the stones.`;
    case 'interval':
      return because.lastOn === null
        ? `Due ${everyDays(because.everyDays)}, and not done yet.`
        : `Due ${everyDays(because.everyDays)}, last done ${onDay(because.lastOn, s)}.`;
  }
}

/** Why a top-up is to be as strong as it is. */
export function mixWhy(mix: MixReason, s: Speaker, tellsBasis: boolean): string {
  const { driftPerDay } = mix;
  const now = valueText('ec', mix.ecMsPerCm, s);
  const wanted = rangeText('ec', mix.lowest, mix.highest, s);
  const moving =
    driftPerDay === null || Math.abs(driftPerDay) < 0.02
      ? ''
      : driftPerDay > 0
        ? ' and rising'
        : ' and falling';
  const isTold = tellsBasis && mix.strength !== 'plain';
  const basis = isTold ? `; the millilitres are ${basisText(mix.basis)}` : '';
  const short = mix.isShort ? ' There is not that much left in stock.' : '';
  return `${now}${moving}, ${wanted} is wanted${basis}.${short}`;
}
