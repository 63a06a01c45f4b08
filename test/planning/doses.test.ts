import { describe, expect, test } from 'vitest';
import { boardOf } from '../../src/assistant/board-of.ts';
import { boardQuestion } from '../../src/assistant/board-question.ts';
import type { Standing } from '../../src/assistant/standing.ts';
import type { SystemId } from '../../src/greenhouse/system.ts';
import { doseAdvice } from '../../src/planning/dose-advice.ts';
import {
  bench,
  buckets,
  jars,
  known,
  may,
  quarryLane,
  type Said,
  standingWith,
} from '../assistant/quarry-lane-standing.ts';

const ph = (system: SystemId, value: number, at: string, more: Partial<Said> = {}): Said => ({
  system,
  quantity: 'ph',
  value,
  at,
  ...more,
});
const dose = (system: SystemId, value: number, product: string, at: string): Said => ({
  system,
  quantity: 'dose',
  value,
  product,
  at,
});

function advice(standing: Standing, system: SystemId, quantity: 'ph' | 'ec' = 'ph') {
  const question = boardQuestion(standing, standing.nowMs);
  const asked = standing.greenhouse.systems.find(({ id }) => id === system)!;
  return doseAdvice(question, asked, quantity);
}

function doseOf(standing: Standing, system: SystemId, quantity: 'ph' | 'ec' = 'ph') {
  const told = advice(standing, system, quantity);
  if (told.kind !== 'dose') throw new Error(`no dose: ${JSON.stringify(told)}`);
  return told.dose;
}

function refusalOf(standing: Standing, system: SystemId, quantity: 'ph' | 'ec' = 'ph') {
  const told = advice(standing, system, quantity);
  return told.kind === 'refused' ? told.because.kind : told.kind;
}

describe('a dose for a pH out of range', () => {
  const low = [...known(bench, 500, 2.4, may(4)), ...[ph(bench, 5.2, may(4))]];

  test('is pH up where the pH is too low and pH down where it is too high', () => {
    expect(doseOf(standingWith(low, may(4)), bench).amounts[0]?.product).toBe('ph-up');
    const high = [...known(bench, 500, 2.4, may(4)), ph(bench, 7.4, may(4))];
    expect(doseOf(standingWith(high, may(4)), bench).amounts[0]?.product).toBe('ph-down');
  });

  test('is due while whoever measured is there, and waits for a trip next morning where it is slight', () => {
    const said = (value: number) => [...known(bench, 500, 2.4, may(4)), ph(bench, value, may(4))];
    const isToday = (value: number, at: string) =>
      boardOf(standingWith(said(value), at), Date.parse(at)).today.some(
        ({ duty }) => duty.kind === 'dose' && duty.system === bench && duty.alongside !== true,
      );
    const [slightly, clearly] = [6.6, 7.4];
    expect(isToday(slightly, may(4, '12:00'))).toBe(true);
    expect(isToday(clearly, may(5, '07:00'))).toBe(true);
    const morning = boardOf(
      standingWith(said(slightly), may(5, '07:00')),
      Date.parse(may(5, '07:00')),
    );
    const dose = [...morning.today, ...morning.later].find(({ duty }) => duty.kind === 'dose')!;
    expect(dose.waitsUntil).toBe('2027-05-08');
  });

  test('starts with no more than half of the whole', () => {
    const { amounts, reason } = doseOf(standingWith(low, may(4)), bench);
    expect(amounts[0]!.mL).toBeGreaterThan(0);
    expect(amounts[0]!.mL).toBeLessThanOrEqual(reason.wholeMl / 2);
    expect(reason.isFirstPart).toBe(true);
  });

  test('shrinks with the water that is there', () => {
    const little = [...known(bench, 160, 2.4, may(4)), ph(bench, 5.2, may(4))];
    const small = doseOf(standingWith(little, may(4)), bench).reason.wholeMl;
    const large = doseOf(standingWith(low, may(4)), bench).reason.wholeMl;
    expect(small).toBeLessThan(0.5 * large);
  });

  test('grows with the alkalinity of the water', () => {
    const high = [...known(bench, 500, 2.4, may(4)), ph(bench, 7.4, may(4))];
    const hard = { ...quarryLane, water: { ...quarryLane.water, alkalinityMeqL: 3 } };
    const ofSoft = doseOf(standingWith(high, may(4)), bench).reason.wholeMl;
    const stock = hard.stock.map((item) => ({ ...item, mL: 10_000 }));
    const standing = standingWith(high, may(4), { greenhouse: { ...hard, stock } });
    expect(doseOf(standing, bench).reason.wholeMl).toBeGreaterThan(2 * ofSoft);
    expect(doseOf(standing, bench).reason.climbsBack).toBe(true);
  });

  test('is told with its steps: add, flood once, wait, measure again, then the rest', () => {
    const line = boardOf(standingWith(low, may(4)), Date.parse(may(4))).today.find(
      ({ duty }) => duty.kind === 'dose',
    )!;
    expect(line.duty).toMatchObject({ system: bench, product: 'ph-up', dueOn: '2027-05-04' });
    expect(line.steps?.map(({ kind }) => kind)).toEqual([
      'add',
      'flood-once',
      'wait',
      'measure-again',
      'then-the-rest',
    ]);
    expect(line.cautions?.inFull).toBe(true);
  });

  test('is told with brief cautions once such a dose was given', () => {
    const again = [
      ...known(bench, 500, 2.4, may(4)),
      dose(bench, 5, 'ph-up', may(3)),
      ph(bench, 5.2, may(4)),
    ];
    const { today } = boardOf(standingWith(again, may(4)), Date.parse(may(4)));
    expect(today.find(({ duty }) => duty.kind === 'dose')?.cautions?.inFull).toBe(false);
  });

  test('that fell short is followed by a stronger one: a dose that missed teaches', () => {
    const first = doseOf(standingWith(low, may(4)), bench);
    const { mL } = first.amounts[0]!;
    const after = (value: number) =>
      standingWith(
        [...low, dose(bench, mL, 'ph-up', may(4, '08:30')), ph(bench, value, may(4, '09:00'))],
        may(4, '09:00'),
      );
    const weak = doseOf(after(5.22), bench);
    const asTold = doseOf(after(5.45), bench);
    expect(weak.reason.basis).toEqual({ kind: 'learned', doses: 1 });
    expect(weak.reason.wholeMl).toBeGreaterThan(1.5 * asTold.reason.wholeMl);
  });

  test('takes a product at its label', () => {
    const stock = quarryLane.stock.map((item) =>
      item.product === 'ph-up' ? { ...item, meqPerMl: 12 } : item,
    );
    const labelled = standingWith(low, may(4), { greenhouse: { ...quarryLane, stock } });
    const { reason } = doseOf(labelled, bench);
    expect(reason.basis).toEqual({ kind: 'label', strength: 12 });
    expect(reason.wholeMl).toBeLessThan(
      0.5 * doseOf(standingWith(low, may(4)), bench).reason.wholeMl,
    );
  });

  test('is nothing where the pH is in range', () => {
    const fine = [...known(bench, 500, 2.4, may(4)), ph(bench, 6, may(4))];
    expect(advice(standingWith(fine, may(4)), bench).kind).toBe('in-range');
  });

  test('of less than a millilitre is measured out of a dilution', () => {
    const drop = [...known(jars, 20, 1.2, may(4)), ph(jars, 5.2, may(4))];
    const { today } = boardOf(standingWith(drop, may(4)), Date.parse(may(4)));
    const line = today.find(({ duty }) => duty.kind === 'dose' && duty.system === jars)!;
    expect(line.duty.mL).toBeLessThan(1);
    expect(line.steps?.[0]).toMatchObject({ kind: 'thin-first', waterMl: 99 });
  });
});

describe('a dose is refused', () => {
  const at = may(4);
  const water = known(bench, 500, 2.4, at);
  const low = ph(bench, 5.2, at);

  test('where nothing was measured of late', () => {
    expect(refusalOf(standingWith(water, at), bench)).toBe('not-measured');
    expect(refusalOf(standingWith([...water, low], may(7)), bench)).toBe('not-measured');
  });

  test('where the probe was calibrated too long ago, and the duty is to calibrate it', () => {
    const late = '2027-06-20T08:20:00+01:00';
    const said = [...known(bench, 500, 2.4, late), ph(bench, 5.2, late)];
    const standing = standingWith(said, late, { createdAt: '2027-06-19T08:00:00+01:00' });
    expect(refusalOf(standing, bench)).toBe('stale-probe');
    const { today } = boardOf(standing, standing.nowMs);
    expect(today.some(({ duty }) => duty.kind === 'dose')).toBe(false);
    expect(today.find(({ duty }) => duty.kind === 'calibration')?.duty.probe).toBe('pen');
  });

  test('where the last calibration failed', () => {
    const failed: readonly Said[] = [
      { quantity: 'calibration', value: 7, read: 8.2, probe: 'pen', at: may(3) },
      { quantity: 'calibration', value: 4.01, read: 5.6, probe: 'pen', at: may(3) },
    ];
    expect(refusalOf(standingWith([...failed, ...water, low], at), bench)).toBe('unfit-probe');
  });

  test('where nobody has told the level', () => {
    const said = [{ ...water[1]! }, low];
    expect(refusalOf(standingWith(said, at), bench)).toBe('unknown-volume');
    const { today } = boardOf(standingWith(said, at), Date.parse(at));
    const check = today.find(({ duty }) => duty.kind === 'check' && duty.system === bench)!;
    expect(check.reason).toMatchObject({ kind: 'before-dose', quantities: ['level'] });
  });

  test('where two meters disagree about the same water', () => {
    const two = [low, ph(bench, 6.1, may(4, '08:25'), { probe: 'stick' })].map((said, i) => ({
      ...said,
      probe: i === 0 ? 'pen' : 'stick',
    }));
    expect(refusalOf(standingWith([...water, ...two], may(4, '08:30')), bench)).toBe(
      'meters-disagree',
    );
  });

  test('where the reading looks like a slip, until it was measured again', () => {
    const jump = [...water, ph(bench, 7.0, may(3)), ph(bench, 5.2, at)];
    expect(refusalOf(standingWith(jump, at), bench)).toBe('looks-like-slip');
    const again = [...jump, ph(bench, 5.25, may(4, '08:40'))];
    expect(advice(standingWith(again, may(4, '08:40')), bench).kind).toBe('dose');
  });

  test('where it goes beyond a safe bound', () => {
    const hard = { ...quarryLane.water, alkalinityMeqL: 9 };
    const stock = quarryLane.stock.map((item) => ({ ...item, mL: 50_000, meqPerMl: 0.5 }));
    const said = [...water, ph(bench, 8.2, at)];
    const standing = standingWith(said, at, { greenhouse: { ...quarryLane, water: hard, stock } });
    expect(refusalOf(standing, bench)).toBe('beyond-bound');
  });

  test('where the product is not in stock', () => {
    const stock = quarryLane.stock.filter(({ product }) => product !== 'ph-up');
    const standing = standingWith([...water, low], at, { greenhouse: { ...quarryLane, stock } });
    expect(refusalOf(standing, bench)).toBe('not-in-stock');
  });

  test('straight after a dose, until it has mixed and was measured again', () => {
    const given = [...water, low, dose(bench, 5, 'ph-up', may(4, '08:30'))];
    expect(refusalOf(standingWith(given, may(4, '08:31')), bench)).toBe('just-dosed');
    const tooSoon = [...given, ph(bench, 5.3, may(4, '08:34'))];
    expect(refusalOf(standingWith(tooSoon, may(4, '08:34')), bench)).toBe('just-dosed');
    const mixed = [...given, ph(bench, 5.4, may(4, '09:00'))];
    expect(advice(standingWith(mixed, may(4, '09:00')), bench).kind).toBe('dose');
  });

  test('for the pH while nutrients are still to be added', () => {
    const weak = [...known(bench, 500, 1.2, at), low];
    expect(refusalOf(standingWith(weak, at), bench)).toBe('strength-first');
  });
});

describe('a dose of nutrients', () => {
  const weak = known(buckets, 100, 1.0, may(4));

  test('is the same of A and of B, one after the other', () => {
    const { today } = boardOf(standingWith(weak, may(4)), Date.parse(may(4)));
    const lines = today.filter(({ duty }) => duty.kind === 'dose' && duty.system === buckets);
    expect(lines.map(({ duty }) => duty.product)).toEqual(['nutrient-a', 'nutrient-b']);
    expect(lines[0]?.duty.mL).toBe(lines[1]?.duty.mL);
    expect(lines[0]?.steps?.some(({ kind }) => kind === 'measure-again')).toBe(false);
    expect(lines[1]?.steps?.some(({ kind }) => kind === 'measure-again')).toBe(true);
    expect(lines[0]?.cautions?.about).toContain('concentrates-apart');
  });

  test('learns from what earlier ones added', () => {
    const mixed = (ec: number) =>
      standingWith(
        [
          ...weak,
          dose(buckets, 60, 'nutrient-a', may(4, '08:30')),
          dose(buckets, 60, 'nutrient-b', may(4, '08:32')),
          { system: buckets, quantity: 'ec', value: ec, at: may(4, '09:00') },
        ],
        may(4, '09:00'),
      );
    const ofWeak = doseOf(mixed(1.1), buckets, 'ec');
    const ofUsual = doseOf(mixed(1.2), buckets, 'ec');
    expect(ofWeak.reason.basis).toEqual({ kind: 'learned', doses: 1 });
    expect(ofWeak.reason.wholeMl).toBeGreaterThan(1.4 * ofUsual.reason.wholeMl);
  });

  test('is not told for a solution that is too strong: water is', () => {
    const strong = known(buckets, 70, 2.6, may(4));
    const standing = standingWith(strong, may(4));
    expect(refusalOf(standing, buckets, 'ec')).toBe('too-strong');
    const { today } = boardOf(standing, standing.nowMs);
    const topUps = today.filter(({ duty }) => duty.kind === 'top-up' && duty.system === buckets);
    expect(topUps).toHaveLength(1);
    expect(topUps[0]?.duty.strength).toBe('plain');
    // By mass balance, water of 0.05 into 70 L: 70 (2.6 - 1.9) / (1.9 - 0.05) = 26.5 L.
    expect(topUps[0]?.duty.litres).toBeCloseTo(26.5, -0.5);
  });
});
