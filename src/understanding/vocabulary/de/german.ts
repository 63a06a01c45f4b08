import type { Vocabulary } from '../vocabulary.ts';
import { asking, duties } from './asking.ts';
import { clockTurns, months, weekdays } from './calendar.ts';
import { commonWords } from './common-words.ts';
import { everydayWords } from './everyday-words.ts';
import { grammar, talk } from './grammar.ts';
import { moods, takingBack } from './moods.ts';
import { anyProduct, crops, products, shyProducts } from './names-of-things.ts';
import { ordinalMarks, spokenFractions, spokenNumbers, spokenOrdinals } from './numbers.ts';
import { deeds, levels, quantities, supplies } from './quantities.ts';
import { singleWords, spelled } from './spelling.ts';
import { times } from './times.ts';
import { topics } from './topics.ts';
import { troubles } from './troubles.ts';
import { shyUnits, units } from './units.ts';

const words = {
  ...grammar,
  ...talk,
  ...quantities,
  ...levels,
  ...deeds,
  ...supplies,
  ...troubles,
  ...moods,
  ...takingBack,
  ...duties,
  ...asking,
  ...times,
};

const written = singleWords([...Object.values(words).flat(), ...commonWords]);

function everySpelling<K extends string>(
  lists: Readonly<Record<K, readonly string[]>>,
): Record<K, readonly string[]> {
  const spelt: Partial<Record<K, readonly string[]>> = {};
  for (const key of Object.keys(lists) as K[]) spelt[key] = spelled(lists[key], written);
  return spelt as Record<K, readonly string[]>;
}

function everySpellingOf(
  meanings: readonly (readonly [string, number])[],
): ReadonlyMap<string, number> {
  return new Map(
    meanings.flatMap(([phrase, value]) =>
      spelled([phrase], written).map((spelling) => [spelling, value] as const),
    ),
  );
}

/** `Kannen`, `Krüge`, `Gläsern`, `Tonnen`: what number, case and possessive add, and what they put in the stem's place. */
const endings: readonly (readonly [string, string])[] = [
  ['ässern', 'ass'],
  ['ässer', 'ass'],
  ['äsern', 'as'],
  ['äser', 'as'],
  ['ästen', 'asten'],
  ['öpfen', 'opf'],
  ['öpfe', 'opf'],
  ['ügen', 'ug'],
  ['üge', 'ug'],
  ['en', ''],
  ['em', ''],
  ['er', ''],
  ['es', ''],
  ["'s", ''],
  ['n', ''],
  ['e', ''],
  ['s', ''],
];

const compoundEnds: readonly string[] = [
  'wassertemperatur',
  'wasserwechsel',
  'lösungswechsel',
  'wasserstand',
  'luftpumpe',
  'temperatur',
  'nährlösung',
  'füllstand',
  'belüftung',
  'leitwert',
  'reservoir',
  'behälter',
  'flutung',
  'füllung',
  'venturi',
  'lösung',
  'wasser',
  'wechsel',
  'becken',
  'pegel',
  'pumpe',
  'stand',
  'ernte',
  'temp',
  'tank',
  'nachmittag',
  'vormittag',
  'mittag',
  'abend',
  'morgen',
  'nacht',
  'früh',
  'voll',
  'leer',
  'liter',
  'ph',
  'ec',
];

export const german: Vocabulary = {
  words: everySpelling(words),
  units: everySpelling(units),
  shyUnits,
  products: everySpelling(products),
  shyProducts,
  anyProduct: spelled(anyProduct, written),
  numbers: everySpellingOf(spokenNumbers),
  fractions: everySpellingOf(spokenFractions),
  ordinals: everySpellingOf(spokenOrdinals),
  ordinalMarks,
  bufferMarks: ['er', 'ner'],
  textSpeak: new Map([
    ['n8', 'nacht'],
    ['gn8', 'gute nacht'],
    ['w8', 'warte'],
  ]),
  weekdays,
  months: months.map((names) => spelled(names, written)),
  clockTurns: everySpellingOf(clockTurns),
  crops: everySpelling(crops),
  endings,
  participleMarks: ['ge'],
  presentOf: [
    ['en', ''],
    ['en', 'e'],
    ['n', ''],
  ],
  irregularForms: {
    schneiden: ['schnitt', 'geschnitten'],
    binden: ['band', 'gebunden'],
    nehmen: ['nahm', 'genommen'],
    gießen: ['goss', 'gegossen'],
    graben: ['grub', 'gegraben'],
    streichen: ['strich', 'gestrichen'],
    reiben: ['rieb', 'gerieben'],
    ziehen: ['zog', 'gezogen'],
    bringen: ['brachte', 'gebracht'],
    schieben: ['schob', 'geschoben'],
    schließen: ['schloss', 'geschlossen'],
    werfen: ['warf', 'geworfen'],
  },
  filters: ['filter', 'pumpenfilter', 'vorfilter', 'sieb'],
  compoundEnds: spelled(compoundEnds, written),
  abbreviations: [
    'ca',
    'wassertemp',
    'lufttemp',
    'raumtemp',
    'innentemp',
    'außentemp',
    'nr',
    'temp',
    'ltr',
    'min',
    'std',
    'sek',
    'rel',
    'z.b',
    'd.h',
    'bzw',
    'usw',
    'etc',
    'max',
    'evtl',
    'ggf',
    'u',
    'tel',
    'str',
    'dr',
    'hr',
    'fr',
    'mo',
    'di',
    'mi',
    'sa',
    'jan',
    'feb',
    'apr',
    'aug',
    'sept',
    'sep',
    'okt',
    'nov',
    'dez',
    'proz',
    'inkl',
    'zzgl',
    'vs',
    'mind',
    'dgl',
    'cm',
  ],
  asksWithObject: ['kann ich', 'können wir'],
  asksOfOutage: [
    'gab es ',
    "gab's ",
    'gabs ',
    'hat es ',
    'hatten wir ',
    'hattet ihr ',
    'war schon ',
    'war heute schon ',
    'war heut schon ',
    'war gestern schon ',
    'war da ein ',
    'war da eine ',
  ],
  asksOneself: [
    ...['was', 'wie'].flatMap((asked) => [
      ...['kann', 'soll', 'sollte', 'muss', 'mach', 'mache', 'tu', 'tue'].map(
        (verb) => `${asked} ${verb} ich`,
      ),
      ...['können', 'sollen', 'sollten', 'müssen', 'machen', 'tun'].map(
        (verb) => `${asked} ${verb} wir`,
      ),
    ]),
    'soll ich',
    'sollen wir',
    'sollte ich',
    'sollten wir',
    'muss ich',
    'müssen wir',
    'darf ich',
    'dürfen wir',
    'wann kann ich',
    'wann können wir',
    'wann muss ich',
    'wann müssen wir',
    'wann soll ich',
    'wann sollen wir',
    'könnte ich',
    'könnten wir',
    'können wir',
  ],
  asksReader: [
    'willst du',
    'wollt ihr',
    'möchtest du',
    'kannst du',
    'könntest du',
    'könnt ihr',
    'hast du',
    'habt ihr',
  ],
  everyday: spelled(everydayWords, written),
  topics,
  common: spelled(commonWords, written),
};
