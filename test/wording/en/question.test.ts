import { describe, expect, it } from 'vitest';
import type { Doubt } from '../../../src/understanding/doubt.ts';
import type { ChoiceLabel, DoubtReason } from '../../../src/understanding/statement.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { doubtReasons } from '../every-reply.ts';
import {
  americanLane,
  bench,
  benchTopUp,
  buckets,
  entry,
  jars,
  nowMs,
  reader,
} from '../quarry-lane.ts';

const { reply, button } = wordings.en;

function ask(reason: DoubtReason, more: Partial<Doubt> = {}, to = reader): string {
  const doubt: Doubt = { reason, choices: [], waiting: null, ...more };
  return reply({ kind: 'question', questionId: 'q1', doubt }, to);
}

describe('an English question', () => {
  it.each([
    ['which-system', 'pH: which system is “ntf”?'],
    ['which-quantity', 'What is 5.8? Please say it with a word, for example “pH 5.8”.'],
    ['in-it-or-added', '12 L: is that what is in it now, or what you added?'],
    ['which-unit', 'Water level 95: in litres, % or cm?'],
    ['out-of-range', 'pH 54 is outside what is possible (3 to 9). What is the right value?'],
    ['conflict', 'pH 5.9 and pH 6.2: which one is right?'],
    ['missing-amount', 'How many litres did you top up?'],
    ['litres-to-brim', 'How many litres did it take to fill it to the brim?'],
    ['shared-amount', '10 l: for each of them, or in all?'],
    ['which-time', "I can't place “at 18:00”. When was that?"],
    [
      'since-when',
      'Since when is the power out? “since 14:30” is still to come today, so I logged it from now.',
    ],
    [
      'how-long-out',
      'How long was the power out? For example “2 hours”. Until you say, it is not logged.',
    ],
    ['is-it-a-reading', 'Should I log that, or was it a question?'],
    [
      'shorthand-does-not-fit',
      'These numbers do not fit the order pH, EC, water temperature. Which is which? For example “pH 5.9, EC 1.7, water 21”.',
    ],
    ['which-duties', 'Which work is done? For example “did North bench”.'],
    ['why-not', 'Top up North bench: what got in the way? A word is enough.'],
    ['unclear', 'I did not understand that. Shall I keep it as a note?'],
  ] as const)('asks about %s', (kind, told) => {
    expect(ask(doubtReasons[kind])).toBe(told);
  });

  it('says what waits for a system, whatever system the first button stands for', () => {
    const drafts = [entry('level', 390, { saidAs: { kind: 'depth', cm: 52 } }), entry('ph', 5.8)];
    const choices = [{ label: { kind: 'system', system: bench } as const, drafts }];
    expect(ask({ kind: 'which-system', quantity: 'level' }, { choices })).toBe(
      'Level 52 cm deep, pH 5.8: for which system?',
    );
  });

  it('offers the likely slip in the words of its button', () => {
    const choices = [
      {
        label: { kind: 'value', quantity: 'ph', value: 5.4 } as const,
        drafts: [entry('ph', 5.4)],
      },
    ];
    expect(ask(doubtReasons['out-of-range'], { choices })).toBe(
      'pH 54 for Bucket row is outside what is possible (3 to 9). Did you mean pH 5.4?',
    );
  });

  it('names the quantities between which it is in doubt', () => {
    const choices = (['ph', 'ec', 'water-temperature'] as const).map((quantity) => ({
      label: { kind: 'quantity', quantity } as const,
      drafts: [entry(quantity, 5.8)],
    }));
    expect(ask(doubtReasons['which-quantity'], { choices })).toBe(
      '5.8 for Bucket row: is that the pH, EC or water temperature?',
    );
  });

  it('asks for a reading back where one was asked about', () => {
    const choices = [{ label: { kind: 'yes' } as const, drafts: [entry('ph', 5.4)] }];
    expect(ask(doubtReasons['is-it-a-reading'], { choices })).toBe(
      'Should I log pH 5.4 for Bucket row, or was that a question?',
    );
  });

  it('asks for the litres that went in to the brim of the system at hand', () => {
    const waiting = { for: 'value', drafts: [entry('top-up', 0, { system: jars })] } as const;
    expect(ask(doubtReasons['litres-to-brim'], { waiting })).toBe(
      'How many litres did it take to fill Jar shelf to the brim?',
    );
  });

  it.each([
    ['dose', 'How many mL of pH down?'],
    ['harvest', 'How much did you pick, in g or kg?'],
    ['fill-time', 'How many minutes did the fill take?'],
    ['aeration', 'How many minutes an hour does the aeration run?'],
    ['reservoir-change', 'How many litres of fresh solution went in?'],
    ['ph', 'What is the pH?'],
  ] as const)('asks for the amount of %s', (quantity, told) => {
    expect(ask({ kind: 'missing-amount', quantity, product: 'ph-down' })).toBe(told);
  });

  it('asks a household of gallons for gallons', () => {
    const american = { greenhouse: americanLane, nowMs };
    expect(ask(doubtReasons['missing-amount'], {}, american)).toBe(
      'How many gallons did you top up?',
    );
    expect(
      ask(
        { kind: 'out-of-range', quantity: 'level', value: 130, lowest: 0, highest: 108 },
        {},
        american,
      ),
    ).toBe('34.34 gal is outside what is possible (0 to 28.53 gal). What is the right value?');
  });

  it('cuts a long quotation instead of repeating it whole', () => {
    const text = ask({ kind: 'which-time', written: 'x '.repeat(50_000) });
    expect(text.length).toBeLessThan(200);
  });
});

describe('an English button', () => {
  const choice = (label: ChoiceLabel) => button({ kind: 'choice', choice: label }, reader);

  it('says in a word what pressing it does', () => {
    expect(button({ kind: 'strike-out' }, reader)).toBe('Undo');
    expect(button({ kind: 'log-nothing' }, reader)).toBe('Log nothing');
    expect(choice({ kind: 'keep-as-note' })).toBe('Keep as a note');
    expect(choice({ kind: 'quantity', quantity: 'top-up' })).toBe('Added');
    expect(choice({ kind: 'quantity', quantity: 'level' })).toBe('In it now');
    expect(choice({ kind: 'value', quantity: 'ph', value: 5.4 })).toBe('pH 5.4');
    expect(choice({ kind: 'value', quantity: 'top-up', value: 12 })).toBe('12 L');
  });

  it('counts systems whose names would not fit', () => {
    expect(choice({ kind: 'systems', systems: [bench, buckets] })).toBe(
      'North bench and Bucket row',
    );
    expect(choice({ kind: 'systems', systems: [bench, buckets, jars] })).toBe('All 3');
  });

  it('names the duty that it ticks or opens again', () => {
    expect(button({ kind: 'tick', duty: benchTopUp.duty }, reader)).toBe('✓ Top up North bench');
    expect(button({ kind: 'untick', duty: benchTopUp.duty }, reader)).toBe(
      'Undo: top up North bench',
    );
    expect(button({ kind: 'cannot', duty: benchTopUp.duty }, reader)).toBe("Can't");
  });

  it('names the member whom it invites or removes', () => {
    const wish = (kind: 'invite' | 'remove') =>
      ({ kind: 'household', wish: { kind, handle: 'olli', role: 'helper' } }) as const;
    expect(button(wish('invite'), reader)).toBe('Invite Olli');
    expect(button(wish('remove'), reader)).toBe('Remove Olli');
  });
});
