import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SpokenUnits } from '../../../src/greenhouse/greenhouse.ts';
import { languages } from '../../../src/greenhouse/member.ts';
import type { DutyLine } from '../../../src/planning/duty-line.ts';
import { conductivity } from '../../../src/wording/spoken/conductivity.ts';
import { measureOf } from '../../../src/wording/spoken/measure-of-quantity.ts';
import { numberText } from '../../../src/wording/spoken/number-text.ts';
import { carriedVolume, roughVolume, useRate, volume } from '../../../src/wording/spoken/volume.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { americanLane, bench, benchTopUp, nowMs, quarryLane, today } from '../quarry-lane.ts';

const units: SpokenUnits = {
  volume: 'L',
  temperature: 'C',
  conductivity: 'mS/cm',
  tdsFactor: 700,
};
const english = (told: Parameters<typeof numberText>[0]) => numberText(told, 'en-GB');

describe('a number as it is told', () => {
  it('keeps what was said, and drops what conversion added', () => {
    expect(english(volume(5.6781, 'gal'))).toBe('1.5');
    expect(english(volume(12.25, 'L'))).toBe('12.25');
    expect(english(measureOf('water-temperature', 20.27777, { ...units, temperature: 'F' }))).toBe(
      '68.5',
    );
  });

  it('rounds an estimate to what it deserves', () => {
    expect(english(roughVolume(180.4, 'L'))).toBe('180');
    expect(english(roughVolume(12.53, 'L'))).toBe('12.5');
    expect(english(roughVolume(-0.3, 'L'))).toBe('0');
    expect(english(useRate(24.31, 'L'))).toBe('24');
    expect(english(useRate(5.04, 'L'))).toBe('5');
    expect(english(useRate(0.638, 'L'))).toBe('0.64');
  });

  it('tells conductivity on the scale of the meters', () => {
    const on = (scale: SpokenUnits['conductivity']) =>
      english(conductivity(1.24, { ...units, conductivity: scale }));
    expect(['mS/cm', 'uS/cm', 'ppm', 'CF'].map((scale) => on(scale as 'ppm'))).toEqual([
      '1.24',
      '1240',
      '868',
      '12.4',
    ]);
  });

  it('tells small harvests in grams and large ones in kilograms', () => {
    expect(measureOf('harvest', 340, units)).toMatchObject({ value: 340, unit: 'g' });
    expect(measureOf('harvest', 1200, units)).toMatchObject({ value: 1.2, unit: 'kg' });
  });

  it('never tells a nothing with a sign', () => {
    expect(english(measureOf('air-temperature', -0.04, units))).toBe('0');
    expect(english(measureOf('air-temperature', -0.06, units))).toBe('-0.1');
  });
});

/** The first number of a text, as a reader of the language reads it. */
function firstNumber(text: string, language: string): number {
  const [found = ''] = /\d[\d.,]*/.exec(text) ?? [];
  const plain =
    language === 'de' ? found.replaceAll('.', '').replace(',', '.') : found.replaceAll(',', '');
  return Number(plain);
}

describe.each(languages)('a duty in %s', (language) => {
  const { duty } = wordings[language];
  const unlisted = { ...quarryLane, containers: [] };

  it('tells the very litres of the plan', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), (halves) => {
        const litres = halves < 20 ? halves / 2 : halves;
        const line = { ...benchTopUp, duty: { ...benchTopUp.duty, litres } };
        expect(firstNumber(duty(line, { greenhouse: unlisted, nowMs }), language)).toBe(litres);
      }),
    );
  });

  it('tells gallons within a quarter of the litres of the plan, or half of a whole one above twenty', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), (litres) => {
        const line = { ...benchTopUp, duty: { ...benchTopUp.duty, litres } };
        const told = firstNumber(duty(line, { greenhouse: americanLane, nowMs }), language);
        expect(Math.abs(told - litres / 3.785411784)).toBeLessThanOrEqual(told < 20 ? 0.25 : 0.5);
      }),
    );
  });

  it('tells the very mL of a dose and minutes of an aeration', () => {
    const reader = { greenhouse: quarryLane, nowMs };
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), (tenths) => {
        const dose: DutyLine = {
          ...benchTopUp,
          duty: { kind: 'dose', system: bench, dueOn: today, mL: tenths / 10, product: 'ph-down' },
        };
        expect(firstNumber(duty(dose, reader), language)).toBe(tenths / 10);
      }),
    );
    for (let minutesPerHour = 1; minutesPerHour <= 60; minutesPerHour += 1) {
      const line: DutyLine = {
        ...benchTopUp,
        duty: { kind: 'aeration', system: bench, dueOn: today, minutesPerHour },
      };
      expect(firstNumber(duty(line, reader), language)).toBe(minutesPerHour);
    }
  });
});

describe('a volume to be carried', () => {
  it('comes in half gallons below twenty', () => {
    expect(carriedVolume(43, 'gal').value).toBe(11.5);
    expect(english(carriedVolume(300, 'gal'))).toBe('79');
    expect(english(carriedVolume(2.5, 'gal'))).toBe('0.66');
  });
});
