import { describe, expect, test } from 'vitest';
import { converted } from '../../src/assistant/answers/convert.ts';
import { fillWithPump } from '../../src/assistant/answers/fill-with-pump.ts';
import { howMuch } from '../../src/assistant/answers/how-much.ts';
import { mixFor } from '../../src/assistant/answers/mix.ts';
import { boardOf } from '../../src/assistant/board-of.ts';
import { boardQuestion } from '../../src/assistant/board-question.ts';
import { withCautionsOfRound, withCautionsOnce } from '../../src/assistant/cautions-told.ts';
import { newConversation } from '../../src/assistant/conversation.ts';
import { remarksOn } from '../../src/assistant/remarks.ts';
import { nextReminderMs, remindersDue } from '../../src/assistant/reminders-due.ts';
import type { Reply } from '../../src/assistant/replies/reply.ts';
import type { Standing } from '../../src/assistant/standing.ts';
import { allClearAlert, outageAlerts } from '../../src/assistant/use-cases/tell-of-outages.ts';
import type { Member } from '../../src/greenhouse/member.ts';
import { dutiesForMember } from '../../src/planning/duties-for-member.ts';
import {
  bench,
  buckets,
  gutters,
  jars,
  known,
  may,
  quarryLane,
  type Said,
  standingWith,
} from './quarry-lane-standing.ts';

const memberOf = (handle: string): Member =>
  quarryLane.members.find((member) => member.handle === handle)!;
const ines = memberOf('ines');
const tomas = memberOf('tomas');
const lowPh: readonly Said[] = [
  ...known(bench, 500, 2.4, may(4)),
  { system: bench, quantity: 'ph', value: 5.2, at: may(4) },
];
const minutes = (count: number) => count * 60_000;

function remarksOnLast(standing: Standing, member: Member, last = 1) {
  return remarksOn(standing.logbook.all.slice(-last), standing, member);
}

describe('a reading out of range', () => {
  test('is answered to the grower with the dose to give', () => {
    const remarks = remarksOnLast(standingWith(lowPh, may(4)), ines);
    const work = remarks.find((remark) => remark.kind === 'next-work');
    expect(work?.lines[0]?.duty).toMatchObject({ kind: 'dose', product: 'ph-up' });
  });

  test('tells a helper who was not shown how to wait, and the grower to come', () => {
    const said = lowPh.map((each) => ({ ...each, by: 'tomas' }));
    const standing = standingWith(said, may(4));
    const kinds = remarksOnLast(standing, tomas).map(({ kind }) => kind);
    expect(kinds).toContain('waits-for-grower');
    expect(kinds).not.toContain('next-work');
    const [reminder] = remindersDue(standing, standing.nowMs);
    expect(reminder).toMatchObject({
      to: ['ines'],
      alert: { kind: 'dose-wanted', askedBy: 'tomas' },
    });
  });

  test('sends a helper who was shown how like a grower', () => {
    const shown = { ...tomas, handlesAcids: true };
    const kinds = remarksOnLast(standingWith(lowPh, may(4)), shown).map(({ kind }) => kind);
    expect(kinds).toContain('next-work');
  });

  test('says why there is no dose where there is none', () => {
    const said = lowPh.filter(({ quantity }) => quantity !== 'level');
    const remarks = remarksOnLast(standingWith(said, may(4)), ines);
    const refused = remarks.find((remark) => remark.kind === 'dose-refused');
    expect(refused?.refused.because.kind).toBe('unknown-volume');
  });

  test('of days ago calls for nothing', () => {
    const old = [...lowPh, { system: bench, quantity: 'ph', value: 7.5, at: may(2) } as const];
    const standing = standingWith(old, may(4));
    const late = standing.logbook.all.filter(({ value }) => value === 7.5);
    const kinds = remarksOn(late, standing, ines).map(({ kind }) => kind);
    expect(kinds).toEqual(['outside-range']);
  });
});

describe('a dose', () => {
  test('is followed by when to measure again, unless that was done', () => {
    const dose: Said = {
      system: bench,
      quantity: 'dose',
      value: 5,
      product: 'ph-up',
      at: may(4, '08:30'),
    };
    const given = standingWith([...lowPh, dose], may(4, '08:30'));
    expect(remarksOnLast(given, ines)).toEqual([
      { kind: 'measure-after-dose', system: bench, quantity: 'ph', fromMin: 15, toMin: 30 },
    ]);
    const after: Said = { system: bench, quantity: 'ph', value: 6, at: may(4, '08:30') };
    expect(remarksOnLast(standingWith([...lowPh, dose, after], may(4, '08:30')), ines, 2)).toEqual(
      [],
    );
  });
});

describe('a calibration', () => {
  const calibration = (value: number, read: number, at: string): Said => ({
    quantity: 'calibration',
    value,
    read,
    probe: 'pen',
    at,
  });

  test('gives slope, zero point and verdict', () => {
    const said = [calibration(7, 7.12, may(4)), calibration(4.01, 4.08, may(4))];
    const [state] = remarksOnLast(standingWith(said, may(4)), ines, 2);
    // Slope (7.12 - 4.08) / (7.00 - 4.01) = 101.7 %; 0.12 pH at 20 °C is 58.17 · 0.12 = 7 mV.
    expect(state).toMatchObject({ kind: 'probe-state', verdict: 'good', suspect: [] });
    if (state?.kind !== 'probe-state') throw new Error('no state');
    expect(state.slopeShare).toBeCloseTo(1.017, 2);
    expect(Math.abs(state.offsetMv!)).toBeCloseTo(7, 0);
  });

  test('that fails casts doubt on the readings back to the last good one, and changes none', () => {
    const ph = (value: number, day: number): Said => ({
      system: bench,
      quantity: 'ph',
      value,
      at: may(day),
    });
    const said = [
      ph(6, 1),
      calibration(7, 7.05, may(2)),
      calibration(4.01, 4.05, may(2)),
      ph(6.1, 3),
      ph(6.2, 4),
      calibration(7, 8, may(5)),
      calibration(4.01, 5.4, may(5)),
    ];
    const standing = standingWith(said, may(5));
    const state = remarksOnLast(standing, ines, 2).find(({ kind }) => kind === 'probe-state');
    if (state?.kind !== 'probe-state') throw new Error('no state');
    expect(state.verdict).toBe('unfit');
    expect(state.suspect.map(({ value }) => value)).toEqual([6.1, 6.2]);
    expect(standing.logbook.all.every(({ struck }) => struck === null)).toBe(true);
  });
});

describe('two meters in the same water', () => {
  test('are compared, and a contradiction is told instead of a dose', () => {
    const said: readonly Said[] = [
      ...known(buckets, 100, 1.9, may(4)).filter(({ quantity }) => quantity !== 'ec'),
      { system: buckets, quantity: 'ec', value: 1.9, probe: 'stick', at: may(4) },
      { system: buckets, quantity: 'ec', value: 1.4, probe: 'pen', at: may(4) },
    ];
    const kinds = remarksOnLast(standingWith(said, may(4)), ines).map(({ kind }) => kind);
    expect(kinds).toContain('meters-disagree');
    expect(kinds).not.toContain('next-work');
  });
});

describe('an outage', () => {
  const out: Said = { quantity: 'outage', of: 'power', by: 'tomas', at: may(4, '12:00') };
  const at = (time: string, more: readonly Said[] = []) =>
    standingWith([...known(buckets, 100, 1.8, may(4)), out, ...more], may(4, time));

  test('is told at once to the growers who did not report it', () => {
    const standing = at('12:00');
    const told = remindersDue(standing, standing.nowMs);
    expect(told.map(({ to, alert }) => [to, alert.kind])).toEqual([[['ines'], 'outage']]);
  });

  test('is followed by a reminder before each system runs out, and one when it likely has', () => {
    const standing = at('12:00');
    const later = remindersDue(standing, standing.nowMs + 24 * minutes(60));
    const ofGutters = later.filter(
      ({ alert }) => alert.kind === 'outage-reminder' && alert.prospect.system === gutters,
    );
    // Film run in sun: one hour at the earliest, so a quarter of an hour before; two hours likely.
    expect(ofGutters.map(({ atMs }) => atMs - standing.nowMs)).toEqual([minutes(45), minutes(120)]);
    expect(ofGutters[0]?.to).toEqual(['ines', 'tomas']);
    expect(new Set(later.map(({ key }) => key)).size).toBe(later.length);
    expect(
      later.some(({ alert }) => alert.kind === 'outage-reminder' && alert.prospect.system === jars),
    ).toBe(false);
  });

  test('has its next reminder in sight, and once it is over only the word of that', () => {
    const standing = at('12:30');
    const next = nextReminderMs(standing, standing.nowMs)!;
    expect(next).toBeGreaterThan(standing.nowMs);
    const back: Said = { quantity: 'restored', of: 'power', at: may(4, '12:40') };
    const over = at('12:40', [back]);
    const due = remindersDue(over, over.nowMs + 24 * minutes(60));
    expect(due.map(({ alert }) => alert.kind)).toEqual(['all-clear']);
    expect(nextReminderMs(over, over.nowMs)).toBeNull();
  });

  test('gives the same keys however often it is looked at', () => {
    const keysAt = (time: string) => {
      const standing = at(time);
      return remindersDue(standing, Date.parse(may(5)))
        .map(({ key }) => key)
        .toSorted();
    };
    expect(keysAt('12:10')).toEqual(keysAt('13:10'));
  });

  test('is alerted with its systems in order and the cautions for plugs and pumps', () => {
    const standing = at('12:00');
    const outages = standing.logbook.all.filter(({ quantity }) => quantity === 'outage');
    const [alert] = outageAlerts(outages, boardQuestion(standing, standing.nowMs));
    if (alert?.kind !== 'outage') throw new Error('no alert');
    expect(alert.systems.length).toBe(3);
    expect(alert.unaffected).toEqual([jars]);
    expect(alert.cautions).toMatchObject({ inFull: true });
    expect(alert.cautions.about).toContain('residual-current-device');
  });

  test('ends with an all-clear that says what may have suffered', () => {
    const clear = (time: string) => {
      const back: Said = { quantity: 'restored', of: 'power', at: may(4, time) };
      const standing = at(time, [back]);
      const alert = allClearAlert(
        standing.logbook.all.at(-1)!,
        boardQuestion(standing, standing.nowMs),
      );
      if (alert?.kind !== 'all-clear') throw new Error('no all-clear');
      return new Map(alert.systems.map(({ system, harm }) => [system, harm]));
    };
    expect(clear('12:10').get(gutters)).toBe('none');
    expect(clear('13:30').get(gutters)).toBe('perhaps');
    expect(clear('15:00').get(gutters)).toBe('likely');
    expect(clear('15:00').get(bench)).toBe('none');
  });
});

describe('an answer to a question for a sum', () => {
  test('mixes A and B for litres at an EC', () => {
    const standing = standingWith([], may(4));
    const answer = mixFor(
      standing,
      { kind: 'mix', system: null, litres: 120, ecMsPerCm: 1.6 },
      standing.nowMs,
    );
    // 120 L from 0.05 to 1.6 mS/cm at 0.35 mS/cm by 1 mL/L: 531 mL, told in fives.
    expect(answer).toMatchObject({
      concentrates: [
        { product: 'nutrient-a', mL: 530 },
        { product: 'nutrient-b', mL: 530 },
      ],
      basis: { kind: 'usual-strength' },
    });
  });

  test('turns 900 ppm into EC by the household factor, and names the other meters', () => {
    const answer = converted(standingWith([], may(4)).greenhouse.units, {
      kind: 'convert',
      value: 900,
      unit: 'ppm',
    });
    if (answer.kind !== 'converted') throw new Error('no conversion');
    expect(answer.ecMsPerCm).toBeCloseTo(1.8, 9);
    expect(answer.others.map(({ factor }) => factor)).toEqual([640, 700]);
    expect(answer.others[1]?.ecMsPerCm).toBeCloseTo(900 / 700, 9);
  });

  test('fills the bench with a 3000 pump in nine minutes at its rating, and in twice that when it lifts', () => {
    const asked = { kind: 'fill-with-pump', system: bench, ratedLPerH: 3000 } as const;
    const answer = fillWithPump(standingWith([], may(4)), asked, [bench])!;
    // 450 L at 3000 L/h; common practice: such a pump took 15 to 20 minutes for a bench of that size.
    expect(answer.systems[0]?.leastMin).toBeCloseTo(9, 9);
    expect(answer.systems[0]?.mostMin).toBeCloseTo(18, 9);
  });

  test('says how much of a product a system needs, or that it needs none', () => {
    const standing = standingWith(lowPh, may(4));
    const ask = (product: string | null) =>
      howMuch(
        standing,
        { kind: 'how-much', system: bench, product },
        [bench],
        ines,
        standing.nowMs,
      );
    expect(ask('ph-up').lines.map(({ duty }) => duty.product)).toEqual(['ph-up']);
    expect(ask('nutrient-a')).toMatchObject({
      lines: [],
      inRange: [{ quantity: 'ec', value: 2.4 }],
    });
    expect(ask(null).lines).toHaveLength(1);
  });
});

describe('duties for a helper', () => {
  test('hold everything but strong acid and alkali', () => {
    const standing = standingWith(lowPh, may(4));
    const { today } = boardOf(standing, standing.nowMs);
    const forTomas = dutiesForMember(today, tomas, quarryLane);
    expect(forTomas.leftToGrower.map(({ duty }) => duty.product)).toEqual(['ph-up']);
    expect(forTomas.mine).toHaveLength(today.length - 1);
    expect(dutiesForMember(today, ines, quarryLane).leftToGrower).toEqual([]);
  });
});

describe('cautions', () => {
  const standing = standingWith(lowPh, may(4));
  const { today } = boardOf(standing, standing.nowMs);
  const reply: Reply = {
    kind: 'answer',
    answer: { kind: 'due', system: null, today: boardDate(), duties: today, next: [] },
  };

  test('stand in full once for a member and briefly afterwards', () => {
    const inFull = (told: Reply) =>
      told.kind === 'answer' && told.answer.kind === 'due'
        ? told.answer.duties.filter(({ cautions }) => cautions?.inFull).length
        : 0;
    const first = withCautionsOnce(reply, newConversation('ines'));
    const second = withCautionsOnce(reply, first.conversation);
    expect(inFull(first.reply)).toBeGreaterThan(0);
    expect(inFull(second.reply)).toBe(0);
    expect(second.conversation).toBe(first.conversation);
  });

  test('stand briefly in a round where an earlier one asked for the like', () => {
    const round = { date: boardDate(), sentAtMs: 0, duties: today.map(({ duty }) => duty) };
    const full = (lines: typeof today) => lines.filter(({ cautions }) => cautions?.inFull).length;
    expect(full(withCautionsOfRound(today, []))).toBeGreaterThan(0);
    expect(full(withCautionsOfRound(today, [round]))).toBe(0);
  });

  function boardDate() {
    return '2027-05-04' as NonNullable<(typeof today)[number]['duty']['latestOn']>;
  }
});
