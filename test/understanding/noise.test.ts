import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Context } from '../../src/understanding/context.ts';
import { understand } from '../../src/understanding/understand.ts';
import { draftsOf, greenhouseNamed } from './understanding-talk.ts';

const greenhouse = greenhouseNamed();
const writtenAtMs = Date.parse('2027-05-04T07:20:00Z');
const context: Context = {
  greenhouse,
  member: greenhouse.members[1]!,
  writtenAtMs,
  repliedTo: null,
  recentSystem: null,
  openQuestions: [],
  roundDuties: null,
  existsSinceMs: 0,
};
/** Told, so that even a bare reading has its system: the harder case for noise. */
const inTalk: Context = { ...context, recentSystem: greenhouse.systems[1]!.id };

const vocabulary = [
  'dwc',
  'bench',
  'jars',
  'tub',
  'ph',
  'ec',
  'temp',
  'air',
  'level',
  'topped up',
  'added',
  'put',
  'A',
  'B',
  'ph down',
  'up',
  'ml',
  'l',
  'cm',
  '%',
  'and',
  'then',
  'but',
  ',',
  '.',
  '?',
  '!',
  ':',
  '/',
  '-',
  'in the',
  'of',
  'to',
  'not',
  "didn't",
  'will',
  'if',
  'yesterday',
  'at 8',
  'an hour ago',
  'half',
  'full',
  '5.8',
  '1.7',
  '12',
  '1,413',
  '7:30',
  'no wait',
  'sorry',
  'undo',
  'done',
  'all',
  'each',
  'both',
  'same',
  'calibrated',
  'read',
  'pen',
  'power',
  'out',
  'back',
  'since',
  'fill',
  'took',
  'min',
  'venturi',
  'note',
  'what',
  'is',
  'how',
  'picked',
  'kg',
  'from',
  '½',
  '😀',
  'ntf',
  '\n',
];

describe('whatever is written', () => {
  test('reading never throws and always says something', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        expect(understand(text, inTalk).statements.length).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });

  test('noise of letters and marks logs nothing', () => {
    const letters = fc.string({
      unit: fc.constantFrom(...Array.from('bcdfghjkqvwxz!?,;:…#*()[]{}<>|~^\u200e\u202e\u0000')),
      maxLength: 200,
    });
    fc.assert(
      fc.property(letters, (text) => {
        expect(draftsOf(understand(text, inTalk).statements)).toEqual([]);
      }),
      { numRuns: 2000 },
    );
  });

  test('the reader’s own words in any order never make it throw, and no entry is beyond belief', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...vocabulary), { maxLength: 25 }), (words) => {
        for (const draft of draftsOf(understand(words.join(' '), inTalk).statements)) {
          expect(Number.isFinite(draft.value)).toBe(true);
          expect(draft.atMs).toBeLessThanOrEqual(writtenAtMs);
          if (draft.quantity === 'ph')
            expect(draft.value).toSatisfy((value: number) => value >= 3 && value <= 9);
        }
      }),
      { numRuns: 5000 },
    );
  });

  test.each([
    ['a script', '<script>alert(1)</script>'],
    ['a table to be dropped', "'; DROP TABLE entries; --"],
    ['a template', '${7*7} {{7*7}} %s %n'],
    ['an address', 'https://example.org/?ph=5.8&ec=1.7'],
    ['numbers beyond doubles', 'dwc ph 1e999 9'.padEnd(400, '9')],
    ['lone surrogates', 'dwc \ud800 ph \udfff'],
    ['marks that turn the line around', '\u202edwc\u202c \u2066\u2069'],
    ['nothing', ''],
    ['blanks', ' \t\n\u00a0'],
    ['letters with a hundred accents', `e${'\u0301'.repeat(500)}`],
  ])('%s is no entry', (_, text) => {
    expect(draftsOf(understand(text, inTalk).statements)).toEqual([]);
  });
});

describe('long messages', () => {
  const pieces = [
    'dwc ',
    'ph 5.8 ',
    'and ',
    '1/2 ',
    'half a ',
    '12 l ',
    '5-',
    'at 8 ',
    'no wait 5 ',
    '? ',
    '((',
    'topepd ',
    'ﷺ',
    '20 ml a and ',
    '\n',
    'x',
    'olli says ',
    'birgit sagt ',
    'füll nach, ',
    '5 5/each ',
    '3 cans + ',
  ];

  test.each(pieces)(
    'beyond what a report can be, %j over and over is one polite question',
    (piece) => {
      const { statements } = understand(piece.repeat(100_000 / piece.length), context);
      expect(statements.map(({ kind }) => kind)).toEqual(['doubt']);
    },
  );

  test('what is looked at does not grow with what is written', () => {
    for (const piece of pieces) {
      const looked = [1, 10, 50].map((times) => {
        const text = piece.repeat(Math.ceil((2001 * times) / piece.length));
        return understand(text, context).foldedText.length;
      });
      expect(new Set(looked).size).toBe(1);
    }
  });

  test('a note is kept whole, however long', () => {
    const text = `note: ${'aphids on the basil, '.repeat(5000)}end`;
    const drafts = draftsOf(understand(text, context).statements);
    expect(drafts).toHaveLength(1);
    expect(drafts[0]?.note).toBe(text.slice('note: '.length));
  });
});
