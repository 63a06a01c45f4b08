type Meaning = readonly [string, number];

const small = [
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
  '',
  'zwanzig',
  'dreißig',
  'vierzig',
  'fünfzig',
  'sechzig',
  'siebzig',
  'achtzig',
  'neunzig',
];
const oneAndAHalf = ['anderthalb', 'anderthalbe', 'anderthalben', 'eineinhalb', 'einundeinhalb'];

function belowHundred(n: number): string {
  if (n < small.length) return small[n]!;
  const ten = tens[Math.floor(n / 10)]!;
  return n % 10 === 0 ? ten : `${small[n % 10]!}und${ten}`;
}

function* spoken(): Generator<Meaning> {
  yield ['eins', 1];
  yield ['zwo', 2];
  for (let n = 0; n < 100; n++) if (n !== 1) yield [belowHundred(n), n];
  for (const dozen of ['dutzend', 'ein dutzend']) yield [dozen, 12];
  yield ['ein halbes dutzend', 6];
  for (const words of oneAndAHalf) yield [words, 3 / 2];
  for (let n = 2; n <= 12; n++) {
    yield [`${small[n]!}einhalb`, n + 1 / 2];
    yield [`${small[n]!}undeinhalb`, n + 1 / 2];
  }
  yield* hundreds();
  yield* thousands();
}

function* hundreds(): Generator<Meaning> {
  for (let n = 1; n < 10; n++) {
    for (const head of n === 1 ? ['hundert', 'einhundert'] : [`${small[n]!}hundert`]) {
      yield [head, n * 100];
      for (let rest = 1; rest < 100; rest++) {
        for (const joint of ['', 'und'])
          yield [head + joint + (rest === 1 ? 'eins' : belowHundred(rest)), n * 100 + rest];
      }
    }
  }
}

function* thousands(): Generator<Meaning> {
  for (let n = 11; n < 100; n++) if (n % 10 !== 0) yield [`${belowHundred(n)}hundert`, n * 100];
  for (let n = 1; n < 10; n++) {
    for (const head of n === 1 ? ['tausend', 'eintausend'] : [`${small[n]!}tausend`]) {
      yield [head, n * 1000];
      for (let rest = 1; rest < 10; rest++)
        yield [`${head}${small[rest]!}hundert`, n * 1000 + rest * 100];
    }
  }
}

/** `sieben`, `einundzwanzig`, `zweihundertfünfzig`, `zweieinhalb`; up to 999, and round thousands. */
export const spokenNumbers: readonly Meaning[] = [...spoken()];

const oneOf = ['ein', 'eine', 'einen', 'einem', 'einer', 'ne', 'nen', 'ner', 'nem', 'n'];
const halves = ['halbe', 'halben', 'halber', 'halbes', 'halbem'];

function shares(part: string, of: number): Meaning[] {
  return ['', 'n', 's'].flatMap((ending): Meaning[] => [
    [part + ending, 1 / of],
    ...oneOf.map((one): Meaning => [`${one} ${part}${ending}`, 1 / of]),
    ...small.slice(2, of).flatMap((count, i): Meaning[] => [
      [`${count} ${part}${ending}`, (i + 2) / of],
      [`${count}${part}${ending}`, (i + 2) / of],
    ]),
  ]);
}

export const spokenFractions: readonly Meaning[] = [
  ...['halb', ...halves, 'hälfte', 'die hälfte', 'zur hälfte', 'der hälfte'].map(
    (words): Meaning => [words, 1 / 2],
  ),
  ...[...oneOf, 'die', 'der', 'den'].flatMap((one) =>
    halves.map((half): Meaning => [`${one} ${half}`, 1 / 2]),
  ),
  ...shares('drittel', 3),
  ...shares('viertel', 4),
  ...shares('fünftel', 5),
  ...shares('achtel', 8),
];

const ordinalStems = ['erst', 'zweit', 'dritt', 'viert', 'fünft', 'sechst', 'siebt', 'acht'];

function ordinal(stem: string, n: number): Meaning[] {
  return ['e', 'en', 'er', 'es', 'em'].map((ending): Meaning => [stem + ending, n]);
}

/** `das erste`, `die zweite`, `ersteres`; the bare stems are other words. */
export const spokenOrdinals: readonly Meaning[] = [
  ...ordinalStems.flatMap((stem, i) => ordinal(stem, i + 1)),
  ...ordinal('letzt', -1),
  ['ersteres', 1],
  ['letzteres', 2],
];

export const ordinalMarks: readonly string[] = ['te', 'ten', 'ter', 'tes', 'ste', 'sten', '.'];
