import { describe, expect, it } from 'vitest';
import { languages } from '../../src/greenhouse/member.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { everyButton, everyReply } from './every-reply.ts';
import { americanLane, quarryLane, reader } from './quarry-lane.ts';

/** Marks of data that was never turned into words. */
const unworded = /undefined|null|NaN|Infinity|\[object|[{}]| {2}|\s[.,;:]|\.\.|^\s|\s$/m;
const households = { litres: quarryLane, gallons: americanLane };

describe.each(languages)('every reply in %s', (language) => {
  describe.each(Object.entries(households))('for a household in %s', (_, greenhouse) => {
    it.each(everyReply)('words %s in whole sentences', (_kind, reply) => {
      const text = wordings[language].reply(reply, { ...reader, greenhouse });
      expect(text).not.toMatch(unworded);
      expect(text).toMatch(/^[\p{Lu}\d„“]|^p[H]|^[mµ]S/u);
      expect(text.length).toBeGreaterThan(3);
    });

    it.each(everyButton)('keeps the button $kind $choice.kind within a phone', (label) => {
      const text = wordings[language].button(label, { ...reader, greenhouse });
      expect(text).not.toMatch(unworded);
      expect(text.length).toBeLessThanOrEqual(30);
      expect(text.length).toBeGreaterThan(0);
    });
  });
});

describe('two languages', () => {
  it.each(everyReply)('do not share the sentences of %s', (_kind, reply) => {
    const texts = languages.map((language) => wordings[language].reply(reply, reader));
    expect(new Set(texts).size).toBe(languages.length);
  });
});
