import { describe, expect, it } from 'vitest';
import { languages } from '../../src/greenhouse/member.ts';
import type { DutyLine, Reason } from '../../src/planning/duty-line.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { lines } from './every-advice.ts';
import {
  americanLane,
  benchCheck,
  benchTopUp,
  date,
  quarryLane,
  reader,
  tieUp,
} from './quarry-lane.ts';

/** Of every kind of reason, what must be said of the example: the compiler says which has none. */
const figures: Readonly<Record<Reason['kind'], readonly RegExp[]>> = {
  water: [/\b180\.4 L left, give or take \d/, /\d L a day/, /low mark at the earliest/],
  'not-measured': [/−0\.06 a day/, /pH 5\.62 is expected/, /27%/, /from 25% on/, /every 4 days/],
  chore: [/every 5 days/],
  'out-of-range': [
    /pH 7\.4 measured today at 08:00/,
    /pH 5\.9 aimed at/,
    /24\.4 mL in all for 92\.4 L/,
  ],
  'before-dose': [/pH 7\.4 measured/, /wanted first: water level/],
  'after-outage': [/today at 08:00/, /water level and pH/],
  calibration: [/last on 10 April/, /21 days/],
  change: [/24 days old/, /112\.4 L topped up since, for 108 L/],
  aeration: [/27\.4 °C/, /5 min/, /15 min[^.]* wanted/],
  clean: [/9 min to fill, where 7 min is usual/],
};

const examples: readonly DutyLine[] = [...lines, benchTopUp, benchCheck, tieUp];

function exactly(line: DutyLine, language: (typeof languages)[number], greenhouse = quarryLane) {
  const reply = { kind: 'answer', answer: { kind: 'why', duties: [line], exactly: true } } as const;
  return wordings[language].reply(reply, { ...reader, greenhouse });
}

describe('why exactly', () => {
  it.each(Object.keys(figures) as Reason['kind'][])('has the figures of %s', (kind) => {
    const line = examples.find(({ reason }) => reason.kind === kind)!;
    const text = exactly(line, 'en');
    const told = text.slice(text.indexOf('Exactly:'));
    for (const figure of figures[kind]) expect(told).toMatch(figure);
    expect(told).toMatch(/; due \S+day \d+ \w+/);
    expect(exactly(line, 'de')).toContain('Genau: ');
    expect(exactly(line, 'de')).toMatch(/; fällig am \S+ \d+\. \S+/);
  });

  it('says how far the day may be moved', () => {
    const moved: DutyLine = {
      ...tieUp,
      duty: { ...tieUp.duty, dueOn: date('2027-05-06'), alongside: false },
      waitsUntil: date('2027-05-08'),
    };
    expect(exactly(moved, 'en')).toMatch(
      /due Thursday,? 6 May, on a trip made anyway from today on, and it may wait until Saturday\.$/,
    );
  });

  it.each(languages)('is told in the units of the household, in %s', (language) => {
    const text = exactly(benchTopUp, language, americanLane);
    expect(text).not.toMatch(/\d L\b|Liter/);
    expect(text).toMatch(/gal/i);
  });
});
