import * as Plot from '@observablehq/plot';
import { parseHTML } from 'linkedom';
import type { PictureWords } from '../wording/wording.ts';
import { colours, fontFamily, widthPx } from './look.ts';
import { type DayTick } from './wall-clock.ts';

/** As much of a browser's page as is used: the project's types know no browser. */
interface Page {
  readonly document: object;
}
interface SvgElement {
  readonly outerHTML: string;
  setAttribute(name: string, value: string): void;
}

const page: unknown = parseHTML('<html></html>');
const { document } = page as Page;

/** A line of the legend: its sign in its colour, and what it stands for. */
export interface LegendItem {
  readonly sign: string;
  readonly colour: string;
  readonly text: string;
}

export interface Frame {
  readonly heightPx: number;
  readonly x: readonly [Date, Date];
  readonly y: readonly [number, number];
  readonly yLabel: string;
  readonly ticks: readonly DayTick[];
  /** False: the days stand under another chart of the same picture. */
  readonly hasDays: boolean;
  readonly words: Pick<PictureWords, 'day' | 'number'>;
  /** Null: another chart of the same picture has it. */
  readonly title: string | null;
  readonly legend: readonly LegendItem[];
}

const titleHeightPx = 34;
const titleSizesPx = { largest: 16, smallest: 12 };
const legendRowPx = 20;
/** Beside its sign, half the width holds so many letters. */
const mostLettersInHalf = 20;
/** How wide a letter of the fonts is on the average, bold and not, as a share of its size. */
const letterShare = 0.64;
const mostFigures = 5;
/** Between two figures on the axis: more may come than are asked for, and they must not touch. */
const figureRoomPx = 27;
const edgePx = 8;
const marginsPx = { left: 48, right: 24, bottom: 34, bottomWithoutDays: 10, axisLabel: 22 };

/** What a chart is higher than the part that is plotted in, where its legend takes one line. */
export function aroundPlotPx({
  hasTitle,
  hasDays,
}: {
  readonly hasTitle: boolean;
  readonly hasDays: boolean;
}): number {
  const headPx = hasTitle ? titleHeightPx + legendRowPx : 0;
  return headPx + marginsPx.axisLabel + bottomPx(hasDays);
}

function bottomPx(hasDays: boolean): number {
  return hasDays ? marginsPx.bottom : marginsPx.bottomWithoutDays;
}

/** One chart as SVG: marks on a time axis of whole days, a title and a legend above. */
export function plotted(frame: Frame, marks: readonly Plot.Markish[]): string {
  const { heightPx, x, y, yLabel, ticks, hasDays, words, title, legend } = frame;
  const columns = legend.every(({ text }) => text.length <= mostLettersInHalf) ? 2 : 1;
  const legendPx = Math.ceil(legend.length / columns) * legendRowPx;
  const headPx = (title === null ? 0 : titleHeightPx) + legendPx;
  const plotPx = heightPx - headPx - marginsPx.axisLabel - bottomPx(hasDays);
  const figures = Math.max(2, Math.min(mostFigures, Math.floor(plotPx / figureRoomPx)));
  const plot: unknown = Plot.plot({
    document,
    width: widthPx,
    height: heightPx,
    marginTop: headPx + marginsPx.axisLabel,
    marginLeft: marginsPx.left,
    marginRight: marginsPx.right,
    marginBottom: bottomPx(hasDays),
    style: { fontFamily, fontSize: '13px', color: colours.ink, background: colours.paper },
    x: { type: 'utc', domain: [...x], axis: null },
    y: { domain: [...y], axis: null },
    marks: [
      Plot.gridY({ stroke: colours.faint, strokeOpacity: 0.25, ticks: figures }),
      Plot.ruleX(ticks, { x: 'at', stroke: colours.faint, strokeOpacity: 0.25 }),
      ...marks,
      Plot.axisY({
        ticks: figures,
        tickFormat: (value: number) => words.number(value),
        label: null,
        tickSize: 0,
        fill: colours.ink,
      }),
      ...(hasDays ? [daysBelow(ticks, words)] : []),
      above([yLabel], { dy: -8, dx: edgePx - marginsPx.left, fill: colours.faint }),
      ...(title === null
        ? []
        : [above([title], { ...headAt(headPx), ...fitted(title), fontWeight: 'bold' })]),
      ...legend.map((item, position) => legendLine(item, position, columns, legendPx)),
    ].flat(),
  });
  const chart = plot as SvgElement;
  chart.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  return chart.outerHTML;
}

function daysBelow(ticks: readonly DayTick[], words: Frame['words']): Plot.Markish {
  return Plot.axisX(
    ticks.map(({ at }) => at),
    { tickFormat: (at: Date) => words.day(tickAt(ticks, at).date), tickSize: 4, label: null },
  );
}

function tickAt(ticks: readonly DayTick[], at: Date): DayTick {
  return ticks.find((tick) => tick.at.getTime() === at.getTime())!;
}

/** Words above the frame, from its left edge. */
function above(text: readonly string[], options: Plot.TextOptions): Plot.Text {
  return Plot.text(text, {
    frameAnchor: 'top-left',
    textAnchor: 'start',
    lineAnchor: 'bottom',
    ...options,
  });
}

/** As large as the width allows; what is still too long ends in dots. */
function fitted(title: string): Plot.TextOptions {
  const roomPx = widthPx - 2 * edgePx;
  const { largest, smallest } = titleSizesPx;
  const fontSize = Math.max(smallest, Math.min(largest, roomPx / (title.length * letterShare)));
  return { fontSize, lineWidth: roomPx / fontSize, textOverflow: 'ellipsis-end' };
}

function headAt(fromFramePx: number): Plot.TextOptions {
  return {
    dx: edgePx - marginsPx.left,
    dy: -marginsPx.axisLabel - fromFramePx + titleHeightPx - 8,
  };
}

function legendLine(
  { sign, colour, text }: LegendItem,
  position: number,
  columns: number,
  legendPx: number,
): readonly Plot.Text[] {
  const row = Math.floor(position / columns);
  const column = position % columns;
  const dx = edgePx - marginsPx.left + column * (widthPx / columns);
  const dy = -marginsPx.axisLabel - legendPx + (row + 1) * legendRowPx - 6;
  return [
    above([sign], { dx, dy, fill: colour }),
    above([text], { dx: dx + 24, dy, fill: colours.ink }),
  ];
}
