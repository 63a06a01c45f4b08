import type { Picture, ReadingsPicture, WaterPicture } from '../../assistant/replies/picture.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import { pictureScale } from '../spoken/picture-scale.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, volume } from '../spoken/volume.ts';
import type { PictureWords } from '../wording.ts';
import { dayText } from './day-text.ts';
import { quantityNames, volumeNames } from './names.ts';
import { rangeText, valueText } from './value-text.ts';

const label: PictureWords['label'] = {
  brim: 'brim',
  'low-mark': 'low mark',
  estimate: 'level as estimated, with its doubt',
  expected: 'expected if nobody tops up',
  'topped-up': 'topped up',
  'read-off': 'read off',
  wanted: 'wanted',
  changed: 'solution changed',
};

export function pictureWords(picture: Picture, s: Speaker): PictureWords {
  return {
    title: titleOf(picture, s),
    alt: `Picture: ${pictureText(picture, s)}`,
    label,
    axis: (quantity) => {
      if (quantity === 'level') return volumeNames[s.units.volume];
      const { unit } = measureOf(quantity, 0, s.units);
      return unit === 'pH' ? 'pH' : `${quantityNames[quantity]}, ${unit}`;
    },
    ...pictureScale(s),
  };
}

function titleOf(picture: Picture, s: Speaker): string {
  const { name } = s.system(picture.system);
  if (picture.kind === 'water') return `Water in ${name}`;
  return `${name}: ${s.and(picture.panels.map(({ quantity }) => quantityNames[quantity]))}`;
}

/** What a picture shows, in one line. */
export function pictureText(picture: Picture, s: Speaker): string {
  return picture.kind === 'water' ? waterText(picture, s) : readingsText(picture, s);
}

function waterText(picture: WaterPicture, s: Speaker): string {
  const { system, fromMs, past, ahead, lowL, brimL, topUps } = picture;
  const unit = s.units.volume;
  const amount = (litres: number) => s.amount(roughVolume(litres, unit));
  const since = dayText(s.dateOf(fromMs), s);
  const now = amount(past.at(-1)?.likelyL ?? 0);
  const then = ahead.at(-1);
  const poured = topUps.length === 0 ? 'no top-up' : counted(topUps.length, 'top-up');
  const expected = then
    ? ` Without a top-up ${amount(then.lowL)} to ${amount(then.highL)} are expected ${inDays(picture)}.`
    : '';
  return `Water in ${s.system(system).name} since ${since}, with ${poured}. About ${now} left of ${s.amount(volume(brimL, unit))}, low mark ${s.amount(volume(lowL, unit))}.${expected}`;
}

function readingsText({ system, fromMs, panels }: ReadingsPicture, s: Speaker): string {
  const told = panels.map(({ quantity, wanted, points }) => {
    const last = points.at(-1)!;
    const [lowest, highest] = wanted;
    const value = valueText(quantity, last.value, s);
    const when = dayText(s.dateOf(last.atMs), s);
    const count = points.length === 1 ? '' : `${points.length} readings, `;
    return `${count}${value} ${when}, ${rangeText(quantity, lowest, highest, s)} wanted`;
  });
  return `${s.system(system).name} since ${dayText(s.dateOf(fromMs), s)}: ${told.join('; ')}.`;
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

function inDays({ nowMs, untilMs }: WaterPicture): string {
  return `in ${Math.round((untilMs - nowMs) / 86_400_000)} days`;
}
