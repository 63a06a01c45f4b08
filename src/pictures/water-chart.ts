import * as Plot from '@observablehq/plot';
import type { WaterPicture } from '../assistant/replies/picture.ts';
import type { PictureWords } from '../wording/wording.ts';
import { colours } from './look.ts';
import { plotted } from './plotting.ts';
import { dayTicks, onWall } from './wall-clock.ts';

const heightPx = 420;
/** Above the brim, so that its line is seen. */
const headroom = 1.06;
/** More amounts than this would be written over each other. */
const mostAmounts = 6;

/** The water of one system: what was believed, what is expected, what was poured in. */
export function waterChart(picture: WaterPicture, words: PictureWords, timeZone: string): string {
  const { fromMs, nowMs, untilMs, past, ahead, topUps, told, brimL, lowL } = picture;
  const { label } = words;
  const litres = (value: number) => words.onAxis('level', value);
  const at = (atMs: number) => onWall(atMs, timeZone);
  const bands = (track: WaterPicture['past']) =>
    track.map((band) => ({
      at: at(band.atMs),
      low: litres(band.lowL),
      likely: litres(band.likelyL),
      high: litres(band.highL),
    }));
  const poured = topUps.map(({ atMs, value }) => ({ at: at(atMs), amount: litres(value) }));
  const band = { x: 'at', y1: 'low', y2: 'high', fill: colours.water, curve: 'linear' } as const;
  const line = { x: 'at', y: 'likely', stroke: colours.water, strokeWidth: 2 } as const;
  return plotted(
    {
      heightPx,
      x: [at(fromMs), at(untilMs)],
      y: [0, litres(brimL) * headroom],
      yLabel: words.axis('level'),
      hasDays: true,
      ticks: dayTicks(fromMs, untilMs, timeZone),
      words,
      title: words.title,
      legend: [
        { sign: '■', colour: colours.water, text: label.estimate },
        { sign: '╌', colour: colours.water, text: label.expected },
        ...(poured.length > 0
          ? [{ sign: '▲', colour: colours.poured, text: label['topped-up'] }]
          : []),
        ...(told.length > 0 ? [{ sign: '○', colour: colours.ink, text: label['read-off'] }] : []),
      ],
    },
    [
      Plot.areaY(bands(past), { ...band, fillOpacity: 0.22 }),
      Plot.areaY(bands(ahead), { ...band, fillOpacity: 0.11 }),
      Plot.ruleY([litres(brimL)], { stroke: colours.faint }),
      Plot.ruleY([litres(lowL)], { stroke: colours.low, strokeWidth: 1.5 }),
      Plot.ruleX([at(nowMs)], { stroke: colours.faint, strokeDasharray: '2,3' }),
      Plot.lineY(bands(past), line),
      Plot.lineY(bands(ahead), { ...line, strokeDasharray: '6,4' }),
      Plot.dot(poured, {
        x: 'at',
        frameAnchor: 'bottom',
        dy: -8,
        symbol: 'triangle',
        r: 5,
        fill: colours.poured,
      }),
      ...(poured.length <= mostAmounts ? [amounts(poured, words)] : []),
      Plot.dot(
        told.map(({ atMs, value }) => ({ at: at(atMs), value: litres(value) })),
        { x: 'at', y: 'value', r: 4, stroke: colours.ink, fill: colours.paper },
      ),
      atLeft(label.brim, litres(brimL), colours.faint),
      atLeft(label['low-mark'], litres(lowL), colours.low),
    ],
  );
}

function amounts(
  poured: readonly { readonly at: Date; readonly amount: number }[],
  words: PictureWords,
): Plot.Text {
  return Plot.text(poured, {
    x: 'at',
    frameAnchor: 'bottom',
    dy: -18,
    text: ({ amount }: { amount: number }) => `+${words.number(amount)}`,
    fill: colours.poured,
    stroke: colours.paper,
    strokeWidth: 3,
    fontSize: 12,
  });
}

/** A line's name on the line itself. */
function atLeft(text: string, y: number, fill: string): Plot.Text {
  return Plot.text([text], {
    y: [y],
    frameAnchor: 'left',
    textAnchor: 'start',
    lineAnchor: 'bottom',
    dx: 6,
    dy: -3,
    fill,
    stroke: colours.paper,
    strokeWidth: 3,
  });
}
