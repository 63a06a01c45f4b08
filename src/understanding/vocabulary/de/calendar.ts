export const weekdays: readonly (readonly string[])[] = [
  ['montag', 'mo'],
  ['dienstag', 'di'],
  ['mittwoch', 'mi'],
  ['donnerstag'],
  ['freitag', 'fr'],
  ['samstag', 'sa', 'sonnabend'],
  ['sonntag'],
];

export const months: readonly (readonly string[])[] = [
  ['januar', 'jänner', 'jan'],
  ['februar', 'feber', 'feb'],
  ['märz'],
  ['april', 'apr'],
  ['mai'],
  ['juni', 'juno', 'jun'],
  ['juli', 'jul'],
  ['august', 'aug'],
  ['september', 'sept', 'sep'],
  ['oktober', 'okt'],
  ['november', 'nov'],
  ['dezember', 'dez'],
];

const minutesBeside: readonly (readonly [readonly string[], number])[] = [
  [['fünf', '5'], 5],
  [['zehn', '10'], 10],
  [['zwanzig', '20'], 20],
];

/** `halb drei` is 2:30; `viertel acht` 7:15 and `dreiviertel acht` 7:45, as the east and the south say. */
export const clockTurns: readonly (readonly [string, number])[] = [
  ['halb', -30],
  ['viertel', -45],
  ['dreiviertel', -15],
  ['viertel nach', 15],
  ['viertel vor', -15],
  ...minutesBeside.flatMap(([words, minutes]) =>
    words.flatMap((word) => [
      [`${word} nach`, minutes] as const,
      [`${word} vor`, -minutes] as const,
      [`${word} minuten nach`, minutes] as const,
      [`${word} minuten vor`, -minutes] as const,
      [`${word} min nach`, minutes] as const,
      [`${word} min vor`, -minutes] as const,
    ]),
  ),
  ...['fünf', '5'].flatMap((word) => [
    [`${word} vor halb`, -35] as const,
    [`${word} nach halb`, -25] as const,
  ]),
];
