import { describe, expect, it } from 'vitest';
import { languages } from '../../src/greenhouse/member.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { everyAdvice } from './every-advice.ts';
import { americanLane, quarryLane, reader } from './quarry-lane.ts';

/** Marks of data that was never turned into words. */
const unworded = /undefined|null|NaN|Infinity|\[object|[{}]| {2}|\s[.,;:]|\.\.|^\s|\s$/m;

function textOf(language: (typeof languages)[number], kind: string): string {
  const reply = everyAdvice.find(([name]) => name === kind)![1];
  return wordings[language].reply(reply, reader);
}

describe.each(languages)('advice in %s', (language) => {
  it.each(everyAdvice)('words %s in whole sentences', (_kind, reply) => {
    for (const greenhouse of [quarryLane, americanLane]) {
      const text = wordings[language].reply(reply, { ...reader, greenhouse });
      expect(text).not.toMatch(unworded);
      expect(text).toMatch(/^[\p{Lu}\d„“]/u);
      expect(text).toMatch(/[.?!]$/);
    }
  });
});

describe('two languages', () => {
  it.each(everyAdvice)('do not share the sentences of %s', (_kind, reply) => {
    const texts = languages.map((language) => wordings[language].reply(reply, reader));
    expect(new Set(texts).size).toBe(languages.length);
  });
});

describe('a dose in words', () => {
  it('names product, millilitres, steps and every caution in full', () => {
    const text = textOf('en', 'remark next-work');
    expect(text).toContain('Add 8.5 mL pH down to Bucket row');
    expect(text).toContain('wait 15 to 30 minutes');
    expect(text).toContain('Acid or alkali into water, never water into acid or alkali.');
    expect(text).toContain('Never let acid meet bleach');
    expect(text).toContain('Never mix concentrates undiluted');
    expect(text).toContain(
      'The label and the safety data sheet of the product stand above my figure.',
    );
    expect(text).toContain('residual-current device');
  });

  it('says the same in German, with the German comma', () => {
    const text = textOf('de', 'remark next-work');
    expect(text).toContain('8,5 ml pH-Minus zugeben');
    expect(text).toContain('15 bis 30 Minuten warten');
    expect(text).toContain('nie Wasser in Säure oder Lauge');
    expect(text).toContain('Chlorgas');
  });
});

describe('the age of a solution in words', () => {
  const ofAge = (language: (typeof languages)[number], ageDays: number): string => {
    const [kind, reply] = everyAdvice.find(([, each]) =>
      JSON.stringify(each).includes('dueAgeDays'),
    )!;
    const aged = JSON.stringify(reply)
      .replace('"because":"top-ups"', '"because":"age"')
      .replace('"ageDays":24', `"ageDays":${ageDays}`);
    expect(kind).not.toBe('');
    return wordings[language].reply(JSON.parse(aged) as typeof reply, reader);
  };

  it('says when its time comes, and that it has come', () => {
    expect(ofAge('en', 1)).toContain(
      'The solution is 1 day old; for a reservoir of 108 L its time is at 24 days.',
    );
    expect(ofAge('en', 24)).toContain('is 24 days old, which is its time');
    expect(ofAge('de', 1)).toContain(
      'Die Lösung ist 1 Tag alt; bei 108 l Inhalt ist es nach 24 Tagen Zeit.',
    );
    expect(ofAge('de', 24)).toContain('ist 24 Tage alt, bei 108 l Inhalt ist es Zeit.');
  });
});

describe('an outage in words', () => {
  it('gives the hours with their bounds and what to do by hand', () => {
    const text = textOf('en', 'alert outage');
    expect(text).toContain(
      '1. Gutter run: likely 2½ hours until the roots dry out (60 minutes to 2 days)',
    );
    expect(text).toContain('By hand: ');
    expect(text).toContain('Jar shelf: nothing is lost by waiting.');
  });
});

describe('a conversion in words', () => {
  it('names the scale of each meter', () => {
    expect(textOf('en', 'answer converted')).toBe(
      '900 ppm is EC 1.8 mS/cm on your 500 scale (1800 µS/cm, 18 CF); 1.41 mS/cm on a 640 meter and 1.29 mS/cm on a 700 meter.',
    );
  });
});
