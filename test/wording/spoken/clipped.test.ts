import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../src/greenhouse/member.ts';
import { clipped } from '../../../src/wording/spoken/clipped.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { entry, reader } from '../quarry-lane.ts';

describe('somebody’s own words', () => {
  it('stand on one line', () => {
    expect(clipped(' leaves  look\n\tpale\u0000 ', 40)).toBe('leaves look pale');
  });

  it('are cut where they run on, never through a character', () => {
    expect(clipped('🌱🌱🌱🌱', 6)).toBe('🌱🌱…');
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.integer({ min: 2, max: 40 }), (text, most) => {
        const told = clipped(text, most);
        expect(told.length).toBeLessThanOrEqual(most);
        expect(told).not.toMatch(/[\n\r]| {2}/);
      }),
    );
  });

  it.each(languages)('never break a receipt or a button in %s', (language) => {
    const { reply, button } = wordings[language];
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }), (words) => {
        const logged = [entry('note', 1, { note: words })];
        const text = reply({ kind: 'receipt', logged, assumptions: [], remarks: [] }, reader);
        expect(text.split('\n')).toHaveLength(1);
        expect(text).not.toMatch(/ {2}/);
        const label = { kind: 'choice', choice: { kind: 'amount', text: words } } as const;
        expect(button(label, reader).length).toBeLessThanOrEqual(30);
      }),
    );
  });
});
