import type { HowFull } from '../../assistant/replies/answer.ts';
import type { AnswerOf } from '../spoken/answer-of.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, volume } from '../spoken/volume.ts';
import { dayAndTime, onDay } from './day-text.ts';
import { entryText } from './entry-text.ts';

/** How full each is by now, how sure that is, and what it rests on. */
export function howFullAnswer({ systems }: AnswerOf<'how-full'>, s: Speaker): string {
  return systems.map((each) => lineOf(each, s)).join('\n');
}

function lineOf({ system, now, last, topUps }: HowFull, s: Speaker): string {
  const { name, brimL } = s.system(system);
  if (!now) return `${name}: Wie voll es ist, hat noch niemand gesagt.`;
  const unit = s.units.volume;
  const full = s.amount(measureOf('level', brimL, s.units));
  const [least, most] = s.range(roughVolume(now.leastL, unit), roughVolume(now.mostL, unit));
  const left = s.amount(roughVolume(now.litres, unit));
  const sure =
    least === s.number(roughVolume(now.mostL, unit))
      ? ''
      : ` (höchstwahrscheinlich ${least} bis ${most})`;
  const base = last
    ? `Zuletzt gesagt: ${entryText(last, s)}, ${dayAndTime(last.atMs, s)}`
    : 'Ein Stand wurde noch nie gesagt';
  return `${name}: inzwischen etwa ${left} von ${full}${sure}. ${base}${sinceText(topUps, last !== null, s)}.`;
}

function sinceText(topUps: HowFull['topUps'], isSince: boolean, s: Speaker): string {
  const latest = topUps.at(-1);
  if (!latest) return isSince ? '; seitdem nichts nachgefüllt' : '';
  const litres = topUps.reduce((sum, { value }) => sum + value, 0);
  const amount = s.amount(volume(litres, s.units.volume));
  const since = isSince ? 'seitdem ' : '';
  const day = onDay(s.dateOf(latest.atMs), s);
  return topUps.length === 1
    ? `; ${since}${amount} nachgefüllt, ${day}`
    : `; ${since}${amount} in ${topUps.length} Malen nachgefüllt, zuletzt ${day}`;
}
