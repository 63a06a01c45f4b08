/**
 * Small words as the regions say and type them. A denial above all must not be missed: `net nachgfüllt`.
 * What is another word of the reports as well (`a`, `no`, `nei`) is left out.
 */
const sayings: readonly (readonly [string, readonly string[]])[] = [
  ['nicht mehr', ['nimmer', 'net mehr', 'ned mehr', 'nich mehr', 'nit mehr', 'nimma']],
  ['nicht', ['net', 'ned', 'nich', 'nit', 'nedd', 'nett', 'niet']],
  ['nichts', ['nix', 'nüscht', 'nischt', 'nüx', 'nixe']],
  ['kein', ['koa', 'koan', 'keen', 'kei', 'koi']],
  ['keine', ['koane', 'keene', 'koine']],
  ['keinen', ['koan', 'keenen', 'koin']],
  ['ist', ['is', 'isch', 'iss']],
  ['sind', ['san', 'sin', 'sand', 'send']],
  ['heute', ['heit', 'heid', 'heint', 'heud', 'heut']],
  ['gestern', ['gestan', 'geschdern', 'gestan']],
  ['habe', ['hob', 'han', 'hann']],
  ['hab', ['hob']],
  ['ich hab', ['i hob', 'i hab', 'i han', 'ick hab', 'ik hab', 'ich han']],
  ['läuft', ['lauft', 'laaft', 'löft']],
  ['gerade', ['grad', 'grade', 'graad', 'grod', 'gred', 'jrade']],
  [
    'ein bisschen',
    ['a bisserl', 'a bissl', 'a bissel', 'a weng', 'n bissel', 'n bissl', 'e bissle'],
  ],
  ['bisschen', ['bisserl', 'bissl', 'bissel', 'bissle', 'bisschn', 'bissken', 'bisken']],
];

/** The phrases, and each as the regions say it. */
export function asSpoken(phrases: readonly string[]): readonly string[] {
  return phrases.flatMap((phrase) => [phrase, ...spokenForms(phrase)]);
}

function spokenForms(phrase: string): string[] {
  const padded = ` ${phrase} `;
  const saying = sayings.find(([standard]) => padded.includes(` ${standard} `));
  if (!saying) return [];
  const [standard, forms] = saying;
  return forms.map((form) => padded.replace(` ${standard} `, ` ${form} `).trim());
}
