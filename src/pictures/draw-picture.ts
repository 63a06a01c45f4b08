import type { DrawPicture } from '../wording/wording.ts';
import { readingsChart } from './readings-chart.ts';
import { toPng } from './to-png.ts';
import { waterChart } from './water-chart.ts';

/** A picture as PNG, on the wall clock of a time zone. The same data gives the same bytes. */
export const drawPicture: DrawPicture = (picture, words, timeZone) =>
  toPng(
    picture.kind === 'water'
      ? waterChart(picture, words, timeZone)
      : readingsChart(picture, words, timeZone),
  );
