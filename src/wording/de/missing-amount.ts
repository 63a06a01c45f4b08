import type { Doubt } from '../../understanding/doubt.ts';
import type { DoubtReason } from '../../understanding/statement.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { productName, quantitiesWithArticle, volumeNames } from './names.ts';
import { atSystem } from './place-text.ts';

/** Asks for the amount that a verb came without. */
export function missingAmountText(
  reason: Extract<DoubtReason, { kind: 'missing-amount' }>,
  doubt: Doubt,
  s: Speaker,
): string {
  const volumeName = volumeNames[s.units.volume];
  const where = atSystem(doubt, s);
  switch (reason.quantity) {
    case 'top-up':
      return `Wie viele ${volumeName} hast du${where} nachgefüllt?`;
    case 'reservoir-change':
      return `Wie viele ${volumeName} frische Lösung hast du${where} eingefüllt?`;
    case 'level':
      return `Wie viel ist jetzt${where} drin, in ${volumeName}${s.units.volume === 'gal' ? ' oder Zoll' : 'n oder cm'}?`;
    case 'dose':
      return reason.product === undefined
        ? `Wie viele ml hast du${where} zugegeben, und wovon?`
        : `Wie viele ml ${productName(reason.product)} hast du${where} zugegeben?`;
    case 'calibration':
      return 'Was zeigte das Messgerät, und in welcher Lösung? Zum Beispiel „7,00 zeigte 7,12“.';
    case 'harvest':
      return `Wie viel hast du${where} geerntet, in g oder kg?`;
    case 'fill-time':
      return `Wie viele Minuten hat das Füllen${where} gedauert?`;
    case 'aeration':
      return `Wie viele Minuten pro Stunde läuft die Belüftung${where}?`;
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
      return `Wie ist ${quantitiesWithArticle[reason.quantity]}${where}?`;
  }
}
