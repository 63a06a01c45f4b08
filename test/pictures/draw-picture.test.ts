import { describe, expect, it } from 'vitest';
import type { Picture, WaterPicture } from '../../src/assistant/replies/picture.ts';
import { drawPicture } from '../../src/pictures/draw-picture.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { pictureSize } from '../telegram-emulator/methods/picture-size.ts';
import { bench, quarryLane } from '../wording/quarry-lane.ts';

const dayMs = 86_400_000;
const nowMs = Date.parse('2027-05-04T08:20:00+01:00');
const band = (atMs: number, likelyL: number) => ({
  atMs,
  lowL: likelyL - 10,
  likelyL,
  highL: likelyL + 10,
});
const water: WaterPicture = {
  kind: 'water',
  system: bench,
  fromMs: nowMs - 10 * dayMs,
  nowMs,
  untilMs: nowMs + 7 * dayMs,
  brimL: 600,
  lowL: 260,
  past: [band(nowMs - 10 * dayMs, 560), band(nowMs, 400)],
  ahead: [band(nowMs, 400), band(nowMs + 7 * dayMs, 300)],
  topUps: [{ atMs: nowMs - 10 * dayMs, value: 60 }],
  told: [{ atMs: nowMs, value: 400 }],
};
const readings: Picture = {
  kind: 'readings',
  system: bench,
  fromMs: nowMs - 5 * dayMs,
  nowMs,
  panels: [
    { quantity: 'ph', wanted: [5.5, 6.5], points: [{ atMs: nowMs - dayMs, value: 6.9 }] },
    { quantity: 'ec', wanted: [1.6, 2.4], points: [{ atMs: nowMs, value: 2 }] },
  ],
  changedAtMs: [nowMs - 2 * dayMs],
};

const draw = (picture: Picture, language: 'en' | 'de' = 'en', greenhouse = quarryLane) =>
  drawPicture(picture, language, { greenhouse, nowMs });

describe('a picture', () => {
  it.each([
    ['water', water],
    ['readings', readings],
  ])('of %s is a PNG as wide as a phone likes, the same each time', async (_, picture) => {
    const png = await draw(picture);
    const size = pictureSize(png);
    expect(size?.widthPx).toBe(1260);
    expect(size!.heightPx).toBeGreaterThan(600);
    expect(Buffer.compare(await draw(picture), png)).toBe(0);
  });

  it.each(['en', 'de'] as const)(
    'of three quantities is shown by a chat as it is, not made smaller (%s)',
    async (language) => {
      const days = [5, 4, 3, 2, 1, 0].map((ago) => nowMs - ago * dayMs);
      const over = (values: readonly number[]) =>
        values.map((value, n) => ({ atMs: days[n]!, value }));
      const three: Picture = {
        ...readings,
        panels: [
          { quantity: 'ph', wanted: [5.5, 6.5], points: over([5.6, 5.9, 6.2, 6.6, 6.9, 6.1]) },
          { quantity: 'ec', wanted: [1.6, 2.4], points: over([2, 2.1, 2.3, 2.5, 2.6, 1.9]) },
          { quantity: 'ph', wanted: [5.5, 6.5], points: over([5.8, 5.7, 5.7, 6, 6.3, 6.1]) },
        ],
      };
      const size = pictureSize(await draw(three, language));
      // A photo is made to fit 1280 by 1280.
      expect(size!.heightPx).toBeLessThanOrEqual(1280);
      expect(size!.heightPx).toBeLessThanOrEqual(size!.widthPx);
    },
  );

  it('has its words in the reader’s language, drawn and not dropped', async () => {
    const [english, german] = [await draw(water), await draw(water, 'de')];
    expect(Buffer.compare(english, german)).not.toBe(0);
    const nameless = { ...quarryLane, systems: [{ ...quarryLane.systems[0]!, name: ' ' }] };
    const bare = await draw(water, 'en', nameless);
    expect(bare.length).toBeLessThan(english.length);
  });

  it('draws any name as words, never as markup', async () => {
    const name = '</text><script>alert("&")</script> 🪴\u0001\uD800';
    const [first] = quarryLane.systems;
    const png = await draw(water, 'en', { ...quarryLane, systems: [{ ...first!, name }] });
    expect(pictureSize(png)?.widthPx).toBe(1260);
  });

  it('counts in the units that the household speaks in', () => {
    const gallons = {
      ...quarryLane,
      units: { ...quarryLane.units, volume: 'gal' as const },
    };
    const words = wordings.en.picture(water, { greenhouse: gallons, nowMs });
    expect(words.axis('level')).toBe('gallons');
    expect(words.onAxis('level', 378.5411784)).toBeCloseTo(100);
    expect(words.alt).toContain('158.5 gal');
  });
});
