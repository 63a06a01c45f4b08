import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import type { DoubtReason } from '../../src/understanding/statement.ts';
import { openTestStore } from '../storage/open-test-store.ts';
import { runCase } from './run-case.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

/** Typed answer: what it logs as `system quantity value`; an empty list where nothing may be logged. */
type Answers = Readonly<Record<string, readonly string[]>>;

interface Asked {
  /** What brings the question about. */
  readonly said: string;
  readonly answers: Answers;
}

/** Those of the set-up, of absences and of photos take no entry, and some need a talk before them; they are tried where they are asked. */
type ElsewhereTried =
  | 'why-not'
  | 'change-set-up'
  | 'how-much-stock'
  | 'planted-where'
  | 'which-failed'
  | 'guide'
  | 'one-or-two'
  | 'stopped-altogether'
  | 'away-when'
  | 'who-covers'
  | 'whose-photo';

const phOfJars = ['Jar shelf ph 6'];
const phOfRow = ['Bucket row ph 6'];
const all = (entry: (system: string) => string): readonly string[] =>
  ['North bench', 'Bucket row', 'Gutter run', 'Jar shelf'].map(entry);

/** Every kind of question about an entry; the compiler asks for those that are missing. */
const english: Readonly<Record<Exclude<DoubtReason['kind'], ElsewhereTried>, Asked>> = {
  'which-system': {
    said: 'ph 6.0',
    answers: {
      jars: phOfJars,
      'it was the jars': phOfJars,
      'in the jars': phOfJars,
      2: phOfRow,
      'number 2': phOfRow,
      'the second one': phOfRow,
      all: all((system) => `${system} ph 6`),
      both: [],
      neither: [],
      'log nothing': [],
      'dwc ec 1.8': ['Bucket row ec 1.8'],
    },
  },
  'which-quantity': {
    said: 'dwc 12',
    answers: {
      temp: ['Bucket row water-temperature 12'],
      water: ['Bucket row water-temperature 12'],
      1: ['Bucket row water-temperature 12'],
      no: [],
      9: [],
    },
  },
  'in-it-or-added': {
    said: '12 l in the dwc',
    answers: {
      added: ['Bucket row top-up 12'],
      'in it': ['Bucket row level 12'],
      'the second': ['Bucket row top-up 12'],
      neither: [],
      both: [],
    },
  },
  'which-product': {
    said: '30 ml feed in the dwc',
    answers: {
      'nutrient b': ['Bucket row dose 30'],
      'it was ph down': ['Bucket row dose 30'],
      B: ['Bucket row dose 30'],
      'the first': ['Bucket row dose 30'],
      no: [],
      9: [],
    },
  },
  'which-unit': {
    said: 'level 95 dwc',
    answers: {
      litres: ['Bucket row level 95'],
      'in litres': ['Bucket row level 95'],
      'its litres': ['Bucket row level 95'],
      '%': ['Bucket row level 102.6'],
      no: [],
    },
  },
  'out-of-range': {
    said: 'dwc ph 54',
    answers: {
      yes: ['Bucket row ph 5.4'],
      '5,4': ['Bucket row ph 5.4'],
      5.9: ['Bucket row ph 5.9'],
      'keep it': [],
      1: [],
      no: [],
    },
  },
  'was-it-cleaned': {
    said: 'cleaned the pump filter',
    answers: {
      bench: ['North bench duty-done 1'],
      'the nft': ['Gutter run duty-done 1'],
      'the second': ['Gutter run duty-done 1'],
      jars: [],
      yes: [],
      no: [],
    },
  },
  conflict: {
    said: 'dwc ph 5.4 ph 5.9',
    answers: {
      5.9: ['Bucket row ph 5.9'],
      'the second': ['Bucket row ph 5.9'],
      'the latter': ['Bucket row ph 5.9'],
      both: [],
      2: [],
    },
  },
  'missing-amount': {
    said: 'topped up the jars and the gutters',
    answers: {
      '2 l each': ['Gutter run top-up 2', 'Jar shelf top-up 2'],
      'jars 2 gutters 8': ['Jar shelf top-up 2', 'Gutter run top-up 8'],
      '2 in the jars and 8 in the gutters': ['Jar shelf top-up 2', 'Gutter run top-up 8'],
      2: [],
      no: [],
    },
  },
  'litres-to-brim': {
    said: 'topped up the jars to the brim',
    answers: { 3: ['Jar shelf top-up 3'], '2 jugs': ['Jar shelf top-up 4'], no: [] },
  },
  'shared-amount': {
    said: 'topped up 10 l in the bench and the jars',
    answers: {
      each: ['North bench top-up 10', 'Jar shelf top-up 10'],
      '5 each': ['North bench top-up 5', 'Jar shelf top-up 5'],
      '7 in the bench and 3 in the jars': ['North bench top-up 7', 'Jar shelf top-up 3'],
      'bench 7, jars 3': ['North bench top-up 7', 'Jar shelf top-up 3'],
      no: [],
    },
  },
  'which-time': {
    said: 'dwc ph 5.9 at 21:00',
    answers: { yesterday: ['Bucket row ph 5.9'], 'just now': ['Bucket row ph 5.9'], no: [] },
  },
  'since-when': { said: 'power out since 14:30', answers: { no: [] } },
  'how-long-out': {
    said: 'power was out yesterday',
    answers: {
      '2 hours': ['null outage 1', 'null restored 1'],
      'about half an hour': ['null outage 1', 'null restored 1'],
      'still out': ['null outage 1'],
      yes: [],
      back: [],
      'ph 5.9 in the dwc': ['Bucket row ph 5.9'],
      no: [],
    },
  },
  trouble: {
    said: 'bench leaking',
    answers: {
      yes: ['North bench note 1'],
      'keep it': ['North bench note 1'],
      'level 300 l': ['North bench level 300'],
      no: [],
    },
  },
  'switched-or-failed': {
    said: 'venturi off at night now',
    answers: {
      'still out': ['Gutter run outage 1'],
      'keep it': ['Gutter run note 1'],
      yes: [],
      no: [],
    },
  },
  'is-it-a-reading': {
    said: 'dwc ph 5.4?',
    answers: {
      yes: ['Bucket row ph 5.4'],
      'log it': ['Bucket row ph 5.4'],
      1: ['Bucket row ph 5.4'],
      2: [],
      'it was a question': [],
      'just asking': [],
    },
  },
  'shorthand-does-not-fit': {
    said: 'dwc 5.9 17',
    answers: { '5.9 1.7': ['Bucket row ph 5.9', 'Bucket row ec 1.7'], no: [] },
  },
  'which-duties': {
    said: 'done',
    answers: { no: [], 'the jars': ['Jar shelf duty-done 1', 'Jar shelf duty-done 1'] },
  },
  unclear: {
    said: 'blorp the fnord',
    answers: {
      'keep it': ['null note 1'],
      'keep as a note': ['null note 1'],
      yes: ['null note 1'],
      no: [],
    },
  },
};

const german: readonly Asked[] = [
  {
    said: 'pH 6,0',
    answers: {
      Gläser: ['Gläserregal ph 6'],
      'das zweite': ['Südwanne ph 6'],
      2: ['Südwanne ph 6'],
      beide: [],
      'nichts eintragen': [],
    },
  },
  {
    said: 'Gläser und Rinnen nachgefüllt',
    answers: {
      'je 2 l': ['Gläserregal top-up 2', 'Rinnenstrecke top-up 2'],
      'Gläser 2, Rinnen 8': ['Gläserregal top-up 2', 'Rinnenstrecke top-up 8'],
      '2 in die Gläser und 8 in die Rinnen': ['Gläserregal top-up 2', 'Rinnenstrecke top-up 8'],
    },
  },
  {
    said: 'Wanne pH 5,4?',
    answers: { ja: ['Südwanne ph 5.4'], 'das war eine Frage': [], 'nur gefragt': [] },
  },
  {
    said: 'Stand Wanne 95',
    answers: { Liter: ['Südwanne level 95'], 'in Liter': ['Südwanne level 95'] },
  },
  {
    said: 'blorp der fnord',
    answers: { behalten: ['null note 1'], 'als Notiz behalten': ['null note 1'], nein: [] },
  },
];

async function faultsOf(
  { said, answers }: Asked,
  greenhouse: string,
  from: string,
): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const [answer, wanted] of Object.entries(answers)) {
    const logged = wanted.map((entry) => {
      const [, system, quantity, value] = /^(.*) (\S+) (\S+)$/.exec(entry)!;
      return {
        system: system === 'null' ? null : system!,
        quantity: quantity!,
        value: Number(value),
      };
    });
    const line = (minute: string, text: string) => ({
      at: `2027-05-06T08:${minute}:00Z`,
      from,
      text,
    });
    const { wrong, missing } = await runCase(store, {
      greenhouse,
      before: [line('25', said)],
      line: line('26', answer),
      expect: { logged },
    });
    if (wrong.length + missing.length > 0)
      faults.push(`${said} / ${answer}: ${JSON.stringify({ wrong, missing })}`);
  }
  return faults;
}

/** `2` may be `Tote 2` there, and the second button is another. */
const namesWithNumbers: Asked = { said: 'tote ph 6.0', answers: { 2: [] } };

describe('A typed answer', () => {
  it.each(Object.entries(english))(
    'to a question of the kind %s logs what it says and no more',
    async (_, asked) => {
      expect(await faultsOf(asked, 'quarry-lane', 'priya')).toEqual([]);
    },
    60_000,
  );

  it('takes no number for a button where a name on offer holds one', async () => {
    expect(await faultsOf(namesWithNumbers, 'hollow-oak', 'finn')).toEqual([]);
  }, 60_000);

  it.each(german.map((asked) => [asked.said, asked] as const))(
    'in German, after “%s”, logs what it says and no more',
    async (_, asked) => {
      expect(await faultsOf(asked, 'lindenhof', 'jonas')).toEqual([]);
    },
    60_000,
  );
});
