import type { HandMeasure, OutageProspect } from '../../../planning/outage-prospect.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { dayText } from '../day-text.ts';

/** `45 minutes`, `3 hours`, `2½ days`. */
export function hoursText(hours: number): string {
  if (hours < 1.25) {
    const minutes = Math.max(5, Math.round((hours * 60) / 5) * 5);
    return `${minutes} minutes`;
  }
  if (hours < 36) {
    const halves = hours < 6 ? Math.round(hours * 2) / 2 : Math.round(hours);
    return `${Math.floor(halves)}${Number.isInteger(halves) ? '' : '½'} hours`;
  }
  return `${Math.round(hours / 24)} days`;
}

const HAND_MEASURES: Readonly<Record<HandMeasure, string>> = {
  'scoop-and-pour':
    'scoop water up and pour it back from a height, a few minutes in every half hour',
  'battery-air': 'run a battery air pump if there is one',
  'pour-over-roots': 'pour solution over the roots with a jug every 20 minutes',
  'dam-the-channel': 'block the outlets so that some solution stands in the channel',
  'water-the-pots': 'pour solution over the pots by hand every few hours',
  'mist-the-roots': 'spray the roots with solution every 10 minutes',
  shade: 'shade them',
};

export function byHandText(measures: readonly HandMeasure[], s: Speaker): string {
  return s.and(measures.map((measure) => HAND_MEASURES[measure]));
}

/** `Bucket row: likely 6 hours (3 to 12), so until 14:30 at the earliest. By hand: …` */
export function prospectText(prospect: OutageProspect, s: Speaker): string {
  const { system, lowHours, likelyHours, highHours, lowAtMs, byHand } = prospect;
  const why = prospect.by === 'oxygen' ? 'the oxygen in the water runs out' : 'the roots dry out';
  return `${s.system(system).name}: likely ${hoursText(likelyHours)} until ${why} (${hoursText(lowHours)} to ${hoursText(highHours)}), at the earliest ${whenText(lowAtMs, s)}. By hand: ${byHandText(byHand, s)}.`;
}

export function whenText(atMs: number, s: Speaker): string {
  const date = s.dateOf(atMs);
  const clock = `at ${s.clock(atMs)}`;
  return date === s.today ? clock : `${dayText(date, s)} ${clock}`;
}

/** The same after `until` or `since`: `02:15`, `tomorrow at 02:15`. */
export function untilText(atMs: number, s: Speaker): string {
  return s.dateOf(atMs) === s.today ? s.clock(atMs) : whenText(atMs, s);
}
