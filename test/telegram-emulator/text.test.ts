import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cleanText } from './text/clean-text.ts';
import { withFoundEntities } from './text/found-entities.ts';
import { checkEntities } from './text/given-entities.ts';
import { Refusal } from './wire/refusal.ts';

const blanks = fc.string({ unit: fc.constantFrom(' ', '\n'), maxLength: 4 });
const words = fc.string({
  unit: fc.constantFrom('a', '🌱', 'ü', '/', '@', ' ', '<'),
  maxLength: 12,
});

/** Half a character does not survive being written as UTF-8. */
const isWhole = (text: string): boolean => Buffer.from(text).toString() === text;

test('an entity still covers the same words after the text around it was cleaned', () => {
  fc.assert(
    fc.property(blanks, words, words, words, blanks, (before, left, marked, right, after) => {
      const text = before + left + marked + right + after;
      const offset = before.length + left.length;
      const entity = { type: 'bold', offset, length: marked.length };
      const clean = cleanText({ text, entities: [entity] });
      expect(clean.text).toBe(text.trim());
      const [kept] = clean.entities;
      if (kept === undefined) expect(marked.trim()).toBe('');
      else {
        expect(clean.text.slice(kept.offset, kept.offset + kept.length).trim()).toBe(marked.trim());
      }
    }),
  );
});

test('an entity is taken if and only if it lies on whole characters of the text', () => {
  fc.assert(
    fc.property(
      words,
      fc.integer({ min: -2, max: 14 }),
      fc.integer({ min: -2, max: 14 }),
      (text, offset, length) => {
        const inside = offset >= 0 && length >= 0 && offset + length <= text.length;
        const whole = [offset, offset + length].every((at) => isWhole(text.slice(0, at)));
        const checked = checkEntities(text, [{ type: 'bold', offset, length }]);
        expect(!(checked instanceof Refusal)).toBe(inside && whole);
      },
    ),
  );
});

test('commands, mentions and addresses are found where the platform finds them', () => {
  const found = (text: string) =>
    withFoundEntities(text, []).map(
      ({ type, offset, length }) => `${type} ${text.slice(offset, offset + length)}`,
    );
  expect(found('/start@some_bot now, @asha_b or #tank1 https://example.org/a.')).toEqual([
    'bot_command /start@some_bot',
    'mention @asha_b',
    'hashtag #tank1',
    'url https://example.org/a',
  ]);
  expect(found('pH 5/8, me@example.org, a/b, 5@six')).toEqual(['email me@example.org']);
});
