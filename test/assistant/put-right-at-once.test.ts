import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openTestStore } from '../storage/open-test-store.ts';
import { playCase } from '../understanding/run-case.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

interface Heard {
  readonly asks: boolean;
  readonly logged: readonly string[];
  readonly struck: number;
}

/** What the last of a talk's lines, a minute apart, causes. */
async function heard(from: string, ...texts: readonly string[]): Promise<Heard> {
  const lines = texts.map((text, minute) => ({
    at: `2027-05-04T18:0${minute}:00+02:00`,
    from,
    text,
  }));
  const line = lines.at(-1)!;
  const told = { greenhouse: 'lindenhof', before: lines.slice(0, -1), line };
  const out = (await playCase(store, { ...told, expect: { logged: [] } })).at(-1)! as readonly {
    readonly kind?: string;
    readonly logged?: readonly Record<string, string | number | undefined>[];
    readonly struck?: readonly unknown[];
  }[];
  return {
    asks: out.some(({ kind }) => kind === 'question'),
    logged: out.flatMap(({ logged = [] }) =>
      logged.map(({ system, quantity, value, product, at }) => {
        const isNow = Date.parse(String(at)) >= Date.parse(lines[0]!.at);
        const when = isNow ? [] : [String(at).slice(0, 16)];
        return [system, quantity, value, product, ...when].filter((part) => part != null).join(' ');
      }),
    ),
    struck: out.flatMap(({ struck = [] }) => struck).length,
  };
}

describe('Right after a receipt, what calls it off puts it right', () => {
  it.each([
    ['karin', ['3 kannen in den tisch nachgefüllt', 'ne moment, 4 kannen'], 'Nordtisch top-up 40'],
    ['karin', ['3 kannen in den tisch nachgefüllt', 'halt nein 4 kannen'], 'Nordtisch top-up 40'],
    [
      'karin',
      ['3 kannen in den tisch nachgefüllt', 'ach nee warn 4 kannen'],
      'Nordtisch top-up 40',
    ],
    ['tom', ['topped up 3 kannen in the tisch', 'no wait, 4 kannen'], 'Nordtisch top-up 40'],
    ['tom', ['both tonnen 5 l each topped up', 'links only 4'], 'Linke Tonne top-up 4'],
    ['tom', ['beide tonnen je 5 liter nachgefüllt', 'links nur 4'], 'Linke Tonne top-up 4'],
    [
      'karin',
      ['in der wanne neue lösung angesetzt', 'waren 100 liter'],
      'Südwanne reservoir-change 100',
    ],
    [
      'karin',
      ['heute 800 gramm gurken geerntet', 'ne sorry gurken warens 900'],
      'Südwanne harvest 900',
    ],
    [
      'karin',
      ['rinne ph 6,1', 'das mit der rinne war schon um 12'],
      'Rinnenstrecke ph 6.1 2027-05-04T12:00',
    ],
    [
      'karin',
      ['1 krug in die gläser nachgefüllt', 'nee gestern abend war das'],
      'Gläserregal top-up 2 2027-05-03T21:00',
    ],
    [
      'tom',
      ['rinne ph 6.1', 'that with the rinne was at 12'],
      'Rinnenstrecke ph 6.1 2027-05-04T12:00',
    ],
  ])('%s: %j', async (from, texts, entry) => {
    expect(await heard(from, ...texts)).toEqual({ asks: false, logged: [entry], struck: 1 });
  });

  it.each([
    ['karin', ['tisch 30 l nachgefüllt', 'nee doch nicht']],
    ['karin', ['tisch 30 l nachgefüllt', 'nein doch nicht']],
    ['karin', ['1 kanne in die wanne geschüttet', 'halt stop, in die wanne kam gar nix']],
    ['tom', ['topped up 10 l in the wanne', 'no wait, nothing went into the wanne']],
  ])('%s takes it back: %j', async (from, texts) => {
    expect(await heard(from, ...texts)).toEqual({ asks: false, logged: [], struck: 1 });
  });
});

describe('What only looks like it puts nothing right', () => {
  it.each([
    // Of another system than the one told of.
    ['karin', ['rinne ph 6,1', 'das mit der wanne war schon um 12']],
    // Something was asked: it is an answer.
    ['karin', ['12 l im tisch', 'ne moment, 14 l']],
    // A value that is none of what was told.
    ['tom', ['wanne ph 5.9', 'sorry, the gurken were 6.1']],
    ['tom', ['wanne ph 5.9', 'no wait, nothing went into the wanne']],
    // Of a change whose litres were told.
    ['karin', ['in der wanne neue lösung angesetzt, 100 l', 'waren 20 grad']],
  ])('%s: %j', async (from, texts) => {
    expect(await heard(from, ...texts)).toMatchObject({ struck: 0 });
  });
});

describe('Decimals in one word, and a second product in a message of its own', () => {
  it.each([
    [
      'karin',
      ['tisch ph fünfkommaneun ec zweikommaeins'],
      ['Nordtisch ph 5.9', 'Nordtisch ec 2.1'],
    ],
    ['karin', ['wanne ph sechspunktnull'], ['Südwanne ph 6']],
    ['karin', ['wanne 20 ml A rein', 'B 20 ml auch'], ['Südwanne dose 20 nutrient-b']],
    ['tom', ['gave the wanne 20 ml A', 'B 20 ml too'], ['Südwanne dose 20 nutrient-b']],
  ])('%s: %j', async (from, texts, logged) => {
    expect(await heard(from, ...texts)).toEqual({ asks: false, logged, struck: 0 });
  });

  it('leaves words that only hold one alone', async () => {
    expect(await heard('karin', 'tisch ph 5,9, komma vergessen')).toMatchObject({
      logged: ['Nordtisch ph 5.9'],
    });
  });
});

describe('A pump that a system does not have is asked about', () => {
  it.each([
    ['karin', 'pumpe bei den gläsern steht'],
    ['karin', 'luftpumpe bei den gläsern ist aus'],
    ['tom', 'pump of the gläser is dead'],
  ])('%s: %s', async (from, text) => {
    expect(await heard(from, text)).toEqual({ asks: true, logged: [], struck: 0 });
  });

  it.each([
    ['karin', ['pumpe beim tisch ist aus'], 'Nordtisch outage 1'],
    ['karin', ['pumpe bei den gläsern steht', 'quatsch bei der rinne'], 'Rinnenstrecke outage 1'],
    ['tom', ['air pump dead on the wanne'], 'Südwanne outage 1'],
  ])('%s tells: %j', async (from, texts, entry) => {
    expect(await heard(from, ...texts)).toEqual({ asks: false, logged: [entry], struck: 0 });
  });
});

describe('A question of how much logs nothing', () => {
  it.each([
    ['karin', 'wie viel a und b für ec 2,0 in der wanne'],
    ['karin', 'wie viel a, b für ec 2,0 in der wanne'],
    ['tom', 'how much a and b for ec 2.0 in the wanne'],
  ])('%s: %s', async (from, text) => {
    expect(await heard(from, text)).toEqual({ asks: false, logged: [], struck: 0 });
  });

  it('but what is told beside it is logged', async () => {
    expect((await heard('tom', 'how much a and b, wanne ec 1.4')).logged).toEqual([
      'Südwanne ec 1.4',
    ]);
  });
});

describe('A value beside what was forgotten is not lost', () => {
  it.each([
    ['tom', 'ec links 2,0, wanne hab ich vergessen'],
    ['tom', 'ec 2.0, forgot the tisch'],
  ])('%s: %s', async (from, text) => {
    expect(await heard(from, text)).toEqual({ asks: true, logged: [], struck: 0 });
  });
});
