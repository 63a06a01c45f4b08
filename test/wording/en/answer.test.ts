import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../src/assistant/replies/answer.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { answers } from '../every-reply.ts';
import {
  americanLane,
  benchTopUp,
  buckets,
  check,
  date,
  entry,
  jars,
  nowMs,
  reader,
  tieUp,
  today,
} from '../quarry-lane.ts';

function tell(answer: Answer, to = reader): string {
  return wordings.en.reply({ kind: 'answer', answer }, to);
}

const due = { kind: 'due', system: null, today, duties: [], next: [] } as const;

describe('an English answer', () => {
  it('lists what is due today', () => {
    expect(tell({ ...due, duties: [check(buckets)] })).toBe(
      'To do today:\n1. Check pH and EC of Bucket row. Last measured yesterday.',
    );
  });

  it('says what comes next where nothing is due', () => {
    const next = [{ ...benchTopUp, duty: { ...benchTopUp.duty, dueOn: date('2027-05-06') } }];
    expect(tell({ ...due, next })).toBe(
      'Nothing to do today. Next: top up North bench on Thursday.',
    );
    expect(tell({ ...due, system: jars })).toBe('Nothing to do today for Jar shelf.');
  });

  it('says that what only rides along is not urgent', () => {
    expect(tell({ ...due, duties: [tieUp] })).toBe(
      'To do today:\nNot urgent, but worth doing on a trip:\n1. Tie up the tomatoes (North bench). To be done every 5 days, last done on Friday.',
    );
  });

  it('gives the figures on why exactly, and not otherwise', () => {
    const plain = tell({ kind: 'why', duties: [benchTopUp], exactly: false });
    expect(plain).toBe(
      'Top up North bench with up to 43 L (4½ cans), to the brim. About 180 L left and it drinks about 24 L a day, so it could reach the low mark (150 L) by Thursday.',
    );
    expect(tell({ kind: 'why', duties: [benchTopUp], exactly: true })).toBe(
      `${plain} Exactly: 180.4 L left, give or take 5.2 L; 24.3 L a day; low mark at the earliest on Thursday, most likely on Friday; due Tuesday 4 May.`,
    );
  });

  it.each([
    ['when-next', 'Top up North bench: on Thursday.'],
    [
      'how-long',
      'Bucket row: about 90 L left, drinks about 5 L a day, low mark most likely on Friday (Thursday at the earliest, 12 May at the latest).',
    ],
    [
      'last-reading',
      'Bucket row: pH 5.8, yesterday at 18:00.\nGutter run: pH 6.1, today at 08:20.',
    ],
    ['use', 'North bench: topped up 120 L since Saturday; it drinks about 24 L a day.'],
    [
      'is-it-right',
      'pH 5.4 is too low for Bucket row: 5.5 to 6.2 is wanted.\nJar shelf: no pH has been logged yet; 5.5 to 6.5 is wanted.',
    ],
    ['who', 'Tomas: topped up 3 L (Jar shelf), yesterday at 18:00.'],
    [
      'show',
      'Bucket row: about 90 L left, drinks about 5 L a day, low mark most likely on Friday (Thursday at the earliest, 12 May at the latest).\npH 5.8 (today), EC 1.7 mS/cm (yesterday).\nNext: check Bucket row tomorrow.',
    ],
    ['nothing-to-take-back', 'There is nothing to take back.'],
    [
      'nothing-to-put-right',
      'I find nothing of yours that this would put right, so nothing was changed. Please say it in full, with the system and what it is, for example “pH 5.8”.',
    ],
    ['nothing-to-put-back', 'Nothing is struck out that I could put back.'],
    ['nothing-open', 'That was done already. Nothing is open.'],
    ['too-late', 'That is no longer open, so nothing was changed.'],
    ['left-out', 'All right, nothing was logged.'],
    ['thanks', "You're welcome."],
    ['greeted', 'Hello.'],
    ['heard', 'All right.'],
    ['cannot-tell', 'I cannot work that out yet.'],
    [
      'help',
      'Tell me what you measured or did: “North bench pH 6.1 EC 2.4 mS/cm”, “topped up Bucket row 12 L”, “undo”.\nOr ask: “what needs doing”, “how long will North bench last” or “what was the last pH”.',
    ],
    [
      'unknown',
      'I cannot answer that.\nYou can ask “what needs doing”, “how long will North bench last” or “what was the last pH”.',
    ],
  ] as const)('tells %s', (kind, told) => {
    expect(tell(answers[kind])).toBe(told);
  });

  it('says so where nothing was found', () => {
    expect(tell({ kind: 'last-reading', quantity: 'humidity', entries: [] })).toBe(
      'No humidity has been logged yet.',
    );
    expect(tell({ kind: 'who', entries: [], setUp: [] })).toBe('Nobody has logged that yet.');
    expect(tell({ kind: 'when-next', duties: [] })).toBe('Nothing of that kind is planned.');
  });

  it('says that water lasts where no low mark is in sight', () => {
    const lasting = { system: jars, litres: 23, usePerDayL: 0.05 };
    const never = { lowOnEarly: null, lowOnLikely: null, lowOnLate: null };
    expect(tell({ kind: 'how-long', systems: [{ ...lasting, ...never }] })).toBe(
      'Jar shelf: about 23 L left, drinks about 0.05 L a day, lasts more than two months.',
    );
  });

  it('names the clock the American way for an American household', () => {
    const entries = [entry('ph', 5.8, { atMs: nowMs - 12 * 3_600_000 })];
    const american = { greenhouse: americanLane, nowMs };
    expect(tell({ kind: 'last-reading', quantity: 'ph', entries }, american)).toBe(
      'Bucket row: pH 5.8, yesterday at 2:20 PM.',
    );
    expect(tell(answers.help, american)).toContain('“topped up Bucket row 3 gal”');
  });
});

describe('an English refusal', () => {
  it('says who logged it and who can change it', () => {
    const because = { kind: 'not-yours', entries: [entry('ph', 5.8)] } as const;
    expect(wordings.en.reply({ kind: 'refusal', because }, reader)).toBe(
      'That was logged by Tomas. Only Tomas or Ines can change it.',
    );
  });
});
