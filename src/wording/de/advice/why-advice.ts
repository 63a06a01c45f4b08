import type { AdviceReason, DoseReason, MixReason } from '../../../planning/advice-reason.ts';
import { doseTold } from '../../../planning/dose-bounds.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { atTime, everyDays, onDay, sinceDay } from '../day-text.ts';
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
      return `${valueText(reason.quantity, reason.value, s)} liegt außerhalb. ${refusedDoseText(reason.because, s)}`;
    case 'after-outage':
      return `Nach „${failureNames[reason.of]}“, vorbei ${atTime(reason.restoredAtMs, s)}: nachsehen, ob alles stimmt.`;
    case 'calibration': {
      const last =
        reason.lastOn === null
          ? 'Noch nie kalibriert.'
          : `Zuletzt ${onDay(reason.lastOn, s)} kalibriert.`;
      if (reason.verdict === 'unfit') {
        return `${last} Da ist es durchgefallen, seine Werte sagen nichts.`;
      }
      const rhythm = reason.isLearned ? 'nach der bisherigen Abweichung' : 'wie üblich';
      return `${last} Dran ${everyDays(reason.everyDays)}, ${rhythm}.`;
    }
    case 'change':
      return changeWhy(reason, s);
    case 'aeration': {
      const water = s.amount(measureOf('water-temperature', reason.waterC, s.units));
      const present = s.amount(measureOf('aeration', reason.presentMinPerHour, s.units));
      return reason.isForecast
        ? `Das Wasser wird wohl ${water} warm, und warmes Wasser hält weniger Sauerstoff; jetzt läuft die Luft ${present}.`
        : `Das Wasser hat ${water}; jetzt läuft die Luft ${present}.`;
    }
    case 'clean':
      return cleanWhy(reason, s);
  }
}

function doseWhy(reason: DoseReason, s: Speaker, tellsBasis: boolean): string {
  const { quantity, value, lowest, highest, wholeMl, isFirstPart, litres } = reason;
  const wanted = rangeText(quantity, lowest, highest, s);
  const amount = s.amount(measureOf('dose', doseTold(wholeMl), s.units));
  const whole = quantity === 'ec' ? `${amount} von jedem` : amount;
  const water = s.amount(roughVolume(litres, s.units.volume));
  const part = isFirstPart
    ? `Insgesamt braucht es vielleicht ${whole}, das ist der erste Teil`
    : `Es fehlen vielleicht noch ${whole}`;
  const back = reason.climbsBack
    ? ' Innerhalb eines Tages steigt der pH wieder etwas, weil Kohlendioxid aus dem Wasser geht.'
    : '';
  return `${valueText(quantity, value, s)}, gewünscht: ${wanted}. ${part}; für etwa ${water}${tellsBasis ? `, ${basisText(reason.basis)}` : ''}.${back}`;
}

function changeWhy(reason: Extract<AdviceReason, { kind: 'change' }>, s: Speaker): string {
  const since = reason.lastOn === null ? 'Soweit ich weiß,' : s.capital(sinceDay(reason.lastOn, s));
  const added = s.amount(roughVolume(reason.toppedUpL, s.units.volume));
  const brim = s.amount(roughVolume(reason.brimL, s.units.volume));
  switch (reason.because) {
    case 'top-ups':
      return `${since} wurden ${added} nachgefüllt, bei ${brim} Inhalt: was die Pflanzen übrig lassen, sammelt sich.`;
    case 'salts':
      return `${since} wurden ${added} nachgefüllt: damit nähert sich das Natrium aus dem Wasser dem, was diese Wurzeln vertragen.`;
    case 'drift':
      return 'Der pH wurde diese Woche immer wieder gerichtet und hielt nicht.';
    case 'age':
      return reason.ageDays < reason.dueAgeDays
        ? `Die Lösung ist ${daysLong(reason.ageDays)} alt; bei ${brim} Inhalt ist es nach ${reason.dueAgeDays} Tagen Zeit.`
        : `Die Lösung ist ${daysLong(reason.ageDays)} alt, bei ${brim} Inhalt ist es Zeit.`;
  }
}

function daysLong(days: number): string {
  return days === 1 ? '1 Tag' : `${days} Tage`;
}

function cleanWhy({ because }: Extract<AdviceReason, { kind: 'clean' }>, s: Speaker): string {
  switch (because.kind) {
    case 'fill-time': {
      const [took, usual] = [because.minutes, because.usualMinutes].map((minutes) =>
        s.amount(measureOf('fill-time', minutes, s.units)),
      );
      return `Das letzte Fluten dauerte ${took ?? ''} statt ${usual ?? ''}: das ist der Filter.`;
    }
    case 'low-oxygen':
      return `Der Sauerstoff ist auf ${s.amount(measureOf('dissolved-oxygen', because.mgPerL, s.units))} gefallen: das können die Steine sein.`;
    case 'interval':
      return because.lastOn === null
        ? `Dran ${everyDays(because.everyDays)}, bisher noch nicht gemacht.`
        : `Dran ${everyDays(because.everyDays)}, zuletzt ${onDay(because.lastOn, s)} gemacht.`;
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
        ? ' und steigend'
        : ' und fallend';
  const isTold = tellsBasis && mix.strength !== 'plain';
  const basis = isTold ? `; die Milliliter sind ${basisText(mix.basis)}` : '';
  const short = mix.isShort ? ' So viel ist nicht mehr vorrätig.' : '';
  return `${now}${moving}, gewünscht: ${wanted}${basis}.${short}`;
}
