import type { DrawPicture } from '../wording/wording.ts';
import { wordings } from '../wording/wordings.ts';
import { readingsChart } from './readings-chart.ts';
import { toPng } from './to-png.ts';
import { waterChart } from './water-chart.ts';

/** A picture as PNG, in a reader's words. The same data gives the same bytes. */
export const drawPicture: DrawPicture = (picture, language, reader) => {
  const words = wordings[language].picture(picture, reader);
  const { timeZone } = reader.greenhouse;
  return toPng(
    picture.kind === 'water'
      ? waterChart(picture, words, timeZone)
      : readingsChart(picture, words, timeZone),
  );
};
