const twoLetters: readonly (readonly [string, string])[] = [
  ['ä', 'ae'],
  ['ö', 'oe'],
  ['ü', 'ue'],
  ['ß', 'ss'],
];
const oneLetter: readonly (readonly [string, string])[] = [
  ['ä', 'a'],
  ['ö', 'o'],
  ['ü', 'u'],
  ['ß', 'ss'],
];

/** `süd` → `sued`: umlauts as they are written where a keyboard has none. */
export function withTwoLetters(text: string): string {
  return twoLetters.reduce((so, [letter, instead]) => so.replaceAll(letter, instead), text);
}

/** `süd` → `sud`: umlauts as they are written in a hurry. */
export function withOneLetter(text: string): string {
  return oneLetter.reduce((so, [letter, instead]) => so.replaceAll(letter, instead), text);
}

/** `crémaillère` → `cremaillere`; umlauts are letters of their own and stay. */
function withoutAccents(text: string): string {
  const accented = /[^äöüß\u0300-\u036f][\u0300-\u036f]+/gu;
  return text
    .normalize('NFC')
    .replaceAll(/[^\x00-\x7fäöüß]/gu, (letter) =>
      letter.normalize('NFD').replaceAll(accented, (marked) => marked.charAt(0)),
    );
}

/** A proper name with umlauts and without, whichever way it was entered; the name itself first. */
export function spellingsOf(name: string): string[] {
  const contracted = twoLetters
    .slice(0, 3)
    .reduce((so, [letter, instead]) => so.replaceAll(instead, letter), name);
  return [
    ...new Set([name, withTwoLetters(name), withOneLetter(name), contracted, withoutAccents(name)]),
  ];
}
