import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryDraft } from '../../src/greenhouse/entry.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import type { System } from '../../src/greenhouse/system.ts';
import type { Context } from '../../src/understanding/context.ts';
import { understand } from '../../src/understanding/understand.ts';
import { inShort } from './in-short.ts';
import { draftsOf, greenhouseNamed } from './understanding-talk.ts';

/** One thing that a person may say of a system, with the entry that it must become. */
interface Saying {
  readonly words: string;
  readonly draft: Pick<EntryDraft, 'quantity' | 'value'> & Partial<EntryDraft>;
}

const writtenAtMs = Date.parse('2027-05-04T07:20:00Z');
const litresPerGallon = 3.785411784;

function contextIn(greenhouse: Greenhouse): Context {
  return {
    greenhouse,
    member: greenhouse.members[0]!,
    writtenAtMs,
    repliedTo: null,
    recentSystem: null,
    openQuestions: [],
    roundDuties: null,
    existsSinceMs: 0,
  };
}

const tenths = (from: number, to: number) =>
  fc.integer({ min: from * 10, max: to * 10 }).map((n) => n / 10);
const whole = (from: number, to: number) => fc.integer({ min: from, max: to });
const say = (words: readonly string[], draft: Saying['draft']) =>
  fc.constantFrom(...words).map((said): Saying => ({ words: said, draft }));
const comma = (value: number) => String(value).replace('.', ',');
const digits = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const spoken = (value: number) =>
  `${digits[Math.floor(value)]!} point ${digits[Math.round((value % 1) * 10)]!}`;

const ph = tenths(4, 8).chain((v) =>
  say(
    [
      `ph ${v}`,
      `pH: ${v}`,
      `pH=${v}`,
      `${v} ph`,
      `ph is ${v}`,
      `pH${v}`,
      `ph ${comma(v)}`,
      `ph ${spoken(v)}`,
      `ph reads ${v}`,
      `PH - ${v}`,
    ],
    { quantity: 'ph', value: v },
  ),
);
const ec = tenths(0.5, 4).chain((v) =>
  say(
    [
      `ec ${v}`,
      `EC: ${v}`,
      `ec=${v} mS/cm`,
      `${v} mS`,
      `ec ${Math.round(v * 1000)}`,
      `${Math.round(v * 1000)} µS/cm`,
      `CF ${Math.round(v * 10)}`,
      `conductivity ${comma(v)}`,
    ],
    { quantity: 'ec', value: v },
  ),
);
const water = tenths(12, 30).chain((v) =>
  say(
    [`water temp ${v}C`, `temp ${v} °C`, `${v}°C`, `water ${v} C`, `temperature is ${v} degrees C`],
    { quantity: 'water-temperature', value: v },
  ),
);

function level({ brimL, depthCm }: System) {
  const inLitres = whole(1, Math.floor(brimL)).chain((v) =>
    say([`level ${v} l`, `${v} l left`, `level is ${v} litres`, `${v} litres remaining`], {
      quantity: 'level',
      value: v,
    }),
  );
  const inCm = whole(1, Math.floor(depthCm)).chain((v) =>
    say([`level ${v}cm`, `${v} cm deep`, `level is ${v} cm`], {
      quantity: 'level',
      value: (brimL * v) / depthCm,
    }),
  );
  const below = whole(1, Math.floor(depthCm) - 1).chain((v) =>
    say([`down ${v} cm`, `${v} cm below the brim`, `${v} cm down`], {
      quantity: 'level',
      value: brimL * (1 - v / depthCm),
    }),
  );
  const inWords = say(['half full'], { quantity: 'level', value: brimL / 2 });
  return fc.oneof(inLitres, inCm, below, inWords);
}

function topUp(greenhouse: Greenhouse, { brimL }: System) {
  const inLitres = whole(1, Math.floor(brimL)).chain((v) =>
    say(
      [
        `topped up ${v} l`,
        `added ${v} litres`,
        `put in ${v} l`,
        `topped up with ${v} ltr`,
        `poured in ${v}l`,
        `top up ${v} l`,
        `topepd up ${v} l`,
        `topped up ${v} liters of water`,
      ],
      { quantity: 'top-up', value: v },
    ),
  );
  const inGallons = whole(1, Math.floor(brimL / litresPerGallon)).chain((v) =>
    say([`topped up ${v} gal`, `added ${v} gallons`], {
      quantity: 'top-up',
      value: v * litresPerGallon,
    }),
  );
  const containers = greenhouse.containers
    .filter(({ litres }) => litres * 2 <= brimL)
    .map(({ name, litres }) =>
      say([`put in two ${name}s`, `topped up 2 ${name}s`], {
        quantity: 'top-up',
        value: litres * 2,
      }),
    );
  return fc.oneof(inLitres, inGallons, ...containers);
}

const dose = whole(1, 15).chain((v) =>
  fc.constantFrom('ph-up', 'ph-down').chain((product) => {
    const spokenName = product.replace('-', ' ');
    return say(
      [`${v} ml ${spokenName}`, `added ${v}ml of ${spokenName}`, `${spokenName} ${v} ml`],
      { quantity: 'dose', value: v, product },
    );
  }),
);
const nutrients = whole(1, 15).chain((v) =>
  fc
    .constantFrom('a', 'b')
    .chain((letter) =>
      say(
        [
          `added ${v} ml ${letter.toUpperCase()}`,
          `${v} ml nutrient ${letter}`,
          `${v}ml of part ${letter}`,
        ],
        { quantity: 'dose', value: v, product: `nutrient-${letter}` },
      ),
    ),
);
const harvest = whole(20, 900).chain((v) =>
  say([`picked ${v} g`, `harvested ${v} grams`], { quantity: 'harvest', value: v }),
);

/** At most one thing of each kind, in any order. */
function sayings(greenhouse: Greenhouse, system: System) {
  const kinds: fc.Arbitrary<Saying>[] = [
    ph,
    ec,
    water,
    level(system),
    topUp(greenhouse, system),
    dose,
    nutrients,
    harvest,
  ];
  return fc
    .shuffledSubarray(kinds, { minLength: 1, maxLength: 4 })
    .chain((chosen) => fc.tuple(...chosen));
}

/** A system as it may be called, a slip of the finger in the longer words included. */
function called(system: System): fc.Arbitrary<string> {
  const ways = [system.name, ...system.aliases].filter((name) => name.length > 2);
  return fc.constantFrom(...ways).chain((name) =>
    fc
      .record({ slips: fc.boolean(), at: fc.nat(), capital: fc.boolean() })
      .map(({ slips, at, capital }) => {
        const words = name
          .split(' ')
          .map((word) =>
            slips && word.length >= 6 && /^[a-z]+$/i.test(word) ? swapped(word, at) : word,
          );
        return capital ? words.join(' ') : words.join(' ').toLowerCase();
      }),
  );
}

/** Two neighbours swapped, never the first. */
function swapped(word: string, at: number): string {
  const i = 1 + (at % (word.length - 2));
  return `${word.slice(0, i)}${word[i + 1]!}${word[i]!}${word.slice(i + 2)}`;
}

const joints = fc.constantFrom(', ', '; ', '. ', ' and ', ', then ', '\n');

/** Several systems' news, each led by its name. */
function messages(greenhouse: Greenhouse) {
  const one = (system: System) =>
    fc.record({
      system: fc.constant(system),
      name: called(system),
      said: sayings(greenhouse, system),
      joint: joints,
      colon: fc.constantFrom(' ', ': ', ' - '),
    });
  return fc
    .shuffledSubarray([...greenhouse.systems], { minLength: 1, maxLength: 3 })
    .chain((systems) =>
      fc.record({
        parts: fc.tuple(...systems.map(one)),
        between: fc.constantFrom(', ', '. ', '\n', '; '),
      }),
    );
}

function expectBack(
  greenhouse: Greenhouse,
  text: string,
  expected: readonly (Saying['draft'] & { system: string })[],
): void {
  const { statements } = understand(text, contextIn(greenhouse));
  const found = draftsOf(statements);
  const key = (draft: Partial<EntryDraft>) =>
    `${draft.system ?? ''} ${draft.quantity ?? ''} ${draft.product ?? ''} ${(draft.value ?? 0).toFixed(3)}`;
  const told = inShort(statements, greenhouse, writtenAtMs);
  expect(found.map(key).sort(), `${JSON.stringify(text)} → ${told}`).toEqual(
    expected.map((draft) => key(draft as Partial<EntryDraft>)).sort(),
  );
}

describe('what is put in words as a person might comes back as it was', () => {
  test.each([
    ['quarry-lane', 2500],
    ['hollow-oak', 1500],
    ['kowhai-rise', 1500],
  ] as const)('names first, in %s', (name, numRuns) => {
    const greenhouse = greenhouseNamed(name);
    fc.assert(
      fc.property(messages(greenhouse), ({ parts, between }) => {
        const text = parts
          .map(
            ({ name: spokenName, said, joint, colon }) =>
              `${spokenName}${colon}${said.map(({ words }) => words).join(joint)}`,
          )
          .join(between);
        const expected = parts.flatMap(({ system, said }) =>
          said.map(({ draft }) => ({ ...draft, system: system.id })),
        );
        expectBack(greenhouse, text, expected);
      }),
      { numRuns },
    );
  });

  test('names last, in the clause they end', () => {
    const greenhouse = greenhouseNamed();
    const readings = fc.oneof(ph, ec, water);
    const one = (system: System) =>
      fc.record({
        system: fc.constant(system),
        name: called(system),
        said: readings,
        place: fc.constantFrom('in the', 'in', 'on the', 'for the'),
      });
    fc.assert(
      fc.property(
        fc
          .shuffledSubarray([...greenhouse.systems], { minLength: 1, maxLength: 4 })
          .chain((systems) => fc.tuple(...systems.map(one))),
        (parts) => {
          const text = parts
            .map(({ name, said, place }) => `${said.words} ${place} ${name}`)
            .join(', ');
          expectBack(
            greenhouse,
            text,
            parts.map(({ system, said }) => ({ ...said.draft, system: system.id })),
          );
        },
      ),
      { numRuns: 1500 },
    );
  });

  test('shorthand after a name', () => {
    const greenhouse = greenhouseNamed();
    const row = fc.record({
      p: tenths(4, 8),
      e: tenths(0.5, 4),
      t: fc.option(tenths(12, 30)),
      mark: fc.constantFrom(' ', '/', ' / '),
      decimal: fc.constantFrom('.', ','),
    });
    const one = (system: System) =>
      fc.record({ system: fc.constant(system), name: called(system), row });
    fc.assert(
      fc.property(
        fc
          .shuffledSubarray([...greenhouse.systems], { minLength: 1, maxLength: 4 })
          .chain((systems) => fc.tuple(...systems.map(one))),
        (parts) => {
          const text = parts
            .map(
              ({ name, row: { p, e, t, mark, decimal } }) =>
                `${name} ${[p, e, ...(t === null ? [] : [t])].map((v) => String(v).replace('.', decimal)).join(mark)}`,
            )
            .join(', ');
          const expected = parts.flatMap(({ system, row: { p, e, t } }) => [
            { quantity: 'ph' as const, value: p, system: system.id },
            { quantity: 'ec' as const, value: e, system: system.id },
            ...(t === null
              ? []
              : [{ quantity: 'water-temperature' as const, value: t, system: system.id }]),
          ]);
          expectBack(greenhouse, text, expected);
        },
      ),
      { numRuns: 1500 },
    );
  });
});
