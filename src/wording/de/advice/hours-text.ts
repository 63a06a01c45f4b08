import type { HandMeasure, OutageProspect } from '../../../planning/outage-prospect.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { dayText, onDay } from '../day-text.ts';

/** `45 Minuten`, `3 Stunden`, `2 Tage`. */
export function hoursText(hours: number): string {
  if (hours < 1.25) {
    const minutes = Math.max(5, Math.round((hours * 60) / 5) * 5);
    return `${minutes} Minuten`;
  }
  if (hours < 36) {
    const halves = hours < 6 ? Math.round(hours * 2) / 2 : Math.round(hours);
    return `${Math.floor(halves)}${Number.isInteger(halves) ? '' : '½'} Stunden`;
  }
  return `${Math.round(hours / 24)} Tage`;
}

const HAND_MEASURES: Readonly<Record<HandMeasure, string>> = {
  'scoop-and-pour':
    'jede halbe Stunde ein paar Minuten lang Wasser schöpfen und von oben zurückgießen',
  'battery-air': 'eine Luftpumpe mit Batterie laufen lassen, wenn eine da ist',
  'pour-over-roots': 'alle 20 Minuten mit einem Krug Lösung über die Wurzeln gießen',
  'dam-the-channel': 'die Abläufe verstopfen, damit etwas Lösung in der Rinne steht',
  'water-the-pots': 'alle paar Stunden von Hand Lösung über die Töpfe gießen',
  'mist-the-roots': 'alle 10 Minuten Lösung auf die Wurzeln sprühen',
  shade: 'beschatten',
};

export function byHandText(measures: readonly HandMeasure[], s: Speaker): string {
  return s.and(measures.map((measure) => HAND_MEASURES[measure]));
}

/** `Eimerreihe: wahrscheinlich 6 Stunden (3 Stunden bis 12 Stunden), frühestens um 14:30. Von Hand: …` */
export function prospectText(prospect: OutageProspect, s: Speaker): string {
  const { system, lowHours, likelyHours, highHours, lowAtMs, byHand } = prospect;
  const why =
    prospect.by === 'oxygen' ? 'der Sauerstoff im Wasser ausgeht' : 'die Wurzeln trocken werden';
  return `${s.system(system).name}: wahrscheinlich ${hoursText(likelyHours)}, bis ${why} (${hoursText(lowHours)} bis ${hoursText(highHours)}), frühestens ${whenText(lowAtMs, s)}. Von Hand: ${byHandText(byHand, s)}.`;
}

export function whenText(atMs: number, s: Speaker): string {
  const date = s.dateOf(atMs);
  const clock = `um ${s.clock(atMs)}`;
  return date === s.today ? clock : `${onDay(date, s)} ${clock}`;
}

/** `seit 14:30`, `seit gestern 14:30`. */
export function sinceText(atMs: number, s: Speaker): string {
  const date = s.dateOf(atMs);
  return date === s.today ? `seit ${s.clock(atMs)}` : `seit ${dayText(date, s)} ${s.clock(atMs)}`;
}
