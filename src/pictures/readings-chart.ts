import * as Plot from '@observablehq/plot';
import type { ReadingsPanel, ReadingsPicture } from '../assistant/replies/picture.ts';
import type { PictureWords } from '../wording/wording.ts';
import { colours, widthPx } from './look.ts';
import { aroundPlotPx, plotted } from './plotting.ts';
import { dayTicks, onWall } from './wall-clock.ts';

/** How high the part is that is plotted in: as high as the picture allows, and never too low to read. */
const plotPx = { most: 100, least: 56 };
/** Room above and below what is shown, as a share of its height. */
const airShare = 0.15;

/** The readings of one system, one quantity above the other, each with the range that is wanted. */
export function readingsChart(
  picture: ReadingsPicture,
  words: PictureWords,
  timeZone: string,
): string {
  const arounds = picture.panels.map((_, position) => {
    const isLast = position === picture.panels.length - 1;
    return { hasTitle: position === 0, hasDays: isLast };
  });
  const aroundPx = arounds.reduce((sum, around) => sum + aroundPlotPx(around), 0);
  const roomPx = Math.floor((widthPx - aroundPx) / picture.panels.length);
  const eachPlotPx = Math.min(plotPx.most, Math.max(plotPx.least, roomPx));
  let top = 0;
  const charts = picture.panels.map((panel, position) => {
    const around = arounds[position]!;
    const heightPx = eachPlotPx + aroundPlotPx(around);
    const chart = panelChart(picture, panel, { words, timeZone, heightPx, ...around });
    const placed = chart.replace('<svg ', `<svg y="${top}" `);
    top += heightPx;
    return placed;
  });
  const size = `width="${widthPx}" height="${top}" viewBox="0 0 ${widthPx} ${top}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${charts.join('')}</svg>`;
}

interface Setting {
  readonly words: PictureWords;
  readonly timeZone: string;
  readonly heightPx: number;
  readonly hasTitle: boolean;
  readonly hasDays: boolean;
}

function panelChart(
  { fromMs, nowMs, changedAtMs }: ReadingsPicture,
  { quantity, wanted, points }: ReadingsPanel,
  { words, timeZone, heightPx, hasTitle, hasDays }: Setting,
): string {
  const value = (stored: number) => words.onAxis(quantity, stored);
  const at = (atMs: number) => onWall(atMs, timeZone);
  const [lowest, highest] = [value(wanted[0]), value(wanted[1])];
  const shown = points.map((point) => ({ at: at(point.atMs), value: value(point.value) }));
  const values = [lowest, highest, ...shown.map((point) => point.value)];
  const [bottom, height] = [Math.min(...values), Math.max(...values) - Math.min(...values)];
  const isOut = (point: { readonly value: number }) =>
    point.value < lowest || point.value > highest;
  const { label } = words;
  return plotted(
    {
      heightPx,
      x: [at(fromMs - dayMs / 2), at(nowMs + dayMs / 2)],
      y: [bottom - airShare * height, bottom + (1 + airShare) * height],
      yLabel: words.axis(quantity),
      ticks: dayTicks(fromMs - dayMs / 2, nowMs + dayMs / 2, timeZone),
      hasDays,
      words,
      title: hasTitle ? words.title : null,
      legend: hasTitle
        ? [
            { sign: '■', colour: colours.wanted, text: label.wanted },
            ...(changedAtMs.length > 0
              ? [{ sign: '┆', colour: colours.poured, text: label.changed }]
              : []),
          ]
        : [],
    },
    [
      Plot.rect([0], {
        y1: [lowest],
        y2: [highest],
        fill: colours.wanted,
        fillOpacity: 0.14,
      }),
      Plot.ruleX(changedAtMs.map(at), { stroke: colours.poured, strokeDasharray: '3,3' }),
      Plot.lineY(shown, { x: 'at', y: 'value', stroke: colours.water, strokeOpacity: 0.5 }),
      Plot.dot(shown, {
        x: 'at',
        y: 'value',
        r: 4,
        fill: (point: { value: number }) => (isOut(point) ? colours.low : colours.water),
      }),
    ],
  );
}

const dayMs = 86_400_000;
