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
        ? 'Es wurde noch nicht gemessen, deshalb nenne ich keine Menge.'
        : `Zuletzt wurde ${onDay(because.lastOn, s)} gemessen: bitte erst neu messen.`;
    case 'stale-probe':
      return staleProbe(because, s);
    case 'unfit-probe':
      return `${because.probe}: bei der letzten Kalibrierung durchgefallen, nach diesen Werten wird nicht dosiert. Erst reinigen oder ersetzen und neu kalibrieren.`;
    case 'unknown-volume':
      return `Um eine Dosis zu nennen, muss ich wissen, wie viel drin ist, und das ist zu ungewiss (etwa ${s.amount(roughVolume(because.litres, s.units.volume))}, plus/minus ${s.amount(roughVolume(because.litresSd, s.units.volume))}): sag mir erst den Stand.`;
    case 'meters-disagree': {
      const [one, other] = [because.one, because.other].map(
        (entry) =>
          `${entry.probe ?? 'ein Messgerät'} zeigt ${valueText(entry.quantity, entry.value, s)}`,
      );
      return `Zwei Messgeräte widersprechen sich: ${one ?? ''}, ${other ?? ''}. Erst beide kalibrieren, dann dosieren.`;
    }
    case 'looks-like-slip':
      return `${s.capital(dayText(s.dateOf(because.before.atMs), s))} war es ${valueText(because.before.quantity, because.before.value, s)}, und seither wurde nichts gemacht: bitte noch einmal messen, bevor etwas hineinkommt.`;
    case 'beyond-bound':
      return `Es bräuchte ${dose(because.mL, s)} ${productName(because.product)}, mehr als ich nenne (höchstens ${dose(because.mostMl, s)}). Lieber die Lösung wechseln und die Alkalinität des Wassers prüfen lassen.`;
    case 'not-in-stock':
      return because.neededMl > 0
        ? `Es braucht ${dose(because.neededMl, s)} ${productName(because.product)}, so viel ist nicht mehr da.`
        : `${productName(because.product)} ist nicht im Vorrat.`;
    case 'just-dosed':
      return `${s.capital(atTime(because.atMs, s))} kam etwas hinein: ${because.readyAtMs > s.nowMs ? `ab ${s.clock(because.readyAtMs)} ` : ''}neu messen, dann sage ich, was noch fehlt.`;
    case 'strength-first':
      return 'Erst die Stärke richten, denn Dünger verschiebt den pH; dann den pH neu messen.';
    case 'too-strong': {
      const water = s.amount(roughVolume(because.waterL, s.units.volume));
      return because.fits
        ? `Die Lösung ist zu stark, da hilft nur Wasser: etwa ${water} reines Wasser dazu.`
        : `Die Lösung ist zu stark, da hilft nur Wasser. Es bräuchte etwa ${water}, mehr als hineinpasst: nur mit reinem Wasser nachfüllen oder die Lösung wechseln.`;
    }
    case 'outside-formula':
      return `Für diesen Wert (${quantityNames[because.quantity]}) gilt meine Rechnung nicht, deshalb nenne ich keine Menge.`;
  }
}

function staleProbe(because: Extract<DoseRefusal, { kind: 'stale-probe' }>, s: Speaker): string {
  if (because.probe === null) {
    return 'Ich kenne kein Messgerät dafür und weiß nicht, ob der Wert stimmt. Ohne Kalibrierung keine Zugabe.';
  }
  const last =
    because.calibratedOn === null
      ? 'noch nie kalibriert'
      : `zuletzt ${onDay(because.calibratedOn, s)} kalibriert, das gilt ${because.trustedDays} Tage`;
  return `${because.probe}: ${last}. Erst kalibrieren und neu messen, dann dosieren.`;
}

function dose(mL: number, s: Speaker): string {
  return s.amount(measureOf('dose', mL, s.units));
}
