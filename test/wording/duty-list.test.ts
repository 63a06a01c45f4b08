import { describe, expect, it } from 'vitest';
import type { DoseReason } from '../../src/planning/advice-reason.ts';
import type { DutyLine } from '../../src/planning/duty-line.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { bench, benchTopUp, buckets, date, nowMs, reader, today } from './quarry-lane.ts';

const tooWeak: DoseReason = {
  kind: 'out-of-range',
  quantity: 'ec',
  value: 1.5,
  measuredAtMs: nowMs,
  lowest: 1.6,
  highest: 2.2,
  aim: 1.9,
  wholeMl: 122.83,
  isFirstPart: true,
  litres: 108,
  basis: { kind: 'usual-strength', strength: 0.3 },
  climbsBack: false,
};

function dose(product: string, reason: DoseReason = tooWeak): DutyLine {
  return {
    duty: { kind: 'dose', system: buckets, dueOn: today, product, mL: 61 },
    ridesFrom: today,
    reason,
    steps: [{ kind: 'add', product, mL: 61 }, { kind: 'stir' }],
  };
}

const both = [dose('nutrient-a'), dose('nutrient-b')];

function topUp(litres: number): DutyLine {
  const amount = (product: string) => ({ product, mL: 140 });
  return {
    ...benchTopUp,
    duty: {
      ...benchTopUp.duty,
      litres,
      strength: 'full',
      concentrates: [amount('nutrient-a'), amount('nutrient-b')],
    },
    reason: {
      ...benchTopUp.reason,
      mix: {
        strength: 'full',
        ecMsPerCm: 2.1,
        lowest: 2,
        highest: 2.8,
        driftPerDay: null,
        basis: tooWeak.basis,
      },
    } as DutyLine['reason'],
  };
}

function roundOf(duties: readonly DutyLine[], language: 'en' | 'de' = 'en'): string {
  return wordings[language].reply({ kind: 'round', date: today, isLate: false, duties }, reader);
}

describe('the two parts of a dose', () => {
  it('are told as one piece of work, with the steps of both in order', () => {
    const text = roundOf(both);
    expect(text).toContain('1 thing to do');
    expect(text).toContain('1. Add 61 mL nutrient A and 61 mL nutrient B to Bucket row.');
    expect(text).toContain(
      'Add 61 mL nutrient A, then stir, then add 61 mL nutrient B, then stir.',
    );
    expect(roundOf(both, 'de')).toContain('61 ml Dünger A und 61 ml Dünger B zugeben');
  });

  it('say in round figures how much of each it may take', () => {
    expect(roundOf(both)).toContain('In all it may take about 120 mL of each');
  });

  it('stand apart where one is done and the other is not', () => {
    const marks = [{ state: 'done', by: 'tomas', said: null } as const, null];
    const round = { kind: 'round', date: today, isLate: false, duties: both, marks } as const;
    const text = wordings.en.reply(round, reader);
    expect(text).toContain('✓ Add 61 mL nutrient A to Bucket row (Tomas)');
    expect(text).toContain('2. Add 61 mL nutrient B to Bucket row.');
  });

  it('stand apart from a dose of another reason', () => {
    const acid = dose('ph-down', { ...tooWeak, quantity: 'ph', value: 6.6, lowest: 5.5 });
    expect(roundOf([...both, acid])).toContain('2. Add 61 mL pH down to Bucket row.');
  });
});

describe('a strength that nobody knows', () => {
  const apology = 'reckoned with a usual strength';

  it('is owned to once where several amounts rest on it', () => {
    const text = roundOf([...both, topUp(27)]);
    expect(text.split(apology)).toHaveLength(2);
    expect(text).toMatch(/\nThe millilitres are reckoned with a usual strength[^\n]*$/);
  });

  it('is owned to beside the amount where there is only one', () => {
    expect(roundOf(both)).toContain(`for about 108 L, ${apology}`);
  });

  it('hides no other basis', () => {
    const learned = { ...tooWeak, basis: { kind: 'learned', doses: 3 } } as const;
    const text = roundOf([dose('nutrient-a', learned), topUp(27), topUp(80)]);
    expect(text).toContain('going by what 3 earlier doses did');
  });
});

describe('what to mix into a top-up', () => {
  it('is told for each can as well, where it is carried in several', () => {
    const text = roundOf([topUp(27)]);
    expect(text).toContain('140 mL nutrient A and 140 mL nutrient B, 51 mL of each to 1 can.');
    expect(roundOf([topUp(27)], 'de')).toContain('je 51 ml auf 1 can');
  });

  it('is told once where it is carried in one', () => {
    expect(roundOf([topUp(10)])).not.toContain('of each to');
  });
});

describe('the day on which the low mark may be reached', () => {
  const of = (more: object): string =>
    wordings.en.why({ ...benchTopUp, reason: { ...benchTopUp.reason, ...more } }, reader);

  it('follows from the likely figures where it can', () => {
    expect(
      of({ litresNow: 180, litresSd: 15, usePerDayL: 24, lowOnEarly: date('2027-05-06') }),
    ).toBe(
      'About 180 L left and it drinks about 24 L a day, so it could reach the low mark (150 L) by Thursday.',
    );
  });

  it('is explained by how little there may be where it does not', () => {
    expect(of({ litresNow: 240, litresSd: 40, usePerDayL: 20, lowOnEarly: today })).toBe(
      'About 240 L left (perhaps only 174) and it drinks about 20 L a day, so it could reach the low mark (150 L) today.',
    );
  });
});

describe('a reading to be taken again after a dose', () => {
  const after = (readyAtMs: number): string =>
    wordings.en.why(
      {
        duty: { kind: 'check', system: bench, dueOn: today },
        ridesFrom: null,
        reason: {
          kind: 'before-dose',
          quantity: 'ec',
          value: 1.5,
          quantities: ['ec'],
          because: { kind: 'just-dosed', atMs: readyAtMs - 900_000, readyAtMs },
        },
      },
      reader,
    );

  it('names the time only while that is to come', () => {
    expect(after(nowMs + 600_000)).toContain('measure again at 08:30 or later');
    expect(after(nowMs - 86_400_000)).toContain(': measure again, then I can say');
  });
});
