import type { Picture, ReadingsPicture, WaterPicture } from '../../assistant/replies/picture.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import { pictureScale } from '../spoken/picture-scale.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, volume } from '../spoken/volume.ts';
import type { PictureWords } from '../wording.ts';
import { dayText, sinceDay } from './day-text.ts';
import { quantityNames, volumeNames } from './names.ts';
import { rangeText, valueText } from './value-text.ts';

const label: PictureWords['label'] = {
  brim: 'Rand',
  'low-mark': 'untere Marke',
  estimate: 'Stand, geschätzt, mit Spielraum',
  expected: 'wenn niemand nachfüllt',
  'topped-up': 'nachgefüllt',
  'read-off': 'abgelesen',
  wanted: 'gewünscht',
  changed: 'Lösung gewechselt',
};

export function pictureWords(picture: Picture, s: Speaker): PictureWords {
  return {
    title: titleOf(picture, s),
    alt: `Bild: ${pictureText(picture, s)}`,
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
  if (picture.kind === 'water') return `Wasser: ${name}`;
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
  const since = sinceDay(s.dateOf(fromMs), s);
  const now = amount(past.at(-1)?.likelyL ?? 0);
  const then = ahead.at(-1);
  const poured = topUps.length === 0 ? 'nicht nachgefüllt' : `${topUps.length}-mal nachgefüllt`;
  const expected = then
    ? ` Ohne Nachfüllen sind ${inDays(picture)} noch ${amount(then.lowL)} bis ${amount(then.highL)} zu erwarten.`
    : '';
  return `Wasser in ${s.system(system).name} ${since}, ${poured}. Noch etwa ${now} von ${s.amount(volume(brimL, unit))}, untere Marke ${s.amount(volume(lowL, unit))}.${expected}`;
}

function readingsText({ system, fromMs, panels }: ReadingsPicture, s: Speaker): string {
  const told = panels.map(({ quantity, wanted, points }) => {
    const last = points.at(-1)!;
    const [lowest, highest] = wanted;
    const value = valueText(quantity, last.value, s);
    const when = dayText(s.dateOf(last.atMs), s);
    const count = points.length === 1 ? '' : `${points.length} Messungen, `;
    return `${count}${value} ${when}, ${rangeText(quantity, lowest, highest, s)} gewünscht`;
  });
  return `${s.system(system).name} ${sinceDay(s.dateOf(fromMs), s)}: ${told.join('; ')}.`;
}

function inDays({ nowMs, untilMs }: WaterPicture): string {
  return `in ${Math.round((untilMs - nowMs) / 86_400_000)} Tagen`;
}
