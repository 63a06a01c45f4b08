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
  if (!now) return `${name}: nobody has said yet how full it is.`;
  const unit = s.units.volume;
  const full = s.amount(measureOf('level', brimL, s.units));
  const [least, most] = s.range(roughVolume(now.leastL, unit), roughVolume(now.mostL, unit));
  const left = s.amount(roughVolume(now.litres, unit));
  const sure =
    least === s.number(roughVolume(now.mostL, unit)) ? '' : ` (most likely ${least} to ${most})`;
  const base = last
    ? `Last told: ${entryText(last, s)}, ${dayAndTime(last.atMs, s)}`
    : 'No level was ever told';
  return `${name}: about ${left} of ${full} by now${sure}. ${base}${sinceText(topUps, last !== null, s)}.`;
}

function sinceText(topUps: HowFull['topUps'], isSince: boolean, s: Speaker): string {
  const latest = topUps.at(-1);
  if (!latest) return isSince ? '; no top-up since' : '';
  const litres = topUps.reduce((sum, { value }) => sum + value, 0);
  const amount = s.amount(volume(litres, s.units.volume));
  const since = isSince ? ' since' : '';
  return topUps.length === 1
    ? `; topped up ${amount}${since}, ${onDay(s.dateOf(latest.atMs), s)}`
    : `; topped up ${amount}${since} in ${topUps.length} goes, the last ${onDay(s.dateOf(latest.atMs), s)}`;
}
