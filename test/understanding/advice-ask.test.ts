import { describe, expect, test } from 'vitest';
import type { Context } from '../../src/understanding/context.ts';
import type { Ask } from '../../src/understanding/statement.ts';
import { understand } from '../../src/understanding/understand.ts';
import { bench, buckets, may, quarryLane } from '../assistant/quarry-lane-standing.ts';

function asksOf(text: string, language: 'en' | 'de'): readonly Ask[] {
  const context: Context = {
    greenhouse: quarryLane,
    member: { ...quarryLane.members[0]!, language },
    writtenAtMs: Date.parse(may(4)),
    repliedTo: null,
    recentSystem: null,
    openQuestions: [],
    roundDuties: null,
    existsSinceMs: 0,
  };
  return understand(text, context).statements.flatMap((statement) =>
    statement.kind === 'ask' ? [statement.ask] : [],
  );
}

const cases: readonly (readonly ['en' | 'de', string, Ask])[] = [
  [
    'en',
    'how much A and B for 120 litres at 1.6',
    { kind: 'mix', system: null, litres: 120, ecMsPerCm: 1.6 },
  ],
  [
    'en',
    'how much nutrients do I need for 40 l at EC 1.8?',
    { kind: 'mix', system: null, litres: 40, ecMsPerCm: 1.8 },
  ],
  [
    'de',
    'wie viel A und B für 120 Liter bei 1,6',
    { kind: 'mix', system: null, litres: 120, ecMsPerCm: 1.6 },
  ],
  ['en', 'what is 900 ppm in EC', { kind: 'convert', value: 900, unit: 'ppm' }],
  ['en', 'what is 1.8 mS in ppm?', { kind: 'convert', value: 1.8, unit: 'mS/cm' }],
  ['en', 'how many ppm is 1.8', { kind: 'convert', value: 1.8, unit: 'mS/cm' }],
  ['de', 'was sind 900 ppm in EC?', { kind: 'convert', value: 900, unit: 'ppm' }],
  ['de', 'wie viel ppm sind 1,8 mS?', { kind: 'convert', value: 1.8, unit: 'mS/cm' }],
  [
    'en',
    'how long will the bench take to fill with a 3000 pump',
    { kind: 'fill-with-pump', system: bench, ratedLPerH: 3000 },
  ],
  [
    'de',
    'wie lange dauert das Fluten von bench mit einer 3000er Pumpe?',
    { kind: 'fill-with-pump', system: bench, ratedLPerH: 3000 },
  ],
  [
    'en',
    'how long can the buckets go without power',
    { kind: 'without-supply', system: buckets, of: 'power' },
  ],
  [
    'en',
    'how long will the dwc last without air?',
    { kind: 'without-supply', system: buckets, of: 'air-pump' },
  ],
  ['de', 'wie lange geht es ohne Strom?', { kind: 'without-supply', system: null, of: 'power' }],
  ['en', 'how much ph down for the bench', { kind: 'how-much', system: bench, product: 'ph-down' }],
];

describe('a question for a sum', () => {
  test.each(cases)('%s: "%s" is understood', (language, text, ask) => {
    expect(asksOf(text, language)).toEqual([ask]);
  });

  test.each([
    ['is 900 ppm too high for the gutters?', 'is-it-right'],
    ['how long will the jars last', 'how-long'],
    ['how much water did the bench use this week', 'use'],
  ] as const)('"%s" stays what it was', (text, kind) => {
    expect(asksOf(text, 'en').map((ask) => ask.kind)).toEqual([kind]);
  });
});
