import { describe, expect, it } from 'vitest';
import type { Receipt } from '../../../src/assistant/replies/reply.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { assumptions, entries, remarks } from '../every-reply.ts';
import {
  americanLane,
  bench,
  buckets,
  entry,
  gutters,
  jars,
  nowMs,
  reader,
} from '../quarry-lane.ts';

const { reply } = wordings.en;

function receipt(parts: Partial<Receipt>): Receipt {
  return { kind: 'receipt', logged: [], assumptions: [], remarks: [], ...parts };
}

const hourMs = 3_600_000;

describe('an English receipt', () => {
  it('tells one system in one line', () => {
    const logged = [entry('ph', 5.8), entry('ec', 1.7), entry('top-up', 12)];
    expect(reply(receipt({ logged }), reader)).toBe(
      'Logged for Bucket row: pH 5.8, EC 1.7 mS/cm, topped up 12 L.',
    );
  });

  it('gives each of several systems a line of its own', () => {
    const logged = [
      entry('ph', 5.9),
      entry('ph', 6, { system: gutters }),
      entry('ec', 1.8),
      entry('ec', 1.2, { system: gutters }),
    ];
    expect(reply(receipt({ logged }), reader)).toBe(
      'Logged:\nBucket row: pH 5.9, EC 1.8 mS/cm\nGutter run: pH 6.0, EC 1.2 mS/cm',
    );
  });

  it('names no system for what belongs to the whole greenhouse', () => {
    expect(reply(receipt({ logged: [entries['air-temperature']] }), reader)).toBe(
      'Logged: air 31.5 °C.',
    );
  });

  it('keeps a reading, a dose and a reading in the order said', () => {
    const logged = [entry('ph', 5.4), entry('dose', 10, { product: 'ph-up' }), entry('ph', 6.1)];
    expect(reply(receipt({ logged }), reader)).toBe(
      'Logged for Bucket row: pH 5.4, added 10 mL pH up, pH 6.1.',
    );
  });

  it('says about where the member did', () => {
    const logged = [entry('top-up', 12, { approximate: true })];
    expect(reply(receipt({ logged }), reader)).toBe('Logged for Bucket row: topped up about 12 L.');
  });

  it('says how a level was told beside its litres', () => {
    const texts = [
      entry('level', 90, { saidAs: { kind: 'below-brim', cm: 5 } }),
      entry('level', 12, { system: jars, saidAs: { kind: 'share', share: 0.5 } }),
      entry('level', 390, { system: bench, saidAs: { kind: 'depth', cm: 52 } }),
    ].map((logged) => reply(receipt({ logged: [logged] }), reader));
    expect(texts).toEqual([
      'Logged for Bucket row: level 90 L (5 cm below the brim).',
      'Logged for Jar shelf: level 12 L (50% full).',
      'Logged for North bench: level 390 L (52 cm deep).',
    ]);
  });

  it.each([
    [nowMs - 60_000, ''],
    [nowMs - 2 * hourMs, ', at 06:20'],
    [nowMs - 14 * hourMs, ', yesterday at 18:20'],
    [nowMs - 3 * 24 * hourMs, ', on Saturday at 08:20'],
    [nowMs - 30 * 24 * hourMs, ', on 4 April at 08:20'],
    [nowMs - 365 * 24 * hourMs, ', on 4 May 2026 at 08:20'],
  ])('tells the time %d only where it was not just now', (atMs, told) => {
    expect(reply(receipt({ logged: [entry('ph', 5.8, { atMs })] }), reader)).toBe(
      `Logged for Bucket row${told}: pH 5.8.`,
    );
  });

  it('parts what held at different times', () => {
    const logged = [entry('ph', 5.8), entry('ph', 5.6, { atMs: nowMs - 2 * hourMs })];
    expect(reply(receipt({ logged }), reader)).toBe(
      'Logged:\nBucket row: pH 5.8\nBucket row, at 06:20: pH 5.6',
    );
  });

  it('tells a calibration by what the probe showed in which reference', () => {
    const logged = [
      entry('calibration', 7, { system: null, probe: 'pen', read: 7.12 }),
      entry('calibration', 1.413, { system: null, probe: 'stick', read: 1.38 }),
    ];
    expect(reply(receipt({ logged }), reader)).toBe(
      'Logged: pen showed 7.12 in pH 7.00, stick showed 1.38 in 1.413 mS/cm.',
    );
  });

  it('speaks gallons, Fahrenheit and ppm where the household does', () => {
    const logged = [
      entry('top-up', 5.6781),
      entry('water-temperature', 20),
      entry('ec', 1.2),
      entry('ph', 5.8),
    ];
    expect(reply(receipt({ logged }), { greenhouse: americanLane, nowMs })).toBe(
      'Logged for Bucket row: topped up 1.5 gal, water 68 °F, EC 840 ppm, pH 5.8.',
    );
  });

  it.each([
    ['system-from-conversation', 'Taken as Bucket row, from your last message.'],
    ['bare-volume', 'The amount was read in litres.'],
    ['bare-conductivity', 'EC was read in mS/cm.'],
    ['tds-factor', 'EC 1.4 mS/cm from 700 ppm, factor 500.'],
    ['shorthand', 'Read in the order pH, EC, water temperature.'],
    ['brim-volume', 'No amount given, so taken as filled to the brim.'],
    ['slip-in-name', '“bukcets” taken as Bucket row.'],
  ] as const)('tells that it took %s for granted', (kind, told) => {
    const logged = [entry('ph', 5.9), entry('ec', 1.4), entry('water-temperature', 21)];
    const text = reply(receipt({ logged, assumptions: [assumptions[kind]] }), reader);
    expect(text.split('\n')).toEqual([
      'Logged for Bucket row: pH 5.9, EC 1.4 mS/cm, water 21 °C.',
      told,
    ]);
  });

  it.each([
    ['outside-range', 'pH 5.3 is low for Bucket row: 5.5 to 6.2 is wanted.'],
    [
      'far-from-expected',
      'pH 7.4 is far from the pH 5.8 expected for Bucket row. Please measure again to be sure.',
    ],
    ['already-known', 'I had that already, so nothing was logged twice.'],
    ['lasts-until', 'Bucket row should be fine until Sunday.'],
  ] as const)('remarks %s', (kind, told) => {
    expect(reply(receipt({ remarks: [remarks[kind]] }), reader)).toBe(told);
  });

  it('converts the range wanted together with the reading', () => {
    const remark = {
      kind: 'outside-range',
      entry: entry('ec', 2.5),
      lowest: 1.6,
      highest: 2.2,
    } as const;
    expect(reply(receipt({ remarks: [remark] }), { greenhouse: americanLane, nowMs })).toBe(
      'EC 1750 ppm is high for Bucket row: 1120 to 1540 ppm is wanted.',
    );
  });
});

describe('an English correction', () => {
  it('says what was struck out and what stands instead', () => {
    const correction = {
      kind: 'correction',
      struck: [entry('ph', 5.4)],
      logged: [entry('ph', 5.4, { system: gutters })],
      remarks: [],
    } as const;
    expect(reply(correction, reader)).toBe(
      'Struck out for Bucket row: pH 5.4.\nLogged instead for Gutter run: pH 5.4.',
    );
  });

  it('says only what was struck out where nothing stands instead', () => {
    const struck = [entry('top-up', 12, { system: buckets, atMs: nowMs - 24 * hourMs })];
    expect(reply({ kind: 'correction', struck, logged: [], remarks: [] }, reader)).toBe(
      'Struck out for Bucket row, yesterday at 08:20: topped up 12 L.',
    );
  });
});
