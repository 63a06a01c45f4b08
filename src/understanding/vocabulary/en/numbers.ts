const small = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** `seven`, `twenty one`, `a hundred and twenty`, up to 999. */
export const numbers: ReadonlyMap<string, number> = new Map(spoken());

function* spoken(): Generator<[string, number]> {
  for (let n = 0; n < 100; n++) for (const words of belowHundred(n)) yield [words, n];
  yield ['a dozen', 12];
  yield ['dozen', 12];
  yield ['half a dozen', 6];
  yield ['nought', 0];
  for (const words of ['thousand', 'a thousand', 'one thousand']) yield [words, 1000];
  for (let hundreds = 1; hundreds < 10; hundreds++) {
    for (const head of hundreds === 1
      ? ['one hundred', 'a hundred', 'hundred']
      : [`${small[hundreds]!} hundred`]) {
      yield [head, hundreds * 100];
      for (let rest = 1; rest < 100; rest++) {
        for (const tail of belowHundred(rest)) {
          yield [`${head} and ${tail}`, hundreds * 100 + rest];
          yield [`${head} ${tail}`, hundreds * 100 + rest];
        }
      }
    }
  }
}

function belowHundred(n: number): string[] {
  if (n < 20) return [small[n]!];
  const ten = tens[Math.floor(n / 10)]!;
  return n % 10 === 0 ? [ten] : [`${ten} ${small[n % 10]!}`, `${ten} - ${small[n % 10]!}`];
}

export const fractions: ReadonlyMap<string, number> = new Map([
  ['half', 1 / 2],
  ['a half', 1 / 2],
  ['half a', 1 / 2],
  ['half an', 1 / 2],
  ['half of a', 1 / 2],
  ['one half', 1 / 2],
  ['halfway', 1 / 2],
  ['half way', 1 / 2],
  ['third', 1 / 3],
  ['a third', 1 / 3],
  ['a third of a', 1 / 3],
  ['one third', 1 / 3],
  ['two thirds', 2 / 3],
  ['two thirds of a', 2 / 3],
  ['quarter', 1 / 4],
  ['a quarter', 1 / 4],
  ['a quarter of a', 1 / 4],
  ['quarter of a', 1 / 4],
  ['quarter of an', 1 / 4],
  ['a quarter of an', 1 / 4],
  ['one quarter', 1 / 4],
  ['three quarters', 3 / 4],
  ['three quarter', 3 / 4],
  ['three - quarters', 3 / 4],
  ['three quarters of a', 3 / 4],
  ['three quarters of an', 3 / 4],
  ['a fifth', 1 / 5],
  ['one fifth', 1 / 5],
  ['two fifths', 2 / 5],
  ['three fifths', 3 / 5],
  ['four fifths', 4 / 5],
  ['two - thirds', 2 / 3],
  ['an eighth', 1 / 8],
  ['three eighths', 3 / 8],
  ['five eighths', 5 / 8],
  ['seven eighths', 7 / 8],
]);

export const ordinals: ReadonlyMap<string, number> = new Map([
  ['first', 1],
  ['second', 2],
  ['third', 3],
  ['fourth', 4],
  ['fifth', 5],
  ['sixth', 6],
  ['seventh', 7],
  ['eighth', 8],
  ['last', -1],
  ['last one', -1],
  ['the last', -1],
  ['the last one', -1],
  ['first one', 1],
  ['second one', 2],
  ['third one', 3],
  ['fourth one', 4],
  ['former', 1],
  ['latter', 2],
]);

export const ordinalMarks: readonly string[] = ['st', 'nd', 'rd', 'th'];
