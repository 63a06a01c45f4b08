const ones = [
  'null',
  'ein',
  'zwei',
  'drei',
  'vier',
  'fünf',
  'sechs',
  'sieben',
  'acht',
  'neun',
  'zehn',
  'elf',
  'zwölf',
  'dreizehn',
  'vierzehn',
  'fünfzehn',
  'sechzehn',
  'siebzehn',
  'achtzehn',
  'neunzehn',
];
const tens = [
  '',
  'zehn',
  'zwanzig',
  'dreißig',
  'vierzig',
  'fünfzig',
  'sechzig',
  'siebzig',
  'achtzig',
  'neunzig',
];

/** `sieben`, `einundzwanzig`, `zweihundertfünfzig`, `zweieinhalb`; up to 999, and round thousands. */
export const spokenNumbers: readonly (readonly [string, number])[] = [...spoken()];

function* spoken(): Generator<readonly [string, number]> {
  yield ['eins', 1];
  for (let n = 0; n < 100; n++) if (n !== 1) yield [belowHundred(n), n];
  yield ['zwo', 2];
  yield ['ein dutzend', 12];
  yield ['dutzend', 12];
  yield ['ein halbes dutzend', 6];
  for (const [words, n] of halves) yield [words, n];
  for (let n = 2; n <= 12; n++) yield [`${ones[n]!}einhalb`, n + 1 / 2];
  for (let hundreds = 1; hundreds < 10; hundreds++) {
    for (const head of hundreds === 1 ? ['hundert', 'einhundert'] : [`${ones[hundreds]!}hundert`]) {
      yield [head, hundreds * 100];
      for (let rest = 1; rest < 100; rest++) {
        for (const joint of ['', 'und'])
          yield [head + joint + (rest === 1 ? 'eins' : belowHundred(rest)), hundreds * 100 + rest];
      }
    }
  }
  for (let thousands = 1; thousands < 10; thousands++) {
    for (const head of thousands === 1
      ? ['tausend', 'eintausend']
      : [`${ones[thousands]!}tausend`]) {
      yield [head, thousands * 1000];
      for (let hundreds = 1; hundreds < 10; hundreds++)
        yield [`${head}${ones[hundreds]!}hundert`, thousands * 1000 + hundreds * 100];
    }
  }
}

const halves: readonly (readonly [string, number])[] = [
  ...['anderthalb', 'anderthalbe', 'anderthalben', 'eineinhalb', 'einundeinhalb', 'einenhalb'].map(
    (words) => [words, 3 / 2] as const,
  ),
  ['zweiundeinhalb', 5 / 2],
  ['dreiundeinhalb', 7 / 2],
];

function belowHundred(n: number): string {
  if (n < 20) return ones[n]!;
  const ten = tens[Math.floor(n / 10)]!;
  return n % 10 === 0 ? ten : `${ones[n % 10]!}und${ten}`;
}

const oneOf = [
  'ein',
  'eine',
  'einen',
  'einem',
  'einer',
  'ne',
  'nen',
  'ner',
  'nem',
  "'ne",
  "'nen",
  'n',
  'die',
  'der',
  'den',
];
const halfForms = ['halb', 'halbe', 'halben', 'halber', 'halbes', 'halbem'];

export const spokenFractions: readonly (readonly [string, number])[] = [
  ...halfForms.map((half) => [half, 1 / 2] as const),
  ...oneOf.flatMap((one) => halfForms.slice(1).map((half) => [`${one} ${half}`, 1 / 2] as const)),
  ...['hälfte', 'die hälfte', 'zur hälfte', 'der hälfte', 'halbwegs', 'knapp zur hälfte']
    .slice(0, 4)
    .map((words) => [words, 1 / 2] as const),
  ...shares('drittel', 3, 2),
  ...shares('viertel', 4, 3),
  ...shares('fünftel', 5, 4),
  ...shares('achtel', 8, 7),
  ['dreiviertel', 3 / 4],
];

function shares(part: string, of: number, most: number): (readonly [string, number])[] {
  const found: (readonly [string, number])[] = [[part, 1 / of]];
  for (const ending of ['', 'n', 's']) {
    for (const one of oneOf.slice(0, 9)) found.push([`${one} ${part}${ending}`, 1 / of]);
    for (let n = 2; n <= most; n++) {
      found.push([`${ones[n]!} ${part}${ending}`, n / of]);
      found.push([`${ones[n]!}${part}${ending}`, n / of]);
    }
  }
  return found;
}

const ordinalStems: readonly (readonly [string, number])[] = [
  ['erst', 1],
  ['zweit', 2],
  ['dritt', 3],
  ['viert', 4],
  ['fünft', 5],
  ['sechst', 6],
  ['siebt', 7],
  ['acht', 8],
  ['letzt', -1],
  ['erster', 1],
  ['letzter', 2],
];

/** `das erste`, `die zweite`, `ersteres`; the bare stems are other words. */
export const spokenOrdinals: readonly (readonly [string, number])[] = ordinalStems.flatMap(
  ([stem, n]) => ['e', 'en', 'er', 'es', 'em'].map((ending) => [stem + ending, n] as const),
);

export const ordinalMarks: readonly string[] = ['.', 'te', 'ten', 'ter', 'tes', 'ste', 'sten'];
